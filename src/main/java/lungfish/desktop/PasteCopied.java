package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import lungfish.edit.Attempt;
import lungfish.edit.Clip;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * Pastes what was copied: outlets into the chosen tanks, tanks onto the chosen shelf, shelves onto the chosen rack, all else
 * onto the floor; a list of tanks from a spreadsheet too.
 */
final class PasteCopied extends Act {
    private final transient WindowPane window;
    private final transient View view;

    PasteCopied(WindowPane window) {
        super("Paste", 'P', menuKey(KeyEvent.VK_V));
        this.window = window;
        this.view = window.view();
    }

    @Override
    void act() {
        boolean isNews = view.copied().isEmpty() || !view.isCopiedLast(TextClip.text());
        if (isNews && window.imports().pasteIfTanks()) {
            return;
        }
        view.copied().ifPresent(clip -> view.attempt((room, chosen) -> pasted(clip, room, chosen)));
    }

    private static Attempt pasted(Clip clip, Room room, Selection chosen) {
        if (!clip.outlets().isEmpty()) {
            return clip.intoTanks(room, tanks(room, chosen));
        }
        if (!clip.shelves().isEmpty()) {
            return clip.ontoRack(room, rack(room, chosen));
        }
        Optional<ShelfId> shelf = clip.tanks().isEmpty() ? Optional.empty() : shelf(room, chosen);
        return shelf.map(on -> clip.ontoShelf(room, on)).orElseGet(() -> clip.ontoFloor(room));
    }

    /** The chosen tanks, and those of the chosen outlets. */
    private static List<TankId> tanks(Room room, Selection chosen) {
        return chosen.parts().stream()
                .flatMap(part -> Selecting.tankOf(room, part).stream())
                .map(Tank::id)
                .distinct()
                .toList();
    }

    private static RackId rack(Room room, Selection chosen) {
        return chosen.lead()
                .flatMap(part -> Selecting.rackOf(room, part))
                .map(Rack::id)
                .orElse(new RackId(""));
    }

    /** The chosen shelf, or that of the chosen tank, or the lowest of the chosen rack. */
    private static Optional<ShelfId> shelf(Room room, Selection chosen) {
        return chosen.lead().flatMap(part -> Selecting.rackOf(room, part).flatMap(rack -> shelf(rack, part)));
    }

    private static Optional<ShelfId> shelf(Rack rack, Part part) {
        return rack.shelves().stream()
                .filter(shelf -> Part.shelf(shelf.id()).equals(part)
                        || shelf.tanks().stream().anyMatch(tank -> holds(tank, part)))
                .findFirst()
                .or(() -> rack.shelves().stream().findFirst())
                .map(Shelf::id);
    }

    private static boolean holds(Tank tank, Part part) {
        return Part.tank(tank.id()).equals(part)
                || tank.outlets().stream()
                        .anyMatch(outlet -> Part.outlet(outlet.id()).equals(part));
    }
}
