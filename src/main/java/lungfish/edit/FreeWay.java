package lungfish.edit;

import java.util.List;
import java.util.stream.Stream;
import lungfish.room.Rack;
import lungfish.room.Room;

/** How far a copy is set off from its model, along x and y, m: to free floor, where there is any. */
final class FreeWay {
    /** How far a copy is set off where there is no free floor beside its model. */
    private static final double OFFSET_M = 0.2;

    /** Racks stand back to back and side by side: touching is no overlap. */
    private static final double TOUCHING_M = 1e-6;

    private static final double[] STAYS = {0, 0};

    private FreeWay() {}

    /** Right, left, below or above the racks; else a little way towards the middle of the room. */
    static double[] beside(Room room, FloorClip clip) {
        return ways(clip)
                .filter(way -> isFree(room, clip.racks(), way))
                .findFirst()
                .orElseGet(() -> aLittle(room, clip));
    }

    /** Where its model stood, if that is free: in another room, or after it was cut. Else beside; and within the walls. */
    static double[] into(Room room, FloorClip clip) {
        boolean isFree = clip.racks().isEmpty()
                ? room.runs().stream().noneMatch(run -> clip.runs().stream()
                        .anyMatch(copy -> copy.points().equals(run.points())))
                : isFree(room, clip.racks(), STAYS);
        double[] way = isFree && !clip.isLoose() ? STAYS : beside(room, clip);
        return clip.isLoose() ? way : within(room, all(clip), way);
    }

    /** Around racks and pipe. */
    private static Box all(FloorClip clip) {
        Stream<Box> pipe = clip.runs().stream()
                .flatMap(run -> run.points().stream())
                .map(point -> new Box(point.xM(), point.yM(), point.xM(), point.yM()));
        return Box.around(
                Stream.concat(clip.racks().stream().map(Box::of), pipe).toList());
    }

    private static Box around(FloorClip clip) {
        return Box.around(clip.racks().stream().map(Box::of).toList());
    }

    private static Stream<double[]> ways(FloorClip clip) {
        if (clip.racks().isEmpty()) {
            return Stream.empty();
        }
        Box all = around(clip);
        return Stream.of(
                new double[] {all.spanXM(), 0},
                new double[] {-all.spanXM(), 0},
                new double[] {0, all.spanYM()},
                new double[] {0, -all.spanYM()});
    }

    private static double[] aLittle(Room room, FloorClip clip) {
        if (clip.racks().isEmpty()) {
            return new double[] {OFFSET_M, OFFSET_M};
        }
        Box all = around(clip);
        return new double[] {
            all.midXM() > room.shell().lengthM() / 2 ? -OFFSET_M : OFFSET_M,
            all.midYM() > room.shell().widthM() / 2 ? -OFFSET_M : OFFSET_M
        };
    }

    private static double[] within(Room room, Box box, double[] way) {
        return new double[] {
            within(way[0], -box.fromXM(), room.shell().lengthM() - box.toXM()),
            within(way[1], -box.fromYM(), room.shell().widthM() - box.toYM())
        };
    }

    /** What does not fit between the walls begins at the first of them. */
    private static double within(double by, double least, double most) {
        return Math.max(least, Math.min(by, most));
    }

    private static boolean isFree(Room room, List<Rack> racks, double[] way) {
        Box floor = new Box(0, 0, room.shell().lengthM(), room.shell().widthM());
        return racks.stream()
                .map(rack -> Box.of(rack).moved(way[0], way[1]))
                .allMatch(box -> floor.holds(box)
                        && room.racks().stream()
                                .noneMatch(other -> Box.of(other).overlaps(box, TOUCHING_M)));
    }
}
