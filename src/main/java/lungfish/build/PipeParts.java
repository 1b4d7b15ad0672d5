package lungfish.build;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import lungfish.build.PartsList.Group;
import lungfish.catalogue.FittingClass;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.PipeSize.Material;
import lungfish.piping.RunMarks;
import lungfish.piping.RunMarks.Kind;
import lungfish.piping.RunMarks.Mark;
import lungfish.room.Run;
import lungfish.room.RunId;

/** The pipe's own parts: stock, fittings with their bushes and adapters, what joins them and holds them up. */
final class PipeParts {
    /** One can of cement, m³: common practice, no source. */
    private static final double CAN_M3 = 250e-6;

    private final Ways ways;
    private final Tally tally;
    private final List<RunMarks> marks;
    private final Pieces pieces;

    PipeParts(Ways ways, Tally tally, List<RunMarks> marks, Pieces pieces) {
        this.ways = ways;
        this.tally = tally;
        this.marks = marks;
        this.pieces = pieces;
    }

    /** Adds the stock lengths that are bought. */
    void pipe(Map<String, Cutting> cuts) {
        cuts.forEach((size, cutting) -> {
            double cutM = pieces.pieces().stream()
                    .filter(piece -> piece.size().equals(size))
                    .mapToDouble(Piece::cutM)
                    .sum();
            tally.pipe(
                    ways.pipe(size),
                    cutM,
                    cutting.stocks().size() * cutting.stockM(),
                    ways.pipe(size).standard());
        });
    }

    /** Adds the fittings: those of the drawing, couplings in mid-piece, bushes and adapters where sizes meet. */
    void fittings() {
        Map<String, Integer> counts = new TreeMap<>();
        Map<String, Integer> between = new TreeMap<>();
        for (RunMarks run : marks) {
            for (Mark mark : run.marks()) {
                if (mark.kind() == Kind.FITTING || mark.kind() == Kind.OPEN) {
                    counts.merge(mark.fitting() + "/" + run.run().size(), 1, Integer::sum);
                    mark.other().ifPresent(other -> meet(between, run.run(), run(other)));
                }
            }
        }
        pieces.couplings().forEach((size, count) -> counts.merge(Pieces.COUPLING + "/" + size, count, Integer::sum));
        counts.forEach(this::fitting);
        between.forEach(this::between);
    }

    private void between(String key, int count) {
        String[] parts = key.split("/", 3);
        String sizes = ways.pipe(parts[1]).name() + " to " + ways.pipe(parts[2]).name();
        tally.supply(Group.FITTINGS, parts[0], parts[1] + "/" + parts[2], sizes, count);
    }

    private void fitting(String key, int count) {
        int slash = key.indexOf('/');
        String kind = key.substring(0, slash);
        FittingClass fitting = ways.catalogue()
                .fitting(kind)
                .orElseThrow(() -> new IllegalArgumentException("no fitting '" + kind + "'"));
        String size = ways.pipe(key.substring(slash + 1)).name();
        OptionalDouble price = OptionalDouble.of(fitting.price());
        boolean lasts = fitting.valve() || kind.equals("union") || kind.equals("gauge") || kind.startsWith("check-");
        if (lasts) {
            tally.exact(Group.FITTINGS, key, PartNames.of(fitting), size, count, price);
        } else {
            tally.spared(Group.FITTINGS, key, PartNames.of(fitting), size, count, price);
        }
    }

    private void meet(Map<String, Integer> between, Run run, Run other) {
        PipeSize one = ways.pipe(run.size());
        PipeSize two = ways.pipe(other.size());
        if (one.material() != two.material()) {
            between.merge("metal-adapter/" + pair(one, two), 1, Integer::sum);
        } else if (one.outsideM() != two.outsideM()) {
            between.merge("bush/" + pair(one, two), 1, Integer::sum);
        }
    }

    private static String pair(PipeSize one, PipeSize two) {
        return one.id() + "/" + two.id();
    }

    private Run run(RunId id) {
        return marks.stream()
                .map(RunMarks::run)
                .filter(run -> run.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no run '" + id + "'"));
    }

    /** Adds clips, cement and primer, solder, tape. */
    void joining(long threads) {
        clips();
        double cementM3 = pieces.pieces().stream()
                .filter(piece -> isPlastic(piece.size()))
                .mapToDouble(piece -> 2 * ways.joints(piece.size()).cementM3())
                .sum();
        tally.supply(Group.SMALL_PARTS, "cement", "", "", Math.ceil(cementM3 / CAN_M3));
        tally.supply(Group.SMALL_PARTS, "primer", "", "", Math.ceil(cementM3 / 2 / CAN_M3));
        boolean metal = pieces.pieces().stream().anyMatch(piece -> !isPlastic(piece.size()));
        tally.supply(Group.SMALL_PARTS, "solder", "", "", metal ? 1 : 0);
        tally.supply(Group.SMALL_PARTS, "thread-tape", "", "", threads > 0 ? 1 : 0);
    }

    private boolean isPlastic(String size) {
        return ways.pipe(size).material() == Material.PVC;
    }

    /** From corner to corner so many that none carries more than its length of pipe: one each, spread evenly. */
    private void clips() {
        Map<String, Integer> counts = new TreeMap<>();
        for (RunMarks each : marks) {
            Run run = each.run();
            double supportM = ways.joints(run).supportM();
            var corners = run.corners();
            for (int i = 1; i < corners.size(); i++) {
                double legM = corners.get(i - 1).distanceM(corners.get(i));
                counts.merge(run.size(), (int) Math.ceil(legM / supportM - 1e-9), Integer::sum);
            }
        }
        counts.forEach((size, count) ->
                tally.supply(Group.SMALL_PARTS, "clip", size, ways.pipe(size).name(), count));
    }
}
