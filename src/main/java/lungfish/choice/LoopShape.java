package lungfish.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Point;
import lungfish.room.Run;

/**
 * Opens loops and closes open mains.
 *
 * <p>A loop is opened on the side farthest from where the air comes onto it: the stretch between the two taps there is left
 * out, for nobody needs its air, and each end is capped. An open main is closed from its last corner to its first, at right
 * angles; a straight one comes back beside itself.
 */
final class LoopShape {
    /** The fitting that ends a pipe. */
    static final String CAP = "cap";

    /** Pipe that stands out beyond the last tap, for the cap. */
    private static final double STUB_M = 0.1;

    /** A pipe that comes back beside itself leaves so much between, for a hand. */
    private static final double BESIDE_M = 0.15;

    /** Ends whose heights differ by more are not joined by a level pipe. */
    private static final double LEVEL_M = 0.05;

    private static final double SAME_M = 1e-3;

    private LoopShape() {}

    /** The stretch of a loop that is left out, {@code toM} beyond its length where it passes the start. */
    private record Gap(double fromM, double toM) {
        double lengthM() {
            return toM - fromM;
        }

        boolean holds(double atM, double roundM) {
            return (atM > fromM && atM < toM) || (atM + roundM > fromM && atM + roundM < toM);
        }

        private Gap withStubs() {
            double stub = Math.min(STUB_M, lengthM() / 3);
            return new Gap(fromM + stub, toM - stub);
        }
    }

    /** The loop opened; its fittings still lie where they lay along the loop. Empty where it has no two stops. */
    static Optional<Run> opened(MainLine line) {
        return line.farM().flatMap(far -> gap(line, far)).map(gap -> without(line.run(), gap.withStubs()));
    }

    /** Between the stops on either side of the far place; where it is a stop itself, the longer of the two beside it. */
    private static Optional<Gap> gap(MainLine line, double farM) {
        List<Double> stops = line.stopsM();
        double roundM = line.run().lengthM();
        List<Gap> gaps = new ArrayList<>();
        for (int i = 0; i < stops.size() && stops.size() > 1; i++) {
            boolean isLast = i + 1 == stops.size();
            gaps.add(new Gap(stops.get(i), isLast ? stops.get(0) + roundM : stops.get(i + 1)));
        }
        return gaps.stream()
                .filter(gap ->
                        gap.holds(farM, roundM) || gap.holds(farM + SAME_M, roundM) || gap.holds(farM - SAME_M, roundM))
                .max(Comparator.comparingDouble(Gap::lengthM));
    }

    private static Run without(Run loop, Gap gap) {
        double roundM = loop.lengthM();
        double startM = gap.toM() % roundM;
        double keptM = roundM - gap.lengthM();
        List<double[]> corners = new ArrayList<>();
        double alongM = 0;
        for (int i = 0; i < loop.points().size(); i++) {
            double beyondM = ((alongM - startM) % roundM + roundM) % roundM;
            if (beyondM > SAME_M && beyondM < keptM - SAME_M) {
                corners.add(new double[] {beyondM, i});
            }
            alongM += loop.points().get(i).distanceM(loop.corners().get(i + 1));
        }
        corners.sort(Comparator.comparingDouble(corner -> corner[0]));
        List<Point> points = new ArrayList<>();
        points.add(rounded(loop.at(startM)));
        corners.forEach(corner -> points.add(loop.points().get((int) corner[1])));
        points.add(rounded(loop.at(gap.fromM() % roundM)));
        return loop.through(points, false)
                .fitted(loop.fittings().stream()
                        .filter(fitting -> !gap.holds(fitting.atM(), roundM))
                        .toList());
    }

    /** Caps on both ends of an opened loop. */
    static Run capped(Run open) {
        List<Run.Fitting> fittings = new ArrayList<>(open.fittings());
        fittings.add(new Run.Fitting(CAP, 0, OptionalDouble.empty()));
        fittings.add(new Run.Fitting(CAP, Math.floor(open.lengthM() * 1e4) / 1e4, OptionalDouble.empty()));
        return open.fitted(fittings);
    }

    /** Whether the two ends of a main can be joined: it is open, no bridge between other pipes, and level. */
    static boolean canClose(MainLine line) {
        List<Point> points = line.run().points();
        return line.run().role() == Run.Role.MAIN
                && !line.run().closed()
                && points.size() > 1
                && !line.isBridge()
                && Math.abs(points.get(0).zM() - points.get(points.size() - 1).zM()) <= LEVEL_M
                && line.run().lengthM() > 4 * BESIDE_M;
    }

    /** The main closed; its caps are gone. */
    static Run closed(Run open, Point middle) {
        List<Point> points = new ArrayList<>(open.points());
        points.addAll(wayBack(open, middle));
        return open.through(points, true)
                .fitted(open.fittings().stream()
                        .filter(fitting -> !fitting.kind().equals(CAP))
                        .toList());
    }

    private static List<Point> wayBack(Run open, Point middle) {
        Point first = open.points().get(0);
        Point last = open.points().get(open.points().size() - 1);
        if (isStraight(open)) {
            return beside(first, last, middle);
        }
        boolean inLine =
                Math.abs(first.xM() - last.xM()) <= Run.TOUCH_M || Math.abs(first.yM() - last.yM()) <= Run.TOUCH_M;
        if (inLine) {
            return List.of();
        }
        Point one = new Point(first.xM(), last.yM(), last.zM());
        Point other = new Point(last.xM(), first.yM(), last.zM());
        boolean isOneFree = open.nearest(one).distanceM() >= open.nearest(other).distanceM();
        return List.of(isOneFree ? one : other);
    }

    private static boolean isStraight(Run open) {
        List<Point> points = open.points();
        return points.get(0).distanceM(points.get(points.size() - 1)) > open.lengthM() - Run.TOUCH_M;
    }

    /** Two corners on the side of the room's middle. */
    private static List<Point> beside(Point first, Point last, Point middle) {
        double alongX = last.xM() - first.xM();
        double alongY = last.yM() - first.yM();
        double length = Math.hypot(alongX, alongY);
        double side = alongX * (middle.yM() - first.yM()) - alongY * (middle.xM() - first.xM()) >= 0 ? 1 : -1;
        double dx = -side * alongY / length * BESIDE_M;
        double dy = side * alongX / length * BESIDE_M;
        return List.of(rounded(last.moved(dx, dy, 0)), rounded(first.moved(dx, dy, 0)));
    }

    /** To a tenth of a millimetre, so that a file reads well. */
    private static Point rounded(Point point) {
        return new Point(rounded(point.xM()), rounded(point.yM()), rounded(point.zM()));
    }

    private static double rounded(double metres) {
        return Math.rint(metres * 1e4) / 1e4;
    }
}
