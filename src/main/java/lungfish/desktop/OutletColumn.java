package lungfish.desktop;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lungfish.drawing.Shown;
import lungfish.plan.OutletWhys;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Why;
import lungfish.room.OutletId;

/** The columns of the outlets table: what each says, and by what it sorts. */
final class OutletColumn {
    static final OutletColumn STATE =
            new OutletColumn("State", 104, row -> row.state().word(), Comparator.comparing(OutletRow::state));
    static final OutletColumn OUTLET =
            new OutletColumn("Outlet", 72, row -> row.need().id().text());
    static final OutletColumn TANK =
            new OutletColumn("Tank", 120, row -> row.need().seat().tank().name());
    static final OutletColumn DEVICE =
            new OutletColumn("Device", 130, row -> row.need().device().name());
    static final OutletColumn DEPTH = new OutletColumn(
            "Depth",
            66,
            Dimension.DEPTH,
            row -> OptionalDouble.of(row.need().depthM().si()));
    static final OutletColumn TARGET = new OutletColumn(
            "Target",
            82,
            Dimension.AIR_FLOW,
            row -> OptionalDouble.of(row.need().targetM3PerS().si()));
    static final OutletColumn GETS = new OutletColumn("Gets", 82, Dimension.AIR_FLOW, OutletRow::getsM3PerS);
    static final OutletColumn MOST = new OutletColumn(
            "At most", 82, Dimension.AIR_FLOW, row -> row.need().mostM3PerS());
    static final OutletColumn SPARE = new OutletColumn("Spare", 78, Dimension.PRESSURE, OutletRow::sparePa);
    static final OutletColumn VALVE = new OutletColumn("Valve", 54, Dimension.SHARE, OutletRow::opening);
    static final OutletColumn JAR = new OutletColumn(
            "Jar", 56, Dimension.DURATION, row -> OptionalDouble.of(row.outlet().jarS()));
    static final OutletColumn USE = new OutletColumn("Use", 78, OutletRow::use);

    /** From left to right. */
    static final List<OutletColumn> ALL =
            List.of(STATE, OUTLET, TANK, DEVICE, DEPTH, TARGET, GETS, MOST, SPARE, VALVE, JAR, USE);

    private static final int LEAST_WORDS = 92;

    private final String heading;
    private final int width;
    private final boolean figure;
    private final BiFunction<OutletRow, Quantities, String> says;
    private final Comparator<OutletRow> order;

    private OutletColumn(String heading, int width, Function<OutletRow, String> says) {
        this(heading, width, says, Comparator.comparing(says, NaturalOrder.OF_NAMES));
    }

    private OutletColumn(String heading, int width, Function<OutletRow, String> says, Comparator<OutletRow> order) {
        this.heading = heading;
        this.width = width;
        this.figure = false;
        this.says = (row, quantities) -> says.apply(row);
        this.order = order;
    }

    private OutletColumn(String heading, int width, Dimension dimension, Function<OutletRow, OptionalDouble> si) {
        ToDoubleFunction<OutletRow> value = row -> si.apply(row).orElse(Double.NEGATIVE_INFINITY);
        this.heading = heading;
        this.width = width;
        this.figure = true;
        this.says = (row, quantities) -> {
            OptionalDouble there = si.apply(row);
            return there.isPresent() ? quantities.show(there.getAsDouble(), dimension) : "";
        };
        this.order = Comparator.comparingDouble(value);
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
        return switch (heading) {
            case "State" -> "How it stands against its target";
            case "Depth" -> "Of the air release below the water line";
            case "Target" -> "Free air that it should get";
            case "Gets" -> "Free air that it gets, with the valves as said above";
            case "At most" -> "What the device, or what lives there, bears";
            case "Spare" -> "Pressure at its tap beyond what its target takes with its valve open";
            case "Valve" -> "How far it is open";
            case "Jar" -> "Time in which the target fills your inverted jar";
            case "Use" -> "Always on, or sometimes";
            default -> heading;
        };
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

    String says(OutletRow row, Quantities quantities) {
        return says.apply(row, quantities);
    }

    Comparator<OutletRow> order() {
        return order;
    }
}
