package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What a doubt comes from, the most of it first: bars as long as their share, the first marked. */
public final class WeightsPicture {
    private static final double ROW_PX = 34;
    private static final double BAR_AT_PX = 20;
    private static final double BAR_PX = 7;

    /**
     * One input.
     *
     * @param share of the doubt, 0 to 1
     * @param words the share in words
     */
    public record Row(String name, double share, String words) {
        /** Without the picture. */
        public String says() {
            return name + ": " + words;
        }
    }

    private WeightsPicture() {}

    public static double height(int rows, Look look) {
        return look.px(rows * ROW_PX);
    }

    /** Paints the rows from the top of the area. */
    public static void paint(List<Row> rows, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        double most = rows.isEmpty() ? 1 : rows.get(0).share();
        double y = area.getY();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double baseline = y + look.px(13);
            ink.text(
                    row.name(),
                    area.getX(),
                    baseline,
                    ink.type().body(),
                    ink.palette().ink());
            ink.textEnding(
                    row.words(),
                    area.getMaxX(),
                    baseline,
                    ink.type().label(),
                    ink.palette().ink());
            double wide = Math.max(ink.px(1), area.getWidth() * row.share() / most);
            ink.fill(
                    new Rectangle2D.Double(area.getX(), y + look.px(BAR_AT_PX), wide, look.px(BAR_PX)),
                    i == 0 ? ink.palette().accent() : ink.palette().waterEdge());
            y += look.px(ROW_PX);
        }
    }
}
