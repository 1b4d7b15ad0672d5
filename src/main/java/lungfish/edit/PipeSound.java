package lungfish.edit;

import java.util.List;
import lungfish.room.Room;
import lungfish.room.Run;

/** Whether a run of pipe is one: corners enough, some length, within the room, its fittings within its length. */
record PipeSound(Room room, List<Refused> troubles) {
    /** The least length of pipe that is worth a name. */
    static final double LEAST_M = 0.01;

    void run(Run run) {
        if (!Sound.isLine(run) || run.lengthM() < LEAST_M) {
            troubles.add(Refused.because(
                    run.closed() ? "A loop needs three corners." : "A pipe needs two ends that lie apart.",
                    run.closed() ? "Open the loop first, or delete it." : "Draw it longer, or delete it."));
            return;
        }
        PlaceSound place = PlaceSound.of(room.shell(), troubles);
        double slackM = Sound.pipeSlackM(room);
        run.points().forEach(point -> place.point(point, slackM));
        for (Run.Fitting fitting : run.fittings()) {
            if (!(fitting.atM() >= 0 && fitting.atM() <= run.lengthM() + RackSound.ROUNDING_M)) {
                troubles.add(Refused.because(
                        "The fitting would sit beyond the end of the pipe, which is {most} long.",
                        "Place it on the pipe.",
                        Refused.length("most", run.lengthM())));
            }
        }
    }
}
