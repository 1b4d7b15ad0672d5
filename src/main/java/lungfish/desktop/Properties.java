package lungfish.desktop;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Room;

/** What can be said of what is chosen; of nothing chosen, what can be said of the room. */
final class Properties {
    private Properties() {}

    static List<Property> of(Room room, Selection chosen, Catalogue catalogue) {
        Function<Part.Kind, Boolean> only = kind -> !chosen.isEmpty() && chosen.isOnly(kind);
        if (chosen.isEmpty()) {
            return RoomProperties.all(catalogue);
        }
        if (only.apply(Part.Kind.RACK)) {
            return RackProperties.of(chosen);
        }
        if (only.apply(Part.Kind.SHELF)) {
            return ShelfProperties.of(chosen);
        }
        if (only.apply(Part.Kind.TANK)) {
            return TankProperties.of(chosen, catalogue);
        }
        if (only.apply(Part.Kind.OUTLET)) {
            return both(OutletProperties.of(chosen, catalogue), SeatProperties.ofTaps(room, chosen));
        }
        if (only.apply(Part.Kind.TAP)) {
            return both(SeatProperties.ofTaps(room, chosen), OutletProperties.of(chosen, catalogue));
        }
        if (only.apply(Part.Kind.RUN)) {
            return RunProperties.of(chosen, catalogue);
        }
        if (only.apply(Part.Kind.FITTING)) {
            return FittingProperties.of(room, chosen, catalogue);
        }
        if (only.apply(Part.Kind.CORNER)) {
            return SeatProperties.ofCorner(chosen);
        }
        if (only.apply(Part.Kind.DOOR)) {
            return WallProperties.ofDoor(chosen);
        }
        if (only.apply(Part.Kind.WALL)) {
            return WallProperties.ofWall(chosen);
        }
        return only.apply(Part.Kind.BLOWER) ? BlowerProperties.of(room, chosen, catalogue) : List.of();
    }

    private static List<Property> both(List<Property> first, List<Property> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }

    /** What each of some things says. */
    static <T, V> Property.Said<V> said(Stream<T> things, Function<T, java.util.Optional<V>> says) {
        return new Property.Said<>(things.map(says).toList());
    }

    static java.util.Optional<Double> boxed(java.util.OptionalDouble amount) {
        return amount.isPresent() ? java.util.Optional.of(amount.getAsDouble()) : java.util.Optional.empty();
    }
}
