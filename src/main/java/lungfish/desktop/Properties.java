package lungfish.desktop;

import java.util.List;
import java.util.function.Function;
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
            return RoomProperties.all();
        }
        if (only.apply(Part.Kind.RACK)) {
            return RackProperties.of(chosen);
        }
        if (only.apply(Part.Kind.TANK)) {
            return TankProperties.of(chosen, catalogue);
        }
        if (only.apply(Part.Kind.OUTLET) || only.apply(Part.Kind.TAP)) {
            return OutletProperties.of(chosen, catalogue);
        }
        if (only.apply(Part.Kind.RUN)) {
            return RunProperties.of(chosen, catalogue);
        }
        return only.apply(Part.Kind.BLOWER) ? BlowerProperties.of(room, chosen, catalogue) : List.of();
    }

    /** What each of some things says. */
    static <T, V> Property.Said<V> said(java.util.stream.Stream<T> things, Function<T, java.util.Optional<V>> says) {
        return new Property.Said<>(things.map(says).toList());
    }

    static java.util.Optional<Double> boxed(java.util.OptionalDouble amount) {
        return amount.isPresent() ? java.util.Optional.of(amount.getAsDouble()) : java.util.Optional.empty();
    }
}
