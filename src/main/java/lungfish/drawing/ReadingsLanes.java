package lungfish.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lungfish.logbook.Logbook;
import lungfish.logbook.Point;
import lungfish.quantity.Dimension;

/** The lanes of a logbook below that of the blower's share: gauge, watts, level, and the jars that tell most. */
final class ReadingsLanes {
    /** Of so many outlets jars are drawn; more would push the rest off the page. */
    static final int MOST_JARS = 3;

    private static final double WIDE_PX = 54;
    private static final double NARROW_PX = 34;

    /**
     * One of them.
     *
     * @param heightPx of its plot, at 100 %
     */
    record Lane(String name, List<Point> points, Dimension dimension, ReadingsLane.Mark mark, double heightPx) {}

    private ReadingsLanes() {}

    /** Those in which something was read. */
    static List<Lane> of(Logbook logbook) {
        List<Lane> lanes = new ArrayList<>();
        lanes.add(new Lane(
                "Gauge at the blower", logbook.gauges(), Dimension.PRESSURE, ReadingsLane.Mark.SQUARE, WIDE_PX));
        lanes.add(new Lane("Power", logbook.watts(), Dimension.POWER, ReadingsLane.Mark.TRIANGLE, WIDE_PX));
        lanes.add(new Lane(
                "Level at the listener", logbook.levels(), Dimension.SOUND_LEVEL, ReadingsLane.Mark.DIAMOND, WIDE_PX));
        lanes.removeIf(lane -> lane.points().isEmpty());
        lanes.addAll(jars(logbook));
        return List.copyOf(lanes);
    }

    /** Of the outlets of which a jar was read more than once, those whose air changed most since the first. */
    private static List<Lane> jars(Logbook logbook) {
        List<Map.Entry<String, List<Point>>> again = logbook.jars().entrySet().stream()
                .filter(jar -> jar.getValue().size() > 1)
                .sorted(Comparator.comparingDouble(jar -> -change(jar.getValue())))
                .toList();
        String which = again.size() > MOST_JARS ? " (of " + again.size() + " outlets these changed most)" : "";
        List<Lane> lanes = new ArrayList<>();
        again.stream()
                .limit(MOST_JARS)
                .forEach(jar -> lanes.add(new Lane(
                        "Jar at outlet " + jar.getKey() + (lanes.isEmpty() ? which : ""),
                        jar.getValue(),
                        Dimension.AIR_FLOW,
                        ReadingsLane.Mark.POINTER,
                        NARROW_PX)));
        return lanes;
    }

    /** Half as much air is as great a change as twice as much. */
    private static double change(List<Point> points) {
        return Math.abs(
                Math.log(points.get(points.size() - 1).si() / points.get(0).si()));
    }
}
