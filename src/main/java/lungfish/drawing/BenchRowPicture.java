package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import lungfish.sizing.Candidate;
import lungfish.sizing.Needed;

/**
 * One blower in a list: a box to mark it for comparing, its curve in little, its name, what takes it, its figures in columns,
 * and why it stands there.
 */
public final class BenchRowPicture {
    /** What lies under a point of the row. */
    public enum Hit {
        MARK,
        TAKE,
        ROW
    }

    /** From the left edge of a row to its text. */
    private static final double TEXT_AT = 132;

    private static final double PAD = 8;
    private static final double CURVE_AT = 36;
    private static final double BOX = 14;
    private static final double PILL = 9;
    private static final double BETWEEN = 4;

    private final Look look;
    private final double widthPx;
    private final BenchColumns columns;

    /** Rows of so much room, with the figures in columns. */
    public BenchRowPicture(Look look, double widthPx, BenchColumns columns) {
        this.look = look;
        this.widthPx = widthPx;
        this.columns = columns;
    }

    /** How much room the figures have in a row. */
    public static double figuresPx(Look look, double widthPx) {
        return widthPx - look.px(TEXT_AT + PAD);
    }

    /** Where the text of a row begins. */
    public static double textPx(Look look) {
        return look.px(TEXT_AT);
    }

    private double roomPx() {
        return figuresPx(look, widthPx);
    }

    /** Where figures and reason begin: told in words they have the whole width, under the curve. */
    private double wordsAtPx() {
        return look.px(columns.isEmpty() ? PAD : TEXT_AT);
    }

    private double wordsPx() {
        return columns.isEmpty() ? widthPx - 2 * look.px(PAD) : roomPx();
    }

    /** How high a row is. */
    public double height(BenchLine line) {
        double pads = 2 * look.px(PAD);
        double words = figureLines(line).size() * step(look.type().label())
                + reasonLines(line).size() * step(look.type().body());
        double name = nameLines(line).size() * step(look.type().label());
        double curve = CandidatePicture.height(look);
        return pads + (columns.isEmpty() ? Math.max(curve, name) + words : Math.max(curve, name + words));
    }

    private List<String> nameLines(BenchLine line) {
        String name = mark(line.candidate()) + " " + line.name();
        return Wrapped.lines(name, look.type().label(), roomPx() - pillPx(line) - look.px(8));
    }

    private List<String> figureLines(BenchLine line) {
        return columns.isEmpty() ? Wrapped.lines(line.inWords(), look.type().drawing(), wordsPx()) : List.of("");
    }

    private List<String> reasonLines(BenchLine line) {
        return Wrapped.lines(line.reason(), look.type().body(), wordsPx());
    }

    private double step(Font font) {
        return font.getSize2D() * 1.3 + look.px(BETWEEN);
    }

    private double pillPx(BenchLine line) {
        return BenchColumns.width(takeWord(line), look.type().drawingName()) + 2 * look.px(PILL);
    }

    private static String takeWord(BenchLine line) {
        return line.isTaken() ? "✓ taken" : "Take it";
    }

    /** "●": fits, "○": short of a wish, "✕": does not serve. */
    public static String mark(Candidate candidate) {
        if (candidate.fits()) {
            return "●";
        }
        return candidate.serves() ? "○" : "✕";
    }

    /** What lies under a point, from the upper left corner of the row. */
    public Hit at(double x, double y, BenchLine line) {
        if (x < look.px(CURVE_AT)) {
            return Hit.MARK;
        }
        return !line.isTaken() && pill(line).contains(x, y) ? Hit.TAKE : Hit.ROW;
    }

    private Rectangle2D pill(BenchLine line) {
        double high = step(look.type().drawingName()) + look.px(4);
        return new Rectangle2D.Double(
                widthPx - look.px(PAD) - pillPx(line), look.px(PAD) - look.px(5), pillPx(line), high);
    }

    /** Paints the row from its upper left corner. */
    public void paint(BenchLine line, Needed needed, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        box(line, ink);
        double curveHigh = CandidatePicture.height(look);
        Rectangle2D curve =
                new Rectangle2D.Double(look.px(CURVE_AT), look.px(PAD), CandidatePicture.width(look), curveHigh);
        CandidatePicture.paint(line.candidate(), needed, curve, look, g);
        take(line, ink);
        double top = look.px(PAD);
        Font label = look.type().label();
        double y = text(nameLines(line), label, ink.palette().ink(), look.px(TEXT_AT), top, ink);
        if (columns.isEmpty()) {
            y = Math.max(y, top + curveHigh);
            y = text(figureLines(line), look.type().drawing(), ink.palette().softInk(), wordsAtPx(), y, ink);
        } else {
            y = figures(line, y, ink);
        }
        Color why = reasonInk(line.candidate(), ink.palette());
        text(reasonLines(line), look.type().body(), why, wordsAtPx(), y, ink);
    }

    private static Color reasonInk(Candidate candidate, Palette palette) {
        if (candidate.fits()) {
            return palette.good();
        }
        return candidate.serves() ? palette.softInk() : palette.accent();
    }

    private double text(List<String> lines, Font font, Color colour, double x, double top, Ink ink) {
        double y = top;
        for (String line : lines) {
            ink.text(line, x, y + font.getSize2D(), font, colour);
            y += step(font);
        }
        return y;
    }

    private double figures(BenchLine line, double top, Ink ink) {
        Font font = columns.font(look);
        for (int i = 0; i < line.figures().size(); i++) {
            ink.textEnding(
                    line.figures().get(i),
                    look.px(TEXT_AT) + columns.endsPx().get(i),
                    top + font.getSize2D(),
                    font,
                    ink.palette().ink());
        }
        return top + step(look.type().label());
    }

    private void box(BenchLine line, Ink ink) {
        double side = look.px(BOX);
        double x = look.px(CURVE_AT) / 2 - side / 2;
        double y = look.px(PAD) + CandidatePicture.height(look) / 2 - side / 2;
        RoundRectangle2D box = new RoundRectangle2D.Double(x, y, side, side, look.px(4), look.px(4));
        ink.fill(box, line.isMarked() ? ink.palette().air() : ink.palette().sheet());
        ink.draw(box, line.isMarked() ? ink.palette().air() : ink.palette().softInk(), 1.2);
        if (line.isMarked()) {
            Path2D tick = new Path2D.Double();
            tick.moveTo(x + 0.22 * side, y + 0.52 * side);
            tick.lineTo(x + 0.43 * side, y + 0.73 * side);
            tick.lineTo(x + 0.8 * side, y + 0.28 * side);
            ink.draw(tick, ink.palette().sheet(), 1.8);
        }
    }

    private void take(BenchLine line, Ink ink) {
        Rectangle2D pill = pill(line);
        Font font = look.type().drawingName();
        Color colour = line.isTaken() ? ink.palette().good() : ink.palette().air();
        if (!line.isTaken()) {
            double arc = pill.getHeight();
            RoundRectangle2D shape =
                    new RoundRectangle2D.Double(pill.getX(), pill.getY(), pill.getWidth(), pill.getHeight(), arc, arc);
            ink.fill(shape, ink.palette().sheet());
            ink.draw(shape, colour, 1.2);
        }
        ink.textAround(takeWord(line), pill.getCenterX(), pill.getCenterY() + 0.36 * font.getSize2D(), font, colour);
    }
}
