package lungfish.network;

import java.util.List;

/**
 * What one machine gives over the pressure that it works against: free air as a function of gauge pressure.
 *
 * <p>Between the points: monotone piecewise cubic of F. N. Fritsch and J. Butland, "A method for constructing local
 * monotone piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5(2), 1984, p. 300: at an inner point the weighted
 * harmonic mean of the neighbouring slopes, at the ends a three-point slope kept from turning the shape; the rule that
 * scientific libraries call PCHIP. It never overshoots and never rises where the points fall. Outside the points the
 * end slope goes on, which {@link #isInside} tells; no flow is ever below zero.
 */
public final class Curve {
    /**
     * A point of the curve.
     *
     * @param gaugePa rising from point to point
     * @param freeM3PerS free air, 0 or more, not rising
     */
    public record Point(double gaugePa, double freeM3PerS) {}

    private final List<Point> points;
    private final double[] pa;
    private final double[] flow;
    private final double[] slope;

    private Curve(List<Point> points) {
        this.points = List.copyOf(points);
        this.pa = points.stream().mapToDouble(Point::gaugePa).toArray();
        this.flow = points.stream().mapToDouble(Point::freeM3PerS).toArray();
        check();
        this.slope = CurveSlopes.of(pa, flow);
    }

    /** The curve through two or more points, pressure rising, flow not rising and not below zero. */
    public static Curve of(List<Point> points) {
        return new Curve(points);
    }

    private void check() {
        if (pa.length < 2) {
            throw new IllegalArgumentException("a curve needs two points or more");
        }
        for (int i = 0; i < pa.length; i++) {
            Part.finite("gaugePa", pa[i]);
            Part.from0("freeM3PerS", flow[i]);
            if (i > 0 && !(pa[i] > pa[i - 1] && flow[i] <= flow[i - 1])) {
                throw new IllegalArgumentException("pressure must rise and flow must not, at point " + i);
            }
        }
    }

    /** The points that it was made of. */
    public List<Point> points() {
        return points;
    }

    /** Free air at a gauge pressure, m³/s; 0 where the machine is shut. */
    public double flowAt(double gaugePa) {
        return Math.max(0.0, value(gaugePa));
    }

    /** How the flow changes with pressure, m³/(s Pa); never above 0, and 0 where the machine is shut. */
    public double slopeAt(double gaugePa) {
        return value(gaugePa) > 0.0 ? derivative(gaugePa) : 0.0;
    }

    /** The least gauge pressure at which it gives nothing; infinite when the curve never comes down to zero. */
    public double shutGaugePa() {
        int last = pa.length - 1;
        if (flow[last] > 0.0) {
            return slope[last] < 0.0 ? pa[last] - flow[last] / slope[last] : Double.POSITIVE_INFINITY;
        }
        int first = last;
        while (first > 0 && flow[first - 1] == 0.0) {
            first--;
        }
        return pa[first];
    }

    /** How the flow changes with pressure just before it comes to nothing. */
    double slopeBeforeShut() {
        double shutPa = shutGaugePa();
        return shutPa < Double.POSITIVE_INFINITY ? derivative(shutPa) : 0.0;
    }

    /**
     * The greatest gauge pressure at which it still gives a flow: the inverse of {@link #flowAt}.
     *
     * @param freeM3PerS 0 or more
     * @return Pa; negative where the flow is more than the open flow, and NaN when the curve never gives that flow
     */
    public double pressureAt(double freeM3PerS) {
        if (freeM3PerS <= 0.0) {
            return shutGaugePa();
        }
        int last = pa.length - 1;
        if (freeM3PerS > flow[0]) {
            return beyond(0, freeM3PerS);
        }
        if (freeM3PerS < flow[last]) {
            return beyond(last, freeM3PerS);
        }
        return inside(freeM3PerS);
    }

    /** Whether the answer at this pressure rests on the points: between the first and the last, or shut above zero flow. */
    public boolean isInside(double gaugePa) {
        int last = pa.length - 1;
        return gaugePa >= pa[0] && (gaugePa <= pa[last] || flow[last] == 0.0);
    }

    private double beyond(int end, double freeM3PerS) {
        return slope[end] < 0.0 ? pa[end] + (freeM3PerS - flow[end]) / slope[end] : Double.NaN;
    }

    /** Bisection to the last digit: it is asked a few times for each answer, and cubics may have flat ends. */
    private double inside(double freeM3PerS) {
        double low = pa[0];
        double high = pa[pa.length - 1];
        double middle = 0.5 * (low + high);
        while (middle > low && middle < high) {
            if (value(middle) >= freeM3PerS) {
                low = middle;
            } else {
                high = middle;
            }
            middle = 0.5 * (low + high);
        }
        return value(high) >= freeM3PerS ? high : low;
    }

    private double value(double gaugePa) {
        int last = pa.length - 1;
        if (gaugePa <= pa[0]) {
            return flow[0] + slope[0] * (gaugePa - pa[0]);
        }
        if (gaugePa >= pa[last]) {
            return flow[last] + slope[last] * (gaugePa - pa[last]);
        }
        int i = pieceOf(gaugePa);
        double width = pa[i + 1] - pa[i];
        double t = (gaugePa - pa[i]) / width;
        double rise = flow[i + 1] - flow[i];
        double bend = width * (slope[i] + slope[i + 1]) - 2.0 * rise;
        double pull = 3.0 * rise - width * (2.0 * slope[i] + slope[i + 1]);
        return flow[i] + t * (width * slope[i] + t * (pull + t * bend));
    }

    private double derivative(double gaugePa) {
        int last = pa.length - 1;
        if (gaugePa <= pa[0]) {
            return slope[0];
        }
        if (gaugePa >= pa[last]) {
            return slope[last];
        }
        int i = pieceOf(gaugePa);
        double width = pa[i + 1] - pa[i];
        double t = (gaugePa - pa[i]) / width;
        double rise = flow[i + 1] - flow[i];
        double bend = width * (slope[i] + slope[i + 1]) - 2.0 * rise;
        double pull = 3.0 * rise - width * (2.0 * slope[i] + slope[i + 1]);
        return Math.min(0.0, slope[i] + t * (2.0 * pull + 3.0 * t * bend) / width);
    }

    private int pieceOf(double gaugePa) {
        int i = 0;
        while (gaugePa > pa[i + 1]) {
            i++;
        }
        return i;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve curve && points.equals(curve.points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }

    @Override
    public String toString() {
        return "Curve" + points;
    }
}
