package lungfish.desktop;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import lungfish.drawing.Shown;
import lungfish.edit.Column;
import lungfish.edit.Reader;
import lungfish.plan.OutletWhys;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.reason.Why;
import lungfish.room.Outlet;
import lungfish.room.OutletId;

/** The columns of the outlets table: what each says, by what it sorts, and what is typed into it. Others are answers of the plan. */
final class OutletColumn {
    static final OutletColumn STATE = answer(
            "State",
            104,
            "How it stands against its target",
            (row, reader) -> row.state().word(),
            Comparator.comparing(OutletRow::state));
    static final OutletColumn OUTLET = answer(
            "Outlet",
            76,
            "Its name in the file and on the drawing",
            (row, reader) -> row.id().text(),
            byName(row -> row.id().text()));
    static final OutletColumn TANK = words(
            Column.TANK, 120, "The tank it hangs in", row -> row.seat().tank().name());
    static final OutletColumn DEVICE = words(Column.DEVICE, 130, "What the air leaves through", OutletRow::device);
    static final OutletColumn DEPTH =
            input(Column.DEPTH, 74, Dimension.DEPTH, "Of the air release below the water line", OutletRow::depthM);
    static final OutletColumn TARGET =
            input(Column.TARGET, 82, Dimension.AIR_FLOW, "Free air that it should get", OutletRow::targetM3PerS);
    static final OutletColumn GETS = answer(
            "Gets",
            82,
            Dimension.AIR_FLOW,
            "Free air that it gets, with the valves as said above",
            OutletRow::getsM3PerS);
    static final OutletColumn MOST = input(
            Column.MOST, 88, Dimension.AIR_FLOW, "What the device, or what lives there, bears", OutletRow::mostM3PerS);
    static final OutletColumn SPARE = answer(
            "Spare",
            78,
            Dimension.PRESSURE,
            "Pressure at its tap beyond what its target takes with its valve open",
            OutletRow::sparePa);
    static final OutletColumn VALVE =
            input(Column.VALVE, 66, Dimension.SHARE, "How far it is open", OutletRow::opening);
    static final OutletColumn JAR =
            answer("Jar", 66, Dimension.DURATION, "Time in which the target fills your inverted jar", OutletRow::jarS);
    static final OutletColumn USE = words(Column.USE, 92, "Always on, or sometimes", OutletRow::use);
    static final OutletColumn LEAST = input(
            Column.LEAST,
            92,
            Dimension.AIR_FLOW,
            "Free air below which it no longer does its work",
            OutletRow::leastM3PerS);
    static final OutletColumn VALVE_KIND =
            words(Column.VALVE_KIND, 150, "The kind of valve on its airline", row -> row.outlet()
                    .valve()
                    .map(Outlet.Valve::kind)
                    .orElse(""));
    static final OutletColumn AIRLINE = words(Column.AIRLINE, 150, "The size of its airline", row -> row.outlet()
            .airline()
            .flatMap(Outlet.Airline::size)
            .orElse(""));
    static final OutletColumn AIRLINE_LENGTH = input(
            Column.AIRLINE_LENGTH,
            120,
            Dimension.LENGTH,
            "From its tap to its device; empty: as drawn",
            OutletRow::airlineM);
    static final OutletColumn CHECK_VALVE =
            words(Column.CHECK_VALVE, 150, "What keeps water out of the pipe", row -> row.outlet()
                    .checkValve()
                    .orElse(""));
    static final OutletColumn ESSENTIAL =
            words(Column.ESSENTIAL, 84, "Whether it is kept going when air is short", row -> row.outlet()
                    .essential()
                    .map(String::valueOf)
                    .orElse(""));

    /** Those that are always shown, from left to right. */
    static final List<OutletColumn> USUAL =
            List.of(STATE, OUTLET, TANK, DEVICE, DEPTH, TARGET, GETS, MOST, SPARE, VALVE, JAR, USE);

    /** With those that are shown when they are asked for. */
    static final List<OutletColumn> ALL = List.of(
            STATE,
            OUTLET,
            TANK,
            DEVICE,
            DEPTH,
            TARGET,
            GETS,
            MOST,
            SPARE,
            VALVE,
            JAR,
            USE,
            LEAST,
            VALVE_KIND,
            AIRLINE,
            AIRLINE_LENGTH,
            CHECK_VALVE,
            ESSENTIAL);

    private static final int LEAST_WORDS = 92;

    private final String heading;
    private final int width;
    private final boolean figure;
    private final String help;
    private final Optional<Column> input;
    private final BiFunction<OutletRow, Reader, String> says;
    private final Comparator<OutletRow> order;

    private OutletColumn(
            String heading,
            int width,
            boolean figure,
            String help,
            Optional<Column> input,
            BiFunction<OutletRow, Reader, String> says,
            Comparator<OutletRow> order) {
        this.heading = heading;
        this.width = width;
        this.figure = figure;
        this.help = help;
        this.input = input;
        this.says = says;
        this.order = order;
    }

    private static OutletColumn answer(
            String heading,
            int width,
            String help,
            BiFunction<OutletRow, Reader, String> says,
            Comparator<OutletRow> order) {
        return new OutletColumn(heading, width, false, help, Optional.empty(), says, order);
    }

    private static OutletColumn answer(
            String heading, int width, Dimension dimension, String help, Function<OutletRow, OptionalDouble> si) {
        return new OutletColumn(heading, width, true, help, Optional.empty(), figure(dimension, si), bySize(si));
    }

    private static OutletColumn words(Column column, int width, String help, Function<OutletRow, String> sorts) {
        return new OutletColumn(
                column.heading(),
                width,
                false,
                help,
                Optional.of(column),
                (row, reader) -> column.show(row.seat(), reader),
                byName(sorts));
    }

    private static OutletColumn input(
            Column column, int width, Dimension dimension, String help, Function<OutletRow, OptionalDouble> si) {
        return new OutletColumn(
                column.heading(), width, true, help, Optional.of(column), figure(dimension, si), bySize(si));
    }

    private static BiFunction<OutletRow, Reader, String> figure(
            Dimension dimension, Function<OutletRow, OptionalDouble> si) {
        return (row, reader) -> {
            OptionalDouble there = si.apply(row);
            return there.isPresent() ? reader.quantities().show(there.getAsDouble(), dimension) : "";
        };
    }

    private static Comparator<OutletRow> bySize(Function<OutletRow, OptionalDouble> si) {
        return Comparator.comparingDouble(row -> si.apply(row).orElse(Double.NEGATIVE_INFINITY));
    }

    private static Comparator<OutletRow> byName(Function<OutletRow, String> says) {
        return Comparator.comparing(says, NaturalOrder.OF_NAMES);
    }

    String heading() {
        return heading;
    }

    /** How wide it likes to be, at 100 %. */
    int width() {
        return width;
    }

    /** Whether it is set at the right, as figures are. */
    boolean isFigure() {
        return figure;
    }

    /** What the heading means, for those who ask. */
    String help() {
        return help;
    }

    /** What is typed into it; empty for an answer. How far a valve should be open is an answer, how far it is open none. */
    Optional<Column> input(Shown shown) {
        boolean isAnswer = this == VALVE && shown == Shown.AS_IT_SHOULD_BE_SET;
        return isAnswer ? Optional.empty() : input;
    }

    /** Whether the room says nothing there, so that what is shown is what the plan takes instead. */
    boolean isAssumed(OutletRow row, Reader reader) {
        return input(row.shown())
                .filter(column -> column.show(row.seat(), reader).isEmpty()
                        && !says(row, reader).isEmpty())
                .isPresent();
    }

    /** Why the figures of an outlet are what they are, that of this column first. */
    List<Why> whys(Plan plan, OutletId outlet, Shown shown) {
        OutletWhys.Trial trial =
                switch (shown) {
                    case AS_IT_SHOULD_BE_SET -> OutletWhys.Trial.AS_IT_SHOULD_BE_SET;
                    case AS_IT_IS_SET -> OutletWhys.Trial.AS_IT_IS_SET;
                };
        Comparator<Why> thisFirst = Comparator.comparing(why -> !why.figure().startsWith(explained()));
        return OutletWhys.of(plan, outlet, trial).stream().sorted(thisFirst).toList();
    }

    /** How the name of the figure begins that explains it; other columns begin with the spare pressure. */
    private String explained() {
        return switch (heading) {
            case "Depth" -> "depth";
            case "Target" -> "target";
            case "Gets" -> "air";
            case "At most" -> "most";
            case "Jar" -> "time";
            default -> "spare";
        };
    }

    /** How narrow it may become: figures and states are never cut, long names may be. */
    int leastWidth() {
        return this == TANK || this == DEVICE ? LEAST_WORDS : width;
    }

    String says(OutletRow row, Reader reader) {
        return says.apply(row, reader);
    }

    Comparator<OutletRow> order() {
        return order;
    }
}
