package lungfish.edit;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lungfish.room.Room;

/** Places that something may be put in line with: walls, edges of racks, corners of pipes. Keys go from one to the next. */
public final class Jumps {
    /** Nearer ones are passed: one stands there already. */
    private static final double HERE_M = 0.01;

    private Jumps() {}

    /**
     * The next place along one axis.
     *
     * @param across along x, from left to right; otherwise along y
     * @param way 1 onwards, -1 back
     * @return {@code fromM} where nothing comes any more
     */
    public static double next(Room room, double fromM, boolean across, int way) {
        return all(room, across).filter(at -> way * (at - fromM) > HERE_M).map(at -> way * at).min().stream()
                .map(at -> way * at)
                .findFirst()
                .orElse(fromM);
    }

    private static DoubleStream all(Room room, boolean across) {
        double wallM = across ? room.shell().lengthM() : room.shell().widthM();
        Stream<Box> boxes = Stream.concat(
                room.racks().stream().map(Box::of),
                room.runs().stream()
                        .flatMap(run -> run.points().stream())
                        .map(point -> new Box(point.xM(), point.yM(), point.xM(), point.yM())));
        return DoubleStream.concat(
                DoubleStream.of(0, wallM),
                boxes.flatMapToDouble(box -> across
                        ? DoubleStream.of(box.fromXM(), box.toXM())
                        : DoubleStream.of(box.fromYM(), box.toYM())));
    }
}
