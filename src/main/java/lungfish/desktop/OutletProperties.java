package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.ValveClass;
import lungfish.demand.Need;
import lungfish.edit.Attempt;
import lungfish.edit.DropEdits;
import lungfish.edit.OutletEdits;
import lungfish.edit.Selection;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Seat;

/** What can be said of outlets. */
final class OutletProperties {
    private final List<OutletId> ids;
    private final Catalogue catalogue;

    private OutletProperties(List<OutletId> ids, Catalogue catalogue) {
        this.ids = ids;
        this.catalogue = catalogue;
    }

    static List<Property> of(Selection chosen, Catalogue catalogue) {
        List<OutletId> ids =
                chosen.parts().stream().map(part -> new OutletId(part.id())).toList();
        return new OutletProperties(ids, catalogue).all();
    }

    private List<Property> all() {
        return List.of(
                device(),
                amount(
                        "Depth of its release",
                        Dimension.DEPTH,
                        taken("assumed", need -> OptionalDouble.of(need.depthM().si())),
                        Outlet::depthM,
                        OutletEdits::depthM),
                amount(
                        "Turns its tank over",
                        Dimension.TURNOVER,
                        Property.Usual.words("not asked"),
                        outlet -> outlet.flow().turnoverPerS(),
                        OutletEdits::turnover),
                amount(
                        "Target",
                        Dimension.AIR_FLOW,
                        taken(
                                "usual for the device",
                                need -> OptionalDouble.of(need.targetM3PerS().si())),
                        outlet -> outlet.flow().targetM3PerS(),
                        OutletEdits::target),
                amount(
                        "At least",
                        Dimension.AIR_FLOW,
                        taken("as the device", need -> OptionalDouble.of(need.leastM3PerS())),
                        outlet -> outlet.flow().leastM3PerS(),
                        OutletEdits::least),
                amount(
                        "At most",
                        Dimension.AIR_FLOW,
                        taken("as the device", Need::mostM3PerS),
                        outlet -> outlet.flow().mostM3PerS(),
                        OutletEdits::most),
                use(),
                essential(),
                valve(),
                amount(
                        "Valve is open",
                        Dimension.SHARE,
                        Property.Usual.words("not known"),
                        outlet -> outlet.valve().map(Outlet.Valve::opening).orElse(OptionalDouble.empty()),
                        DropEdits::opening),
                airline(),
                amount(
                        "Length of airline",
                        Dimension.LENGTH,
                        new Property.Usual("as drawn", "as drawn", this::drawnM),
                        outlet -> outlet.airline().map(Outlet.Airline::lengthM).orElse(OptionalDouble.empty()),
                        DropEdits::airlineLength),
                check());
    }

    /** Those of outlets in place; a planned one has no airline yet. */
    private Property.Said<Double> drawnM(Plan plan) {
        return new Property.Said<>(plan.piped().stream()
                .flatMap(piped -> IntStream.range(0, piped.needs().size())
                        .filter(i -> ids.contains(piped.needs().get(i).id()))
                        .mapToObj(i -> Optional.of(piped.airlineM().get(i))))
                .toList());
    }

    /** What the plan takes of each outlet. */
    private Property.Usual taken(String words, Function<Need, OptionalDouble> of) {
        return new Property.Usual(
                words,
                words,
                plan -> Properties.said(
                        Stream.concat(plan.demand().needs().stream(), plan.demand().planned().stream())
                                .filter(need -> ids.contains(need.id())),
                        need -> Properties.boxed(of.apply(need))));
    }

    private interface Saying {
        Attempt say(Room room, List<OutletId> ids, OptionalDouble si);
    }

    private Property amount(
            String label,
            Dimension dimension,
            Property.Usual usual,
            Function<Outlet, OptionalDouble> now,
            Saying saying) {
        return new Property.Amount(
                label,
                dimension,
                usual,
                said(outlet -> Properties.boxed(now.apply(outlet))),
                (room, si) -> saying.say(room, ids, si));
    }

    private Property device() {
        return new Property.OneOf<>(
                "Device",
                PropertyFields.always(catalogue.devices().stream()),
                one -> one.map(DeviceClass::name).orElse(""),
                said(outlet -> catalogue.device(outlet.device())),
                (room, one) -> OutletEdits.device(room, ids, one.orElseThrow()));
    }

    private Property use() {
        return new Property.OneOf<>(
                "Runs",
                PropertyFields.always(Stream.of(Outlet.Use.values())),
                use -> use.equals(Optional.of(Outlet.Use.SOMETIMES)) ? "sometimes" : "always",
                said(outlet -> Optional.of(outlet.use())),
                (room, use) -> OutletEdits.use(room, ids, use.orElseThrow()));
    }

    private Property essential() {
        return new Property.OneOf<>(
                "Must stay on",
                PropertyFields.orNothing(Stream.of(true, false)),
                that -> that.map(yes -> yes ? "yes" : "no").orElse("not said"),
                said(Outlet::essential),
                (room, that) -> OutletEdits.essential(room, ids, that));
    }

    private Property valve() {
        return new Property.OneOf<>(
                "Valve",
                PropertyFields.orNothing(catalogue.valves().stream()),
                kind -> kind.map(ValveClass::name)
                        .orElse("assumed: " + catalogue.valves().get(0).name()),
                said(outlet -> outlet.valve().map(Outlet.Valve::kind).flatMap(catalogue::valve)),
                (room, kind) -> DropEdits.valve(room, ids, kind));
    }

    private Property airline() {
        return new Property.OneOf<>(
                "Airline",
                PropertyFields.orNothing(catalogue.airlines().stream()),
                size -> size.map(AirlineSize::name)
                        .orElse("assumed: " + catalogue.airlines().get(0).name()),
                said(outlet -> outlet.airline().flatMap(Outlet.Airline::size).flatMap(catalogue::airline)),
                (room, size) -> DropEdits.airline(room, ids, size));
    }

    private Property check() {
        BiFunction<Room, Optional<CheckValveClass>, Attempt> say =
                (room, kind) -> kind.map(fitted -> DropEdits.checkValve(room, ids, fitted))
                        .orElseGet(() -> DropEdits.noCheckValve(room, ids));
        return new Property.OneOf<>(
                "Check valve",
                PropertyFields.orNothing(catalogue.checkValves().stream()),
                kind -> kind.map(CheckValveClass::name).orElse("none"),
                said(outlet -> outlet.checkValve().flatMap(catalogue::checkValve)),
                say);
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Outlet, Optional<V>> says) {
        return room -> Properties.said(
                room.seats().stream().map(Seat::outlet).filter(outlet -> ids.contains(outlet.id())), says);
    }
}
