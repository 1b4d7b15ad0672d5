package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.BiFunction;
import javax.swing.KeyStroke;
import lungfish.edit.Alike;
import lungfish.edit.Arranging;
import lungfish.edit.Attempt;
import lungfish.edit.Copies;
import lungfish.edit.Deleting;
import lungfish.edit.Part;
import lungfish.edit.RackEdits;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.edit.ShelfEdits;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** The actions on what is chosen, as the menus list them. */
final class Chosen {
    private Chosen() {}

    static List<Act> edits(WindowPane window) {
        return List.of(
                new CopyChosen(window, true),
                new CopyChosen(window, false),
                new PasteCopied(window),
                new EditChosen(window, "Duplicate", 'D', Act.menuKey(KeyEvent.VK_D), Copies::duplicate),
                new EditChosen(window, "Delete", 'L', KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), Deleting::of),
                new ChooseAll(window),
                new FillDown(window),
                new CopyWithHeadings(window));
    }

    static List<Act> arrange(WindowPane window) {
        return List.of(
                new EditChosen(
                        window,
                        "Turn clockwise",
                        'T',
                        Act.shiftMenuKey(KeyEvent.VK_R),
                        racks((room, ids) -> RackEdits.turn(room, ids, 1))),
                new EditChosen(
                        window,
                        "Turn the other way",
                        'O',
                        Act.shiftMenuKey(KeyEvent.VK_L),
                        racks((room, ids) -> RackEdits.turn(room, ids, -1))),
                align(window, "Align left", 'L', Arranging.Edge.LEFT),
                align(window, "Align right", 'R', Arranging.Edge.RIGHT),
                align(window, "Align top", 'P', Arranging.Edge.TOP),
                align(window, "Align bottom", 'B', Arranging.Edge.BOTTOM),
                new EditChosen(
                        window,
                        "Equal gaps across",
                        'A',
                        null,
                        racks((room, ids) -> Arranging.distribute(room, ids, Arranging.Axis.ACROSS))),
                new EditChosen(
                        window,
                        "Equal gaps down",
                        'D',
                        null,
                        racks((room, ids) -> Arranging.distribute(room, ids, Arranging.Axis.DOWN))),
                new EditChosen(window, "Mark as planned", 'M', null, racks(RackEdits::markPlanned)),
                new EditChosen(window, "Mark as in place", 'I', null, racks(RackEdits::markInPlace)));
    }

    static List<Act> inRack(WindowPane window) {
        return List.of(
                new EditChosen(
                        window,
                        "Same for every tank on the shelf",
                        'S',
                        Act.shiftMenuKey(KeyEvent.VK_T),
                        tank(Alike::onShelf)),
                new EditChosen(
                        window,
                        "Same for every tank in the rack",
                        'R',
                        Act.shiftMenuKey(KeyEvent.VK_E),
                        tank(Alike::onRack)),
                new EditChosen(
                        window, "Fill the shelf with copies", 'F', Act.shiftMenuKey(KeyEvent.VK_F), tank(Copies::fill)),
                new EditChosen(window, "Add a shelf on top", 'A', null, Chosen::addShelf));
    }

    private static Attempt addShelf(Room room, Selection chosen) {
        return ShelfEdits.add(
                room,
                chosen.lead()
                        .flatMap(part -> Selecting.rackOf(room, part))
                        .map(Rack::id)
                        .orElse(new RackId("")));
    }

    /** The tank that leads what is chosen, or that of the outlet that leads. */
    private static BiFunction<Room, Selection, Attempt> tank(BiFunction<Room, TankId, Attempt> doing) {
        return (room, chosen) -> doing.apply(
                room,
                chosen.lead()
                        .flatMap(part -> Selecting.tankOf(room, part))
                        .map(Tank::id)
                        .orElse(new TankId("")));
    }

    private static Act align(WindowPane window, String name, char letter, Arranging.Edge edge) {
        return new EditChosen(window, name, letter, null, racks((room, ids) -> Arranging.align(room, ids, edge)));
    }

    /** Tanks and outlets mean the rack that they stand in. */
    private static BiFunction<Room, Selection, Attempt> racks(BiFunction<Room, List<RackId>, Attempt> doing) {
        return (room, chosen) ->
                doing.apply(room, Handles.carriers(room, chosen).ids(Part.Kind.RACK, RackId::new));
    }
}
