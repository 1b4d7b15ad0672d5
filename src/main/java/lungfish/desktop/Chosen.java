package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.BiFunction;
import javax.swing.KeyStroke;
import lungfish.edit.Arranging;
import lungfish.edit.Attempt;
import lungfish.edit.Copies;
import lungfish.edit.Deleting;
import lungfish.edit.Part;
import lungfish.edit.RackEdits;
import lungfish.edit.Selection;
import lungfish.room.RackId;
import lungfish.room.Room;

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

    private static Act align(WindowPane window, String name, char letter, Arranging.Edge edge) {
        return new EditChosen(window, name, letter, null, racks((room, ids) -> Arranging.align(room, ids, edge)));
    }

    /** Tanks and outlets mean the rack that they stand in. */
    private static BiFunction<Room, Selection, Attempt> racks(BiFunction<Room, List<RackId>, Attempt> doing) {
        return (room, chosen) ->
                doing.apply(room, Handles.carriers(room, chosen).ids(Part.Kind.RACK, RackId::new));
    }
}
