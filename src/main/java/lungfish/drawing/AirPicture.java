package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.today.Beside;
import lungfish.today.Way;

/** Air now against then: what is given at the depths of the outlets, and a mark at what they ask. */
public final class AirPicture {
    private static final double FIGURE_PX = 76;

    private AirPicture() {}

    public static double height(Look look) {
        return TwoBars.height(look);
    }

    /** Paints it from the top of the area. */
    public static void paint(Plan plan, Beside beside, Rectangle2D area, Look look, Graphics2D g) {
        double asked = plan.demand().totalM3PerS();
        OptionalDouble today = given(beside.today());
        OptionalDouble planned = given(beside.planned());
        double most = Math.max(asked, Math.max(today.orElse(0), planned.orElse(0)));
        if (most > 0) {
            TwoBars bars = new TwoBars(Ink.flat(look, g), area, most, FIGURE_PX);
            bars.mark(asked, "asked: " + flow(asked, look));
            bars.today(NoisePicture.today(plan), today, flow(today.orElse(0), look));
            bars.planned(planned, flow(planned.orElse(0), look));
        }
    }

    /** Nothing given at all means that nobody knows what hangs on the pumps. */
    private static OptionalDouble given(Optional<Way> way) {
        double gives = way.map(each -> each.air().givesM3PerS()).orElse(0.0);
        return gives > 0 ? OptionalDouble.of(gives) : OptionalDouble.empty();
    }

    private static String flow(double m3PerS, Look look) {
        return look.quantities().show(m3PerS, Dimension.AIR_FLOW);
    }
}
