package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;

/**
 * Noise now against then: two bars from a common zero of 0 dB(A), so that their lengths are the figures; and a mark where
 * the keeper's wish ends.
 */
public final class NoisePicture {
    private static final double LABEL_PX = 96;
    private static final double ROW_PX = 24;
    private static final double BAR_PX = 11;
    private static final double FULL_DBA = 80;

    private final Ink ink;
    private final Rectangle2D area;
    private final double fullDba;

    private NoisePicture(Ink ink, Rectangle2D area, double fullDba) {
        this.ink = ink;
        this.area = area;
        this.fullDba = fullDba;
    }

    public static double height(Look look) {
        return look.px(2 * ROW_PX + 16);
    }

    /** Paints it from the top of the area. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        double loudest =
                Math.max(plan.today().dba().orElse(0), plan.planned().dba().orElse(0));
        NoisePicture picture = new NoisePicture(Ink.flat(look, g), area, Math.max(FULL_DBA, loudest));
        Optional.of(plan.room().wishes().loudestDba())
                .filter(OptionalDouble::isPresent)
                .ifPresent(wish -> picture.wish(wish.getAsDouble()));
        picture.row(0, today(plan), plan.today().dba(), false);
        picture.row(1, "planned", plan.planned().dba(), true);
    }

    private static String today(Plan plan) {
        int pumps =
                plan.pumps().stream().mapToInt(pump -> pump.machine().count()).sum();
        return pumps == 0 ? "today" : pumps == 1 ? "today, 1 pump" : "today, " + pumps + " pumps";
    }

    private void row(int row, String name, OptionalDouble dba, boolean planned) {
        double middle = area.getY() + ink.px(ROW_PX) * (row + 0.5);
        double baseline = middle + ink.px(4);
        ink.text(
                ink.fitting(name, ink.px(LABEL_PX - 8), ink.type().drawing()),
                area.getX(),
                baseline,
                ink.type().drawing(),
                ink.palette().softInk());
        if (dba.isEmpty()) {
            ink.text(
                    "not known",
                    barX(0),
                    baseline,
                    ink.type().drawing(),
                    ink.palette().softInk());
            return;
        }
        double end = barX(dba.getAsDouble());
        double high = ink.px(BAR_PX);
        RoundRectangle2D bar = new RoundRectangle2D.Double(
                barX(0), middle - high / 2, Math.max(1, end - barX(0)), high, ink.px(3), ink.px(3));
        if (planned) {
            ink.fill(bar, ink.palette().air());
        } else {
            ink.fill(bar, ink.palette().line());
            ink.draw(bar, ink.palette().softInk(), 0.8);
        }
        String figure = ink.look().quantities().show(dba.getAsDouble(), Dimension.SOUND_LEVEL);
        ground(end + ink.px(1), middle, ink.width(figure, ink.type().drawingName()));
        ink.text(
                figure,
                end + ink.px(6),
                baseline,
                ink.type().drawingName(),
                ink.palette().ink());
    }

    /** The wish's line stops where a figure stands. */
    private void ground(double left, double middle, double wide) {
        double high = ink.px(16);
        ink.fill(
                new Rectangle2D.Double(left, middle - high / 2, wide + ink.px(8), high),
                ink.palette().sheet());
    }

    private double barX(double dba) {
        double zero = area.getX() + ink.px(LABEL_PX);
        double room = area.getWidth() - ink.px(LABEL_PX) - ink.px(60);
        return zero + room * Math.max(0, dba) / fullDba;
    }

    private void wish(double dba) {
        double x = barX(dba);
        double bottom = area.getY() + ink.px(2 * ROW_PX);
        ink.draw(
                new java.awt.geom.Line2D.Double(x, area.getY(), x, bottom),
                ink.palette().ink(),
                new BasicStroke(
                        (float) ink.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {3, 3}, 0));
        String text = "wished: " + ink.look().quantities().show(dba, Dimension.SOUND_LEVEL) + " at most";
        ink.textAround(
                text,
                x,
                bottom + ink.px(12),
                ink.type().drawing(),
                ink.palette().softInk());
    }
}
