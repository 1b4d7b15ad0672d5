package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import lungfish.cost.Bill;
import lungfish.cost.CostAnswer;
import lungfish.quantity.Dimension;

/**
 * Money by year: what keeping the pumps has cost by the end of each year, and what the blower has, as two flights of stairs, and
 * the year from which the blower stays the lower one.
 */
public final class MoneyPicture {
    private static final double PLOT_PX = 130;
    private static final double TOP_PX = 8;
    private static final double AXIS_PX = 30;
    private static final double GAP_PX = 8;
    private static final int STEPS = 4;

    /** In a narrower area the names stand over the stairs, not beside them. */
    private static final double NARROW_PX = 400;

    private static final double YEAR_PX = 44;

    private final Ink ink;
    private final CostAnswer cost;
    private final Bill today;
    private final Rectangle2D plot;
    private final double most;
    private final AxisSteps steps;
    private final boolean isNarrow;

    private MoneyPicture(Ink ink, CostAnswer cost, Bill today, Rectangle2D area) {
        this.ink = ink;
        this.cost = cost;
        this.today = today;
        this.most = Math.max(1, 1.04 * Math.max(cost.central().total(), today.total()));
        this.steps = AxisSteps.upTo(most, Dimension.MONEY, STEPS, ink.look());
        this.isNarrow = area.getWidth() < ink.px(NARROW_PX);
        double left = ink.width(steps.label(steps.count()), font()) + ink.px(GAP_PX + 1);
        double named = Math.max(
                ink.width(endWords("pumps", today), name()), ink.width(endWords("blower", cost.central()), name()));
        double right = isNarrow ? ink.width(cost.years() + " years", font()) / 2 : named + ink.px(2 * GAP_PX);
        double over = isNarrow ? 2 * ink.height(name()) : 0;
        this.plot = new Rectangle2D.Double(
                area.getX() + left,
                area.getY() + ink.px(TOP_PX) + over,
                Math.max(1, area.getWidth() - left - right),
                ink.px(PLOT_PX) - over);
    }

    public static double height(Look look) {
        return look.px(TOP_PX + PLOT_PX + AXIS_PX);
    }

    /** Paints it from the top of the area; nothing where the pumps of today cost nobody knows what. */
    public static void paint(CostAnswer cost, Rectangle2D area, Look look, Graphics2D g) {
        cost.today().ifPresent(today -> new MoneyPicture(Ink.flat(look, g), cost, today, area).paint());
    }

    private void paint() {
        grid();
        years();
        payback();
        stairs(today, ink.palette().softInk(), ink.dashed(1.6, 4));
        stairs(
                cost.central(),
                ink.palette().air(),
                new BasicStroke((float) ink.px(2.2), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        ends();
    }

    private Font font() {
        return ink.type().drawing();
    }

    private Font name() {
        return ink.type().drawingName();
    }

    private String money(double amount) {
        return ink.look().quantities().show(amount, Dimension.MONEY);
    }

    private String endWords(String name, Bill bill) {
        return name + " " + money(bill.total());
    }

    private double x(double year) {
        return plot.getX() + plot.getWidth() * year / cost.years();
    }

    private double y(double amount) {
        return plot.getMaxY() - plot.getHeight() * amount / most;
    }

    private void grid() {
        for (int i = 0; i <= steps.count(); i++) {
            double y = y(steps.at(i));
            ink.line(
                    plot.getX(),
                    y,
                    plot.getMaxX(),
                    y,
                    i == 0 ? ink.palette().softInk() : ink.palette().line(),
                    1);
            ink.textEnding(
                    steps.label(i),
                    plot.getX() - ink.px(GAP_PX),
                    y + ink.px(4),
                    font(),
                    ink.palette().softInk());
        }
    }

    private void years() {
        double baseline = plot.getMaxY() + ink.px(15);
        int every = every();
        for (int year = 0; year <= cost.years(); year += every) {
            ink.line(
                    x(year),
                    plot.getMaxY(),
                    x(year),
                    plot.getMaxY() + ink.px(3),
                    ink.palette().softInk(),
                    1);
            String text = year + every > cost.years() ? year + " years" : Integer.toString(year);
            ink.textAround(text, x(year), baseline, font(), ink.palette().softInk());
        }
    }

    /** The fewest years between two labels that do not touch. */
    private int every() {
        int most = (int) Math.max(1, plot.getWidth() / ink.px(YEAR_PX));
        for (int every : new int[] {1, 2, 5, 10}) {
            if (cost.years() <= every * most) {
                return every;
            }
        }
        return cost.years();
    }

    /** What is spent by the end of a year is reached there, at once: a stair for each year. */
    private void stairs(Bill bill, Color colour, Stroke stroke) {
        Path2D path = new Path2D.Double();
        path.moveTo(x(0), y(bill.purchase()));
        double[] spent = DoubleStream.concat(
                        DoubleStream.of(bill.purchase()), bill.byYear().stream().mapToDouble(Double::doubleValue))
                .toArray();
        for (int year = 1; year < spent.length; year++) {
            path.lineTo(x(year), y(spent[year - 1]));
            path.lineTo(x(year), y(spent[year]));
        }
        ink.draw(path, colour, stroke);
    }

    /** Names and figures at the right ends, apart from each other; over the stairs where it is narrow. */
    private void ends() {
        double apart = ink.height(name());
        double pumps = y(today.total());
        double blower = y(cost.central().total());
        double up = pumps <= blower ? -1 : 1;
        if (isNarrow || Math.abs(pumps - blower) < apart) {
            double between = isNarrow ? plot.getY() - apart - ink.px(2) : (pumps + blower) / 2;
            pumps = between + up * apart / 2;
            blower = between - up * apart / 2;
        }
        end(endWords("pumps", today), pumps, ink.palette().softInk());
        end(endWords("blower", cost.central()), blower, ink.palette().air());
    }

    private void end(String words, double y, Color colour) {
        double left = isNarrow ? plot.getMaxX() - ink.width(words, name()) : plot.getMaxX() + ink.px(GAP_PX);
        ink.text(words, left, y + ink.px(4), name(), colour);
    }

    private void payback() {
        OptionalInt year = cost.paybackYear();
        if (year.isEmpty()) {
            String words = "no pay-back in " + cost.years() + " years";
            ink.textEnding(
                    words,
                    plot.getMaxX() - ink.px(6),
                    plot.getMaxY() - ink.px(7),
                    font(),
                    ink.palette().accent());
            return;
        }
        double at = x(year.getAsInt());
        ink.draw(
                new java.awt.geom.Line2D.Double(at, plot.getY(), at, plot.getMaxY()),
                ink.palette().accent(),
                ink.dashed(1.2, 3));
        String words = "pays from year " + year.getAsInt() + " on";
        double half = ink.width(words, font()) / 2;
        double middle = Math.max(plot.getX() + half, Math.min(plot.getMaxX() - half, at));
        ink.textAround(
                words,
                middle,
                plot.getMaxY() + ink.px(28),
                font(),
                ink.palette().accent());
        double y = y(cost.central().byYear().get(year.getAsInt() - 1));
        ink.draw(StateMark.circle(at, y, ink.px(4)), ink.palette().accent(), 1.6);
    }
}
