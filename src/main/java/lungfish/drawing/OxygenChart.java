package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Course;
import lungfish.oxygen.Levels;
import lungfish.quantity.Dimension;

/**
 * Oxygen over time: the band of all tanks at worst; of one tank what is likely and what is at worst, and the doubt between
 * them; the levels that count.
 */
final class OxygenChart {
    private static final double KG_PER_G = 1e-3;
    private static final int STEPS = 4;
    private static final double ABOVE = 1.06;
    private static final double LINE_STEP_PX = 2;
    private static final double BESIDE_NAMES_PX = 66;
    private static final int DOUBT = 90; // of 255: how dense the doubt between both lines is

    private final OutagePlayed played;
    private final OutageTime time;
    private final Rectangle2D plot;
    private final double topGPerM3;
    private final Ink ink;

    OxygenChart(OutagePlayed played, OutageTime time, Rectangle2D plot, Ink ink) {
        this.played = played;
        this.time = time;
        this.plot = plot;
        this.topGPerM3 = ABOVE * Math.max(played.band().topGPerM3(), 2 * levels().alarmGPerM3());
        this.ink = ink;
    }

    private Levels levels() {
        return played.drill().levels();
    }

    double y(double gPerM3) {
        return plot.getMaxY() - plot.getHeight() * gPerM3 / topGPerM3;
    }

    double gPerM3(double yPx) {
        return topGPerM3 * (plot.getMaxY() - yPx) / plot.getHeight();
    }

    /** How much oxygen so many pixels are. */
    double reachGPerM3(double px) {
        return topGPerM3 * px / plot.getHeight();
    }

    private Font font() {
        return ink.type().drawing();
    }

    void paint(Optional<TankDrill> tank) {
        time.paint(plot, ink);
        band();
        grid();
        tank.flatMap(TankDrill::courses).ifPresent(this::courses);
        level(levels().alarmGPerM3(), "alarm", false);
        level(levels().dangerGPerM3(), "danger", true);
        ink.line(
                plot.getX(),
                plot.getMaxY(),
                plot.getMaxX(),
                plot.getMaxY(),
                ink.palette().softInk(),
                1);
        tank.flatMap(TankDrill::courses).ifPresent(this::names);
        if (played.band().isEmpty()) {
            nothing();
        } else {
            key();
        }
    }

    private void grid() {
        AxisSteps steps = AxisSteps.upTo(KG_PER_G * topGPerM3, Dimension.CONCENTRATION, STEPS, ink.look());
        for (int i = 0; i <= steps.count(); i++) {
            double y = y(steps.at(i) / KG_PER_G);
            ink.line(plot.getX() - ink.px(3), y, plot.getX(), y, ink.palette().softInk(), 1);
            ink.textEnding(
                    steps.label(i),
                    plot.getX() - ink.px(8),
                    y + ink.px(4),
                    font(),
                    ink.palette().softInk());
        }
    }

    private void band() {
        Path2D path = new Path2D.Double();
        for (OxygenBand.Sample each : played.band().samples()) {
            go(path, time.x(each.atS()), y(each.mostGPerM3()));
        }
        for (int i = played.band().samples().size() - 1; i >= 0; i--) {
            OxygenBand.Sample each = played.band().samples().get(i);
            go(path, time.x(each.atS()), y(each.leastGPerM3()));
        }
        if (!played.band().isEmpty()) {
            path.closePath();
            ink.fillWater(path);
            ink.draw(path, ink.palette().waterEdge(), 0.8);
        }
    }

    private static void go(Path2D path, double x, double y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    private void courses(TankDrill.Courses both) {
        Path2D doubt = line(both.likely());
        for (double x = plot.getMaxX(); x >= plot.getX(); x -= ink.px(LINE_STEP_PX)) {
            go(doubt, x, y(both.cautious().atS(time.at(x))));
        }
        doubt.closePath();
        Color tint = ink.palette().air();
        ink.fill(doubt, new Color(tint.getRed(), tint.getGreen(), tint.getBlue(), DOUBT));
        ink.draw(line(both.likely()), ink.palette().ink(), ink.dashed(1.6, 5));
        ink.draw(line(both.cautious()), ink.palette().ink(), 2.2);
    }

    private Path2D line(Course course) {
        Path2D path = new Path2D.Double();
        for (double x = plot.getX(); x < plot.getMaxX(); x += ink.px(LINE_STEP_PX)) {
            go(path, x, y(course.atS(time.at(x))));
        }
        go(path, plot.getMaxX(), y(course.atS(time.untilS())));
        return path;
    }

    /** Where both lines lie apart, each has its name at its end; the likely one is always the upper. */
    private void names(TankDrill.Courses both) {
        double likely = Math.min(y(both.likely().endGPerM3()) - ink.px(5), plot.getMaxY() - ink.px(20));
        double cautious = y(both.cautious().endGPerM3()) - ink.px(5);
        double apart = ink.height(ink.type().drawingName());
        if (cautious - likely < apart) {
            likely = Math.max(plot.getY() + apart, likely);
            cautious = likely + apart;
        }
        name("likely", likely);
        name("at worst", Math.min(cautious, plot.getMaxY() - ink.px(4)));
    }

    private void name(String name, double baseline) {
        Font bold = ink.type().drawingName();
        double left = plot.getMaxX() - ink.width(name, bold) - ink.px(5);
        veil(name, bold, left, baseline);
        ink.text(name, left, baseline, bold, ink.palette().ink());
    }

    /** A line across, with its word: that of danger is whole, that of alarm broken. */
    private void level(double gPerM3, String word, boolean isWhole) {
        double y = y(gPerM3);
        var line = new java.awt.geom.Line2D.Double(plot.getX(), y, plot.getMaxX(), y);
        if (isWhole) {
            ink.draw(line, ink.palette().accent(), 1.4);
        } else {
            ink.draw(line, ink.palette().accent(), ink.dashed(1.2, 3));
        }
        String says = word + " " + ink.look().quantities().show(KG_PER_G * gPerM3, Dimension.CONCENTRATION);
        double left = plot.getMaxX() - ink.px(BESIDE_NAMES_PX) - ink.width(says, font()); // first hours stay free
        veil(says, font(), left, y - ink.px(3));
        ink.text(says, left, y - ink.px(3), font(), ink.palette().accent());
    }

    /** Words are read on the sheet, whatever is drawn there. */
    private void veil(String text, Font font, double left, double baseline) {
        Color sheet = ink.palette().sheet();
        Rectangle2D box = new Rectangle2D.Double(
                left - ink.px(2),
                baseline - ink.letters(font) - ink.px(1.5),
                ink.width(text, font) + ink.px(4),
                ink.letters(font) + ink.px(4));
        ink.fill(box, new Color(sheet.getRed(), sheet.getGreen(), sheet.getBlue(), 200));
    }

    /** What the pale band is. */
    private void key() {
        String says = "all tanks, at worst";
        double baseline = plot.getY() + ink.px(10);
        double left = plot.getMaxX() - ink.width(says, font()) - ink.px(4);
        Rectangle2D swatch = new Rectangle2D.Double(left - ink.px(22), baseline - ink.px(8), ink.px(16), ink.px(9));
        veil(says, font(), left, baseline);
        ink.fillWater(swatch);
        ink.draw(swatch, ink.palette().waterEdge(), 0.8);
        ink.text(says, left, baseline, font(), ink.palette().softInk());
    }

    private void nothing() {
        String says = ink.fitting("no oxygen to show: nobody says who lives here", plot.getWidth(), font());
        ink.textAround(
                says,
                plot.getCenterX(),
                plot.getY() + ink.px(24),
                font(),
                ink.palette().softInk());
    }
}
