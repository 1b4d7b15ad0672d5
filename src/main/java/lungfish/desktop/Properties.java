package lungfish.desktop;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.edit.Attempt;
import lungfish.edit.OwnValue;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** What can be said of what is chosen; of nothing chosen, what can be said of the room. */
final class Properties {
    private Properties() {}

    static List<Property> of(View view, Selection chosen) {
        Room room = view.desk().room();
        Catalogue catalogue = view.desk().shared().catalogue();
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
            return TankProperties.of(view, chosen);
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

    /** A number that the keeper may say. */
    static Property amount(String label, OwnValue value, Property.Usual usual) {
        return new Property.Amount(
                label,
                value.dimension(),
                usual,
                room -> new Property.Said<>(List.of(boxed(value.now().apply(room)))),
                value::say);
    }

    /** One of the circuits of the room, or none that is known. */
    static Property circuit(
            String label,
            Room room,
            Function<Room, Property.Said<CircuitId>> now,
            BiFunction<Room, java.util.Optional<CircuitId>, Attempt> say) {
        return circuit(label, "not known", room, now, say);
    }

    /** The same, with what is meant where none is said. */
    static Property circuit(
            String label,
            String unsaid,
            Room room,
            Function<Room, Property.Said<CircuitId>> now,
            BiFunction<Room, java.util.Optional<CircuitId>, Attempt> say) {
        return new Property.OneOf<>(
                label,
                PropertyFields.orNothing(room.circuits().stream().map(Circuit::id)),
                id -> id.flatMap(that -> room.circuits().stream()
                                .filter(circuit -> circuit.id().equals(that))
                                .map(Circuit::name)
                                .findFirst())
                        .orElse(unsaid),
                now,
                say);
    }

    /** Yes or no, where either is known. */
    static Property yesOrNo(
            String label,
            String unsaid,
            Function<Room, Property.Said<Boolean>> now,
            BiFunction<Room, java.util.Optional<Boolean>, Attempt> say) {
        return new Property.OneOf<>(
                label,
                PropertyFields.orNothing(Stream.of(true, false)),
                truth -> truth.map(that -> that ? "yes" : "no").orElse(unsaid),
                now,
                say);
    }

    static java.util.Optional<Double> boxed(java.util.OptionalDouble amount) {
        return amount.isPresent() ? java.util.Optional.of(amount.getAsDouble()) : java.util.Optional.empty();
    }
}
