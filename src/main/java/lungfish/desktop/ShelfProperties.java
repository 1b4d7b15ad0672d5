package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.edit.ShelfEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;

/** What can be said of a shelf. */
final class ShelfProperties {
    private ShelfProperties() {}

    /** Of one; several are at heights of their own. */
    static List<Property> of(Selection chosen) {
        List<ShelfId> ids = chosen.ids(Part.Kind.SHELF, ShelfId::new);
        return ids.size() == 1 ? List.of(height(ids.get(0))) : List.of();
    }

    private static Property height(ShelfId id) {
        return new Property.Amount(
                "Above the floor",
                Dimension.DEPTH,
                Property.Usual.NONE,
                room -> Properties.said(shelf(room, id), shelf -> Optional.of(shelf.heightM())),
                (room, m) -> ShelfEdits.raise(room, id, m.orElseGet(() -> shelf(room, id)
                        .findFirst()
                        .orElseThrow()
                        .heightM())));
    }

    private static Stream<Shelf> shelf(Room room, ShelfId id) {
        return room.racks().stream().flatMap(rack -> rack.shelves().stream()).filter(shelf -> shelf.id()
                .equals(id));
    }
}
