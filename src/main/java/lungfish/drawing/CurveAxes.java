package lungfish.drawing;

import java.awt.Font;
import lungfish.quantity.Dimension;

/** Paints the axes of a plane of curves, with round figures in the reader's units. */
final class CurveAxes {
    private static final int MOST_FLOWS = 4;
    private static final int MOST_PRESSURES = 3;
    /** How far a figure may stand out beside the plane. */
    private static final int BESIDE = 6;

    private final CurvePlot plot;
    private final Ink ink;
    private final LabelSpots spots;

    private CurveAxes(CurvePlot plot, Ink ink, LabelSpots spots) {
        this.plot = plot;
        this.ink = ink;
        this.spots = spots;
    }

    /** Paints them; what they cover counts as taken. */
    static void paint(CurvePlot plot, Ink ink, LabelSpots spots) {
        CurveAxes axes = new CurveAxes(plot, ink, spots);
        axes.lines();
        axes.flows();
        axes.pressures();
    }

    private void lines() {
        double left = plot.box().getX();
        double bottom = plot.box().getMaxY();
        ink.line(left, plot.box().getY(), left, bottom, ink.palette().softInk(), 1);
        ink.line(left, bottom, plot.box().getMaxX(), bottom, ink.palette().softInk(), 1);
        double below = ink.px(20); // to the lower edge of the figures
        spots.take(
                Boxes.between(
                        left - ink.px(2), bottom - ink.px(2), plot.box().getMaxX() + ink.px(40), bottom + below, 0),
                8);
    }

    private void flows() {
        Font font = ink.type().drawing();
        double bottom = plot.box().getMaxY();
        AxisSteps steps = flowSteps(font);
        for (int i = 1; i <= steps.count(); i++) {
            double x = plot.x(steps.at(i));
            ink.line(x, bottom, x, bottom + ink.px(3), ink.palette().softInk(), 1);
            ink.textAround(
                    steps.label(i),
                    middle(steps, i, font),
                    bottom + ink.px(15),
                    font,
                    ink.palette().softInk());
        }
    }

    /** As fine as the figures have room side by side. */
    private AxisSteps flowSteps(Font font) {
        AxisSteps steps = AxisSteps.upTo(plot.mostM3PerS(), Dimension.AIR_FLOW, MOST_FLOWS, ink.look());
        for (int most = MOST_FLOWS - 1; most > 0 && !haveRoom(steps, font); most--) {
            steps = AxisSteps.upTo(plot.mostM3PerS(), Dimension.AIR_FLOW, most, ink.look());
        }
        return steps;
    }

    private boolean haveRoom(AxisSteps steps, Font font) {
        int last = steps.count();
        double apart = middle(steps, last, font) - middle(steps, last - 1, font);
        return ink.width(steps.label(last), font) + ink.px(6) <= apart;
    }

    /** Under its tick, but never beyond the edge of the picture. */
    private double middle(AxisSteps steps, int i, Font font) {
        double most = plot.box().getMaxX() + ink.px(BESIDE) - ink.width(steps.label(i), font) / 2;
        return Math.min(plot.x(steps.at(i)), most);
    }

    private void pressures() {
        Font font = ink.type().drawing();
        double left = plot.box().getX();
        AxisSteps steps = AxisSteps.upTo(plot.mostPa(), Dimension.PRESSURE, MOST_PRESSURES, ink.look());
        for (int i = 1; i <= steps.count(); i++) {
            double y = plot.y(steps.at(i));
            ink.line(left, y, plot.box().getMaxX(), y, ink.palette().floor(), 1);
            ink.textEnding(
                    steps.label(i),
                    left - ink.px(5),
                    y + ink.px(4),
                    font,
                    ink.palette().softInk());
        }
    }
}
