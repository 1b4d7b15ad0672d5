package lungfish.catalogue;

/**
 * How a size of pipe is bought, cut, joined and held. A take-off is what a fitting puts between the centre that is drawn and
 * the bottom of its socket, where the pipe ends.
 *
 * @param pipe id of the pipe size
 * @param socketM depth of a socket: so much pipe is inside
 * @param elbow90M take-off of a square elbow
 * @param elbow45M take-off of a half elbow
 * @param teeM take-off of a tee, on its run and on its branch
 * @param couplingM take-off of a coupling, a bush or a reducer
 * @param unionM take-off of a union
 * @param valveM take-off of a valve
 * @param supportM from clip to clip
 * @param stockM the length that it is usually sold in
 * @param cementM3 solvent cement for one socket; 0 where it is soldered
 */
public record PipeJoints(
        String pipe,
        double socketM,
        double elbow90M,
        double elbow45M,
        double teeM,
        double couplingM,
        double unionM,
        double valveM,
        double supportM,
        double stockM,
        double cementM3,
        String source) {
    /** The take-off of a class of fitting on this pipe, m; 0 for a cap, whose socket ends where the pipe does. */
    public double takeOffM(FittingClass fitting) {
        if (fitting.valve() || fitting.id().startsWith("check-")) {
            return valveM;
        }
        return switch (fitting.id()) {
            case "elbow-90", "elbow-90-long", "elbow-90-threaded", "elbow-90-flanged", "return-bend" -> elbow90M;
            case "elbow-45", "elbow-45-threaded" -> elbow45M;
            case "union" -> unionM;
            case "cap", "entry", "exit" -> 0;
            case "coupling", "reducer", "increaser" -> couplingM;
            default -> teeM;
        };
    }
}
