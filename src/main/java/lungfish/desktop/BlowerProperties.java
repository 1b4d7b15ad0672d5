package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.edit.MachineEdits;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Point;
import lungfish.room.Room;

/** What can be said of one machine; several have little in common but their place. */
final class BlowerProperties {
    private static final int MOST_MACHINES = 8;

    private final BlowerId id;
    private final Catalogue catalogue;

    private BlowerProperties(BlowerId id, Catalogue catalogue) {
        this.id = id;
        this.catalogue = catalogue;
    }

    static List<Property> of(Room room, Selection chosen, Catalogue catalogue) {
        List<BlowerId> ids = chosen.ids(Part.Kind.BLOWER, BlowerId::new);
        return ids.size() == 1 ? new BlowerProperties(ids.get(0), catalogue).all(room) : List.of();
    }

    private List<Property> all(Room room) {
        List<BlowerClass> classes = new ArrayList<>(room.ownClasses().blowers());
        classes.addAll(catalogue.blowers());
        return Stream.of(main(classes), place(), fitted(), List.of(circuit(room)))
                .flatMap(List::stream)
                .toList();
    }

    private List<Property> main(List<BlowerClass> classes) {
        return List.of(
                new Property.Words(
                        "Name",
                        said(blower -> Optional.of(blower.name())),
                        (now, name) -> MachineEdits.rename(now, id, name)),
                new Property.OneOf<>(
                        "Kind of machine",
                        PropertyFields.orNothing(classes.stream()),
                        kind -> kind.map(BlowerClass::name).orElse("whatever the plan recommends"),
                        said(blower -> blower.machine().flatMap(name -> classes.stream()
                                .filter(kind -> kind.id().equals(name))
                                .findFirst())),
                        (now, kind) -> MachineEdits.machine(now, id, kind)),
                new Property.OneOf<>(
                        "What it is for",
                        PropertyFields.always(Stream.of(Blower.Role.values())),
                        role -> role.map(BlowerProperties::words).orElse(""),
                        said(blower -> Optional.of(blower.role())),
                        (now, role) -> MachineEdits.role(now, id, role.orElseThrow())),
                new Property.OneOf<>(
                        "How many, side by side",
                        PropertyFields.always(
                                Stream.iterate(1, many -> many + 1).limit(MOST_MACHINES)),
                        many -> many.map(String::valueOf).orElse(""),
                        said(blower -> Optional.of(blower.count())),
                        (now, many) -> MachineEdits.count(now, id, many.orElseThrow())),
                new Property.Amount(
                        "Air that it draws",
                        Dimension.TEMPERATURE,
                        Property.Usual.words("as the room"),
                        said(blower -> Properties.boxed(blower.siting().intakeTemperatureK())),
                        (now, k) -> MachineEdits.intakeK(now, id, k)));
    }

    private List<Property> place() {
        return List.of(
                along("From the left wall", Point::xM, (at, m) -> new Point(m, at.yM(), at.zM())),
                along("From the upper wall", Point::yM, (at, m) -> new Point(at.xM(), m, at.zM())),
                along("Height of its port", Point::zM, (at, m) -> new Point(at.xM(), at.yM(), m)),
                new Property.OneOf<>(
                        "Stands",
                        PropertyFields.always(Stream.of(false, true)),
                        outside -> outside.equals(Optional.of(true)) ? "outside the room" : "in the room",
                        said(blower -> Optional.of(blower.siting().outside())),
                        (now, outside) -> outside.equals(Optional.of(true))
                                ? MachineEdits.standOutside(now, id, OptionalDouble.empty())
                                : MachineEdits.standInside(now, id)));
    }

    /** Where nothing is known of its place it is put at the room's first corner, whatever else is typed. */
    private Property along(String label, ToDoubleFunction<Point> now, BiFunction<Point, Double, Point> moved) {
        return new Property.Amount(
                label,
                Dimension.LENGTH,
                Property.Usual.words("unknown"),
                said(blower -> blower.siting().place().map(now::applyAsDouble)),
                (room, m) -> MachineEdits.place(
                        room,
                        id,
                        moved.apply(
                                at(room).orElse(new Point(0, 0, 0)),
                                m.orElse(at(room).map(now::applyAsDouble).orElse(0.0)))));
    }

    private Optional<Point> at(Room room) {
        return room.blowers().stream()
                .filter(blower -> blower.id().equals(id))
                .findFirst()
                .flatMap(blower -> blower.siting().place());
    }

    private List<Property> fitted() {
        return List.of(
                accessory(
                        "Inlet filter",
                        kind -> kind == AccessoryClass.Kind.INLET_FILTER,
                        Blower.Fittings::inletFilter,
                        Blower.Fittings::withInletFilter),
                accessory(
                        "Silencer",
                        kind -> kind != AccessoryClass.Kind.INLET_FILTER,
                        Blower.Fittings::silencer,
                        Blower.Fittings::withSilencer),
                new Property.Amount(
                        "Hose to the pipe",
                        Dimension.LENGTH,
                        Property.Usual.words("as drawn"),
                        said(blower -> Properties.boxed(blower.fittings().hoseM())),
                        (now, m) -> MachineEdits.fit(now, id, fitted -> fitted.withHoseM(m))),
                new Property.Amount(
                        "Relief valve opens at",
                        Dimension.PRESSURE,
                        Property.Usual.words("none"),
                        said(blower -> Properties.boxed(blower.fittings().reliefPa())),
                        (now, pa) -> MachineEdits.fit(now, id, fitted -> fitted.withReliefPa(pa))),
                new Property.OneOf<>(
                        "Surplus air",
                        PropertyFields.orNothing(Stream.of(true, false)),
                        bleed -> bleed.map(bled -> bled ? "let out by a bleed valve" : "kept, no bleed")
                                .orElse("not said"),
                        said(BlowerProperties::isBled),
                        (now, bleed) -> MachineEdits.bleed(
                                now,
                                id,
                                bleed.<Blower.Bleed>map(bled ->
                                                bled ? new Blower.BledTo(OptionalDouble.empty()) : new Blower.Unbled())
                                        .orElse(new Blower.Unsaid()))));
    }

    private Property circuit(Room room) {
        return Properties.circuit(
                "Circuit", room, said(Blower::circuit), (now, circuit) -> MachineEdits.circuit(now, id, circuit));
    }

    private static Optional<Boolean> isBled(Blower blower) {
        return blower.bleed() instanceof Blower.Unsaid
                ? Optional.empty()
                : Optional.of(blower.bleed() instanceof Blower.BledTo);
    }

    private Property accessory(
            String label,
            Predicate<AccessoryClass.Kind> kinds,
            Function<Blower.Fittings, Optional<String>> now,
            BiFunction<Blower.Fittings, Optional<String>, Blower.Fittings> with) {
        List<AccessoryClass> all = catalogue.accessories().stream()
                .filter(one -> kinds.test(one.kind()))
                .toList();
        return new Property.OneOf<>(
                label,
                PropertyFields.orNothing(all.stream()),
                one -> one.map(AccessoryClass::name).orElse("none"),
                said(blower -> now.apply(blower.fittings()).flatMap(name -> all.stream()
                        .filter(one -> one.id().equals(name))
                        .findFirst())),
                (room, one) -> MachineEdits.fit(room, id, fitted -> with.apply(fitted, one.map(AccessoryClass::id))));
    }

    static String words(Blower.Role role) {
        return switch (role) {
            case PLANNED -> "the planned blower";
            case STANDBY -> "a standby";
            case TODAY -> "a pump of today";
        };
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Blower, Optional<V>> says) {
        return room -> Properties.said(
                room.blowers().stream().filter(blower -> blower.id().equals(id)), says);
    }
}
