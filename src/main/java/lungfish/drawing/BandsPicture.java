package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import lungfish.sure.Band;

/**
 * Where figures of a plan lie: of each a line from nothing, on it a bar in which eight of ten lie, a tall tick where the
 * plan's own figure is and a diamond where half lie above.
 */
public final class BandsPicture {
    private static final double ROW_PX = 42;
    private static final double LINE_PX = 26;
    private static final double BAR_PX = 8;
    private static final double TICK_PX = 9;
    private static final double DIAMOND_PX = 3.6;
    private static final double GAP_PX = 10;
    private static final double LEGEND_PX = 22;

    /** Room beyond the highest number. */
    private static final double BEYOND = 1.06;

    /**
     * One figure.
     *
     * @param name what it is
     * @param band where it lies, in one unit
     * @param between the band in words: "8.4 to 9.1 kPa"
     * @param planned the plan's figure in words
     * @param median half lie above this, in words
     */
    public record Row(String name, Band band, String between, String planned, String median) {
        /** Without the picture. */
        public String says() {
            return name + ": the plan says " + planned + "; eight of ten lie from " + between + ", half above "
                    + median;
        }
    }

    private BandsPicture() {}

    public static double height(int rows, Look look) {
        return look.px(rows * ROW_PX + LEGEND_PX);
    }

    /** Paints the rows from the top of the area, and under them what the marks mean. */
    public static void paint(List<Row> rows, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        double y = area.getY();
        for (Row row : rows) {
            words(row, area, y, ink);
            scale(row.band(), area, y + look.px(LINE_PX), ink);
            y += look.px(ROW_PX);
        }
        legend(area.getX(), y + look.px(LEGEND_PX) / 2, area.getMaxX(), ink);
    }

    /** The plan's figure and the middle are told where there is room between the name and the band. */
    private static void words(Row row, Rectangle2D area, double y, Ink ink) {
        double baseline = y + ink.px(13);
        double end = area.getMaxX() - ink.width(row.between(), ink.type().label());
        ink.text(
                row.name(),
                area.getX(),
                baseline,
                ink.type().body(),
                ink.palette().ink());
        ink.text(row.between(), end, baseline, ink.type().label(), ink.palette().ink());
        String further = "plan " + row.planned() + ", half above " + row.median();
        double room = end - area.getX() - ink.width(row.name(), ink.type().body()) - ink.px(2 * GAP_PX);
        if (ink.width(further, ink.type().drawing()) <= room) {
            ink.textEnding(
                    further,
                    end - ink.px(GAP_PX),
                    baseline,
                    ink.type().drawing(),
                    ink.palette().softInk());
        }
    }

    private static void scale(Band band, Rectangle2D area, double y, Ink ink) {
        double least = Math.min(0, Math.min(band.lowSi(), band.plannedSi()));
        double most = BEYOND * Math.max(0, Math.max(band.highSi(), band.plannedSi()));
        double span = most > least ? most - least : 1;
        double perUnit = (area.getWidth() - ink.px(2)) / span;
        double zero = area.getX() + ink.px(1) - least * perUnit;
        ink.line(area.getX(), y, area.getMaxX(), y, ink.palette().line(), 1);
        if (least < 0) {
            ink.line(zero, y - ink.px(3), zero, y + ink.px(3), ink.palette().softInk(), 1);
        }
        bar(zero + band.lowSi() * perUnit, zero + band.highSi() * perUnit, y, ink);
        diamond(zero + band.medianSi() * perUnit, y, ink);
        tick(zero + band.plannedSi() * perUnit, y, ink);
    }

    private static void bar(double from, double to, double y, Ink ink) {
        double high = ink.px(BAR_PX);
        double wide = Math.max(to - from, ink.px(2));
        RoundRectangle2D bar = new RoundRectangle2D.Double(from, y - high / 2, wide, high, high, high);
        ink.fill(bar, ink.palette().waterFill());
        ink.draw(bar, ink.palette().air(), 1);
    }

    private static void diamond(double x, double y, Ink ink) {
        double half = ink.px(DIAMOND_PX);
        java.awt.geom.Path2D diamond = new java.awt.geom.Path2D.Double();
        diamond.moveTo(x, y - half);
        diamond.lineTo(x + half, y);
        diamond.lineTo(x, y + half);
        diamond.lineTo(x - half, y);
        diamond.closePath();
        ink.fill(diamond, ink.palette().air());
    }

    private static void tick(double x, double y, Ink ink) {
        double half = ink.px(TICK_PX);
        ink.draw(new Line2D.Double(x, y - half, x, y + half), ink.palette().accent(), 2);
    }

    private static void legend(double left, double y, double most, Ink ink) {
        double x = left;
        bar(x, x + ink.px(22), y, ink);
        x = told("eight of ten lie here", x + ink.px(28), y, ink);
        if (x + ink.px(150) > most) {
            return;
        }
        tick(x + ink.px(3), y, ink);
        x = told("the plan", x + ink.px(10), y, ink);
        diamond(x + ink.px(4), y, ink);
        told("half lie above", x + ink.px(12), y, ink);
    }

    private static double told(String what, double x, double y, Ink ink) {
        ink.text(what, x, y + ink.px(4), ink.type().drawing(), ink.palette().softInk());
        return x + ink.width(what, ink.type().drawing()) + ink.px(14);
    }
}
