package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.OptionalDouble;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;

/** Noise now against then: bars from 0 dB(A), and a mark where the keeper's wish ends. */
public final class NoisePicture {
    private static final double FULL_DBA = 80;
    private static final double FIGURE_PX = 60;

    private NoisePicture() {}

    public static double height(Look look) {
        return TwoBars.height(look);
    }

    /** Paints it from the top of the area. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        double loudest =
                Math.max(plan.today().dba().orElse(0), plan.planned().dba().orElse(0));
        TwoBars bars = new TwoBars(Ink.flat(look, g), area, Math.max(FULL_DBA, loudest), FIGURE_PX);
        plan.room()
                .wishes()
                .loudestDba()
                .ifPresent(wish -> bars.mark(wish, "wished: " + level(wish, look) + " at most"));
        bars.today(today(plan), plan.today().dba(), level(plan.today().dba(), look));
        bars.planned(plan.planned().dba(), level(plan.planned().dba(), look));
    }

    /** "today, 5 pumps". */
    static String today(Plan plan) {
        int pumps =
                plan.pumps().stream().mapToInt(pump -> pump.machine().count()).sum();
        return pumps == 0 ? "today" : pumps == 1 ? "today, 1 pump" : "today, " + pumps + " pumps";
    }

    private static String level(OptionalDouble dba, Look look) {
        return level(dba.orElse(0), look);
    }

    private static String level(double dba, Look look) {
        return look.quantities().show(dba, Dimension.SOUND_LEVEL);
    }
}
