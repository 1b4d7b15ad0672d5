package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Optional;
import lungfish.edit.Attempt;
import lungfish.edit.Clip;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.TankId;

/** Pastes what was copied: outlets into the chosen tanks, tanks onto the chosen shelf, all else onto the floor. */
final class PasteCopied extends Act {
    private final transient View view;

    PasteCopied(WindowPane window) {
        super("Paste", 'P', menuKey(KeyEvent.VK_V));
        this.view = window.view();
    }

    @Override
    void act() {
        view.copied().ifPresent(clip -> view.attempt((room, chosen) -> pasted(clip, room, chosen)));
    }

    private static Attempt pasted(Clip clip, Room room, Selection chosen) {
        if (!clip.outlets().isEmpty()) {
            return clip.intoTanks(room, chosen.ids(Part.Kind.TANK, TankId::new));
        }
        Optional<ShelfId> shelf = clip.tanks().isEmpty() ? Optional.empty() : shelf(room, chosen);
        return shelf.map(on -> clip.ontoShelf(room, on)).orElseGet(() -> clip.ontoFloor(room));
    }

    /** The chosen shelf, or that of the chosen tank, or the lowest of the chosen rack. */
    private static Optional<ShelfId> shelf(Room room, Selection chosen) {
        return chosen.lead().flatMap(part -> Selecting.rackOf(room, part).flatMap(rack -> shelf(rack, part)));
    }

    private static Optional<ShelfId> shelf(Rack rack, Part part) {
        return rack.shelves().stream()
                .filter(shelf -> Part.shelf(shelf.id()).equals(part)
                        || shelf.tanks().stream()
                                .anyMatch(tank -> Part.tank(tank.id()).equals(part)))
                .findFirst()
                .or(() -> rack.shelves().stream().findFirst())
                .map(Shelf::id);
    }
}
