package lungfish.piping;

import java.util.Map;
import java.util.TreeMap;
import lungfish.room.Room;
import lungfish.room.Run;

/**
 * What the drawn pipe is made of.
 *
 * @param lengthM of each pipe size
 * @param fittings how many of each class: elbows from the corners, tees where runs are joined, and those drawn
 */
public record PipeCount(Map<String, Double> lengthM, Map<String, Integer> fittings) {
    public PipeCount {
        lengthM = new TreeMap<>(lengthM);
        fittings = new TreeMap<>(fittings);
    }

    /** Counted from the drawing. */
    public static PipeCount of(Room room) {
        Layout layout = new Layout(room);
        Map<String, Double> lengths = new TreeMap<>();
        Map<String, Integer> fittings = new TreeMap<>();
        for (RunLine line : layout.lines()) {
            lengths.merge(line.run().size(), line.lengthM(), Double::sum);
            line.bends().forEach(bend -> fittings.merge(RunLosses.elbow(bend), 1, Integer::sum));
            for (Run.Fitting fitting : line.run().fittings()) {
                fittings.merge(fitting.kind(), 1, Integer::sum);
            }
        }
        int tees = new Joints(layout).joints().size();
        if (tees > 0) {
            fittings.merge(RunLosses.BRANCH, tees, Integer::sum);
        }
        return new PipeCount(lengths, fittings);
    }
}
