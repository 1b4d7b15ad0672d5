package lungfish.piping;

import lungfish.air.ValveCurve;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.FittingClass;
import lungfish.room.Run;

/** The loss factors of what lies on a stretch of a run: elbows from its corners, fittings as drawn, tees at its ends. */
final class RunLosses {
    /** The loss factors on a stretch, and whether a shut valve closes it. */
    record Piece(double lossFactor, boolean shut) {}

    /** The fitting where one run joins another. */
    static final String BRANCH = "tee-branch";

    /** No piece of pipe is shorter than this. */
    private static final double END_M = 1e-3;

    private static final double SQUARE_ELBOW_FROM_DEGREES = 60;

    private final Catalogue catalogue;

    RunLosses(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** From one distance along the run to another, the first included; {@code toM} may pass the start of a closed run. */
    Piece of(RunLine line, double fromM, double toM) {
        double sum = 0;
        for (RunLine.Bend bend : line.bends()) {
            if (lies(line, bend.alongM(), fromM, toM)) {
                sum += factor(elbow(bend));
            }
        }
        boolean shut = false;
        for (Run.Fitting fitting : line.run().fittings()) {
            if (lies(line, fitting.atM(), fromM, toM)) {
                shut |= fitting.opening().orElse(1) <= 0;
                sum += shut ? 0 : factor(fitting);
            }
        }
        return new Piece(sum, shut);
    }

    /** The class of fitting that makes a bend. */
    static String elbow(RunLine.Bend bend) {
        return bend.degrees() >= SQUARE_ELBOW_FROM_DEGREES ? "elbow-90" : "elbow-45";
    }

    /** What stands at the very end of an open run lies on its last piece; at that of a closed one, on its first. */
    private static boolean lies(RunLine line, double alongM, double fromM, double toM) {
        if (!line.run().closed()) {
            double at = Math.max(0, Math.min(alongM, line.lengthM() - END_M));
            return at >= fromM && at < toM;
        }
        double at = alongM >= line.lengthM() ? alongM - line.lengthM() : alongM;
        double nextRound = at + line.lengthM();
        return (at >= fromM && at < toM) || (nextRound >= fromM && nextRound < toM);
    }

    private double factor(Run.Fitting fitting) {
        FittingClass kind = kind(fitting.kind());
        double opening = fitting.opening().orElse(1);
        return kind.valve() && opening < 1 ? kind.lossFactor() * ValveCurve.BALL.lossRatio(opening) : kind.lossFactor();
    }

    /** Straight past a tap or a tee. */
    double passingTap() {
        return factor("tee-run");
    }

    /** Round the corner of a tee, into or out of a branch. */
    double intoBranch() {
        return factor(BRANCH);
    }

    private double factor(String id) {
        return kind(id).lossFactor();
    }

    private FittingClass kind(String id) {
        return catalogue.fitting(id).orElseThrow(() -> new IllegalArgumentException("no fitting '" + id + "'"));
    }
}
