package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Odds as rooms that one can count: of twenty rooms like this so many are filled, the others open. */
public final class OddsPicture {
    /** So many dots. */
    public static final int DOTS = 20;

    private static final double ROW_PX = 40;
    private static final double DOT_PX = 13;
    private static final double RADIUS_PX = 4.6;
    private static final double DOTS_AT_PX = 27;

    /**
     * One thing that holds or does not.
     *
     * @param name what it is
     * @param odds in words: "95 in 100"
     * @param further what else there is to say of them, in a few words; empty: nothing
     * @param filled of {@link #DOTS}
     * @param planned whether it is still to come
     */
    public record Row(String name, String odds, String further, int filled, boolean planned) {
        /** Without the picture. */
        public String says() {
            return name + ": " + odds + (further.isEmpty() ? "" : ", " + further);
        }
    }

    private OddsPicture() {}

    public static double height(int rows, Look look) {
        return look.px(rows * ROW_PX);
    }

    /** Paints the rows from the top of the area. */
    public static void paint(List<Row> rows, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        double y = area.getY();
        for (Row row : rows) {
            words(row, area, y + look.px(13), ink);
            dots(row, area, y + look.px(DOTS_AT_PX), ink);
            further(row, area, y + look.px(DOTS_AT_PX + 4), ink);
            y += look.px(ROW_PX);
        }
    }

    private static void words(Row row, Rectangle2D area, double baseline, Ink ink) {
        double room = area.getWidth() - ink.width(row.odds(), ink.type().label()) - ink.px(10);
        String name = ink.fitting(row.name(), room, ink.type().body());
        ink.text(name, area.getX(), baseline, ink.type().body(), ink.palette().ink());
        ink.textEnding(
                row.odds(),
                area.getMaxX(),
                baseline,
                ink.type().label(),
                ink.palette().ink());
    }

    /** Beside the dots, where there is room. */
    private static void further(Row row, Rectangle2D area, double baseline, Ink ink) {
        double wide = ink.width(row.further(), ink.type().drawing());
        if (wide <= area.getWidth() - DOTS * dotPx(area, ink) - ink.px(10)) {
            ink.textEnding(
                    row.further(),
                    area.getMaxX(),
                    baseline,
                    ink.type().drawing(),
                    ink.palette().softInk());
        }
    }

    private static double dotPx(Rectangle2D area, Ink ink) {
        return Math.min(ink.px(DOT_PX), area.getWidth() / DOTS);
    }

    private static void dots(Row row, Rectangle2D area, double y, Ink ink) {
        double dot = dotPx(area, ink);
        double radius = Math.min(ink.px(RADIUS_PX), 0.36 * dot);
        var full = row.planned() ? ink.palette().planned() : ink.palette().air();
        for (int i = 0; i < DOTS; i++) {
            double x = area.getX() + (i + 0.5) * dot;
            if (i < row.filled()) {
                ink.fill(StateMark.circle(x, y, radius), full);
            } else {
                ink.draw(StateMark.circle(x, y, radius), ink.palette().free(), 1.2);
            }
        }
    }
}
