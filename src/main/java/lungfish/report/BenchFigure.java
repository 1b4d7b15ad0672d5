package lungfish.report;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** The figures by which one compares blowers, in the order in which they are read. */
public enum BenchFigure {
    RESERVE_TIRED("Reserve", "tired", Dimension.SHARE, 1),
    RESERVE_NEW("Reserve", "new", Dimension.SHARE, 1),
    LEVEL("Level", "heard", Dimension.SOUND_LEVEL, -1),
    POWER("Draws", "tired", Dimension.POWER, -1),
    RUNS_AT("Runs at", "tired", Dimension.PRESSURE, 0),
    GIVES("Gives there", "tired", Dimension.AIR_FLOW, 0),
    BLED("Let out", "tired", Dimension.AIR_FLOW, 0),
    CONTINUOUS("Bears all day", "", Dimension.PRESSURE, 0),
    TO_BUY("To buy", "", Dimension.MONEY, -1),
    ENERGY("Energy", "", Dimension.MONEY, -1),
    REBUILDS("Rebuilds", "", Dimension.MONEY, -1),
    REPLACEMENTS("Replaced", "", Dimension.MONEY, -1),
    TOTAL(BlowerBench.YEARS + " years", "in all", Dimension.MONEY, -1),
    LIFE("Lives", "", Dimension.DURATION, 1);

    /** Those that stand beside every blower of a list. */
    public static final List<BenchFigure> LISTED =
            List.of(RESERVE_TIRED, RESERVE_NEW, LEVEL, POWER, TO_BUY, TOTAL, LIFE);

    private static final String NONE = "—";

    private final String name;
    private final String more;
    private final Dimension dimension;
    private final int better;

    BenchFigure(String name, String more, Dimension dimension, int better) {
        this.name = name;
        this.more = more;
        this.dimension = dimension;
        this.better = better;
    }

    private OptionalDouble of(BenchRow row) {
        return switch (this) {
            case RESERVE_TIRED -> some(row.candidate().reserveShare());
            case RESERVE_NEW -> some(row.reserveNewShare());
            case LEVEL -> row.candidate().dba();
            case POWER -> running(row, row.candidate().tired().watts());
            case RUNS_AT -> running(row, row.candidate().tired().gaugePa());
            case GIVES -> running(row, row.candidate().tired().freeM3PerS());
            case BLED -> running(row, row.candidate().tired().bledM3PerS());
            case CONTINUOUS -> some(row.candidate().kind().continuousPa());
            case TO_BUY -> some(row.bill().purchase());
            case ENERGY -> running(row, row.bill().energy());
            case REBUILDS -> running(row, row.bill().wearParts());
            case REPLACEMENTS -> running(row, row.bill().replacements());
            case TOTAL -> running(row, row.bill().total());
            case LIFE -> some(row.lifeS());
        };
    }

    private static OptionalDouble some(double si) {
        return OptionalDouble.of(si);
    }

    /** A machine that never gives the targets runs nowhere. */
    private static OptionalDouble running(BenchRow row, double si) {
        return row.runs() ? OptionalDouble.of(si) : OptionalDouble.empty();
    }

    /** Over a column: "Reserve". */
    public String head() {
        return name;
    }

    /** Under that: "tired"; may be empty. */
    public String underHead() {
        return more;
    }

    /** On a line: "Reserve, tired". */
    public String title() {
        return more.isEmpty() ? name : name + ", " + more;
    }

    /** As it is shown; a dash where nobody knows it. */
    public String show(BenchRow row, Quantities quantities) {
        OptionalDouble si = of(row);
        return si.isPresent() ? quantities.show(si.getAsDouble(), dimension) : NONE;
    }

    /** Whether a row is as good as the best of several, where it matters: not where all are alike. */
    public boolean isBest(BenchRow row, List<BenchRow> among, Quantities quantities) {
        OptionalDouble best = among.stream()
                .map(this::of)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(si -> better * si.getAsDouble())
                .max();
        long faces =
                among.stream().map(each -> show(each, quantities)).distinct().count();
        OptionalDouble own = of(row);
        return better != 0
                && faces > 1
                && own.isPresent()
                && best.isPresent()
                && better * own.getAsDouble() == best.getAsDouble();
    }
}
