package lungfish.edit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A line that things snap to: straight down the drawing at one x, or straight across it at one y.
 *
 * @param atM its x or y
 * @param fromM where it begins along the other axis
 * @param toM where it ends along the other axis
 */
record SnapLine(Guide.Reason reason, double atM, double fromM, double toM, String words) {
    /** A line that draws an edge to it, and how far. */
    record Pull(SnapLine line, double byM) {}

    /** The nearest of the lines to any of these edges, if it is near enough. */
    static Optional<Pull> nearest(List<SnapLine> lines, List<Double> edgesM, double toleranceM) {
        return lines.stream()
                .flatMap(line -> edgesM.stream().map(edge -> new Pull(line, line.atM - edge)))
                .filter(pull -> Math.abs(pull.byM) <= toleranceM)
                .min(Comparator.comparingDouble((Pull pull) -> Math.abs(pull.byM))
                        .thenComparing(pull -> pull.line.reason));
    }

    /** As a guide down the drawing, long enough to reach what snapped to it. */
    Guide down(double reachFromM, double reachToM) {
        return new Guide(reason, atM, Math.min(fromM, reachFromM), atM, Math.max(toM, reachToM), words);
    }

    /** As a guide across the drawing. */
    Guide across(double reachFromM, double reachToM) {
        return new Guide(reason, Math.min(fromM, reachFromM), atM, Math.max(toM, reachToM), atM, words);
    }
}
