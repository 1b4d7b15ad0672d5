package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.ValveClass;
import lungfish.edit.Cell.Choice.Option;
import lungfish.quantity.Dimension;
import lungfish.room.Outlet;

/** What each column does with an outlet. */
final class Cells {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private Cells() {}

    static Cell of(Column column) {
        return switch (column) {
            case OUTLET -> new Cell.Fixed(seat -> seat.outlet().id().text());
            case TANK -> new Cell.Fixed(seat -> seat.tank().name());
            case DEVICE -> device();
            case DEPTH -> figure(Dimension.DEPTH, Outlet::depthM, Outlet::withDepthM);
            case LEAST -> flow(Outlet.Flow::leastM3PerS, OutletEdits::least);
            case TARGET -> flow(Outlet.Flow::targetM3PerS, OutletEdits::targeted);
            case MOST -> flow(Outlet.Flow::mostM3PerS, OutletEdits::most);
            case VALVE_KIND -> valveKind();
            case VALVE -> valve();
            case AIRLINE -> airline();
            case AIRLINE_LENGTH -> figure(Dimension.LENGTH, Cells::airlineM, DropEdits::tubed);
            case CHECK_VALVE -> checkValve();
            case USE -> use();
            case ESSENTIAL -> essential();
        };
    }

    private static OptionalDouble airlineM(Outlet outlet) {
        return outlet.airline().map(Outlet.Airline::lengthM).orElse(UNKNOWN);
    }

    /** Sets a number of something. */
    private interface Setter<T> {
        T set(T thing, OptionalDouble value);
    }

    private static Cell figure(Dimension dimension, Function<Outlet, OptionalDouble> get, Setter<Outlet> set) {
        return new Cell.Figure(dimension, get, (outlet, value) -> Optional.of(set.set(outlet, value)), "");
    }

    private static Cell flow(Function<Outlet.Flow, OptionalDouble> get, Setter<Outlet.Flow> set) {
        return figure(
                Dimension.AIR_FLOW,
                outlet -> get.apply(outlet.flow()),
                (outlet, flow) -> outlet.withFlow(set.set(outlet.flow(), flow)));
    }

    private static Cell device() {
        return new Cell.Choice(
                "a device",
                reader -> options(
                        Stream.concat(reader.own().devices().stream(), reader.catalogue().devices().stream())
                                .toList(),
                        DeviceClass::id,
                        DeviceClass::name),
                outlet -> Optional.of(outlet.device()),
                (outlet, kind) -> kind.map(outlet::withDevice));
    }

    private static Cell valveKind() {
        return new Cell.Choice(
                "a valve",
                reader -> options(reader.catalogue().valves(), ValveClass::id, ValveClass::name),
                outlet -> outlet.valve().map(Outlet.Valve::kind),
                (outlet, kind) -> Optional.of(outlet.withValve(kind.map(each -> DropEdits.valve(outlet, each)))));
    }

    private static Cell valve() {
        return new Cell.Figure(
                Dimension.SHARE,
                outlet -> outlet.valve().map(Outlet.Valve::opening).orElse(UNKNOWN),
                Cells::opened,
                "nothing, for this outlet has no valve: choose its kind first");
    }

    private static Optional<Outlet> opened(Outlet outlet, OptionalDouble share) {
        boolean nothingToSay = outlet.valve().isEmpty() && share.isEmpty();
        return nothingToSay
                ? Optional.of(outlet)
                : outlet.valve().map(valve -> outlet.withValve(Optional.of(new Outlet.Valve(valve.kind(), share))));
    }

    private static Cell airline() {
        return new Cell.Choice(
                "an airline",
                reader -> options(reader.catalogue().airlines(), AirlineSize::id, AirlineSize::name),
                outlet -> outlet.airline().flatMap(Outlet.Airline::size),
                (outlet, size) -> Optional.of(DropEdits.tubed(outlet, size)));
    }

    private static Cell checkValve() {
        Option none = new Option(Outlet.NO_CHECK_VALVE, Outlet.NO_CHECK_VALVE);
        return new Cell.Choice(
                "a check valve, or none",
                reader -> Stream.concat(
                                Stream.of(none),
                                options(reader.catalogue().checkValves(), CheckValveClass::id, CheckValveClass::name)
                                        .stream())
                        .toList(),
                Outlet::checkValve,
                (outlet, kind) -> Optional.of(outlet.withCheckValve(kind)));
    }

    private static Cell use() {
        return new Cell.Choice(
                "when it runs",
                reader -> List.of(
                        new Option(Outlet.Use.ALWAYS.name(), "always"),
                        new Option(Outlet.Use.SOMETIMES.name(), "sometimes")),
                outlet -> Optional.of(outlet.use().name()),
                (outlet, use) -> use.map(Outlet.Use::valueOf).map(outlet::used));
    }

    private static Cell essential() {
        return new Cell.Choice(
                "whether it is essential",
                reader -> List.of(new Option("true", "yes"), new Option("false", "no")),
                outlet -> outlet.essential().map(String::valueOf),
                (outlet, that) -> Optional.of(outlet.withEssential(that.map(Boolean::valueOf))));
    }

    private static <T> List<Option> options(List<T> all, Function<T, String> id, Function<T, String> name) {
        return all.stream()
                .map(each -> new Option(id.apply(each), name.apply(each)))
                .toList();
    }
}
