package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;

/**
 * Ways to give air, each as a bar of the time a year without it (full: by machines; open: by the mains), and a square for
 * each tank: full where one failure takes its air, half full where it leaves some.
 */
public final class StandingPicture {
    private static final double LEGEND_PX = 42;
    private static final double NAME_PX = 15;
    private static final double BAR_PX = 11;
    private static final double BAR_AT_PX = 22;
    private static final double WORDS_AT_PX = 48;
    private static final double SQUARES_AT_PX = 55;
    private static final double APART_PX = 16;
    private static final double SWATCH_PX = 10;
    private static final double LINE_PX = 16;

    /** More tanks than that get smaller squares. */
    private static final int MANY = 100;

    /**
     * One way.
     *
     * @param name the way, and what the room has of it
     * @param figure the time without air in words
     * @param machinesS time a year by machines
     * @param mainsS time a year by the mains
     * @param lost tanks of which one failure takes the air
     * @param less tanks to which it leaves some
     * @param of tanks in all
     * @param loss what one failure takes, in words
     */
    public record Row(
            String name, String figure, double machinesS, double mainsS, int lost, int less, int of, String loss) {
        /** Without the picture. */
        public String says() {
            return name + ": " + figure + "; one failure takes " + loss;
        }

        double wholeS() {
            return machinesS + mainsS;
        }
    }

    private final Ink ink;
    private final Rectangle2D area;
    private final double fullS;

    private StandingPicture(Ink ink, Rectangle2D area, double fullS) {
        this.ink = ink;
        this.area = area;
        this.fullS = fullS;
    }

    /** How high it is at a width. */
    public static double height(List<Row> rows, double width, Look look) {
        return look.px(LEGEND_PX)
                + rows.stream().mapToDouble(row -> high(row, width, look)).sum();
    }

    private static double high(Row row, double width, Look look) {
        return look.px(SQUARES_AT_PX + APART_PX) + Squares.of(row, width, look).high();
    }

    /** Paints the rows from the top of the area. */
    public static void paint(List<Row> rows, Rectangle2D area, Look look, Graphics2D g) {
        double fullS = rows.stream().mapToDouble(Row::wholeS).max().orElse(1);
        StandingPicture picture = new StandingPicture(Ink.flat(look, g), area, Math.max(1, fullS));
        picture.legend();
        double y = area.getY() + look.px(LEGEND_PX);
        for (Row row : rows) {
            picture.words(row, y);
            picture.bar(row, y + look.px(BAR_AT_PX));
            picture.squares(row, y + look.px(SQUARES_AT_PX), Squares.of(row, area.getWidth(), look));
            y += high(row, area.getWidth(), look);
        }
    }

    private void legend() {
        double next = swatch(area.getX(), 0, "by machines", box -> part(box, true));
        swatch(next, 0, "by the mains", box -> part(box, false));
        next = swatch(area.getX(), 1, "a tank without air", box -> tank(box, Air.NONE));
        swatch(next, 1, "with less", box -> tank(box, Air.LESS));
    }

    /** Gives where the next one begins. */
    private double swatch(double x, int line, String saying, Consumer<Rectangle2D> mark) {
        double y = area.getY() + ink.px(2 + LINE_PX * line);
        mark.accept(new Rectangle2D.Double(x, y, ink.px(SWATCH_PX), ink.px(SWATCH_PX)));
        double textX = x + ink.px(SWATCH_PX + 6);
        ink.text(
                saying,
                textX,
                y + ink.px(9),
                ink.type().drawing(),
                ink.palette().softInk());
        return textX + ink.width(saying, ink.type().drawing()) + ink.px(14);
    }

    private void part(Rectangle2D box, boolean full) {
        if (full) {
            ink.fill(box, ink.palette().air());
        }
        ink.draw(box, full ? ink.palette().air() : ink.palette().softInk(), 1);
    }

    /** What one failure leaves a tank. */
    private enum Air {
        NONE,
        LESS,
        ALL
    }

    private void tank(Rectangle2D square, Air left) {
        if (left != Air.ALL) {
            ink.fill(
                    left == Air.NONE ? square : lowerHalf(square), ink.palette().ink());
        }
        ink.draw(square, left == Air.NONE ? ink.palette().ink() : ink.palette().free(), 1);
    }

    private void words(Row row, double y) {
        double room = area.getWidth() - ink.width(row.figure(), ink.type().label()) - ink.px(10);
        ink.text(
                ink.fitting(row.name(), room, ink.type().body()),
                area.getX(),
                y + ink.px(NAME_PX),
                ink.type().body(),
                ink.palette().ink());
        ink.textEnding(
                row.figure(),
                area.getMaxX(),
                y + ink.px(NAME_PX),
                ink.type().label(),
                ink.palette().ink());
        ink.text(
                ink.fitting(
                        "One failure takes " + row.loss(),
                        area.getWidth(),
                        ink.type().drawing()),
                area.getX(),
                y + ink.px(WORDS_AT_PX),
                ink.type().drawing(),
                ink.palette().softInk());
    }

    private void bar(Row row, double y) {
        double machines = area.getWidth() * row.machinesS() / fullS;
        double mains = area.getWidth() * row.mainsS() / fullS;
        if (mains >= 1) {
            part(box(machines, y, mains), false);
        }
        part(box(0, y, Math.max(1, machines)), true);
    }

    private Rectangle2D box(double fromPx, double y, double widePx) {
        return new Rectangle2D.Double(area.getX() + fromPx, y, Math.max(1, widePx - 1), ink.px(BAR_PX));
    }

    private void squares(Row row, double y, Squares squares) {
        for (int i = 0; i < row.of(); i++) {
            Air left = i < row.lost() + row.less() ? Air.LESS : Air.ALL;
            tank(squares.at(i, area.getX(), y), i < row.lost() ? Air.NONE : left);
        }
    }

    private static Rectangle2D lowerHalf(Rectangle2D square) {
        return new Rectangle2D.Double(square.getX(), square.getCenterY(), square.getWidth(), square.getHeight() / 2);
    }

    /** Where squares stand: side by side, and in rows where there are more than fit. */
    private record Squares(int many, int columns, double sidePx, double stepPx) {
        static Squares of(Row row, double width, Look look) {
            double side = look.px(row.of() > MANY ? 5 : 9);
            double step = side + look.px(row.of() > MANY ? 2 : 3);
            return new Squares(row.of(), (int) Math.max(1, width / step), side, step);
        }

        double high() {
            int rows = (many + columns - 1) / columns;
            return stepPx * rows;
        }

        Rectangle2D at(int number, double left, double top) {
            int row = number / columns;
            int column = number % columns;
            return new Rectangle2D.Double(left + column * stepPx, top + row * stepPx, sidePx, sidePx);
        }
    }
}
