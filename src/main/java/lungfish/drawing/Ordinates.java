package lungfish.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import lungfish.quantity.Dimension;

/**
 * Running dimensions along one side of a drawing: the distance of each edge from one corner, all from the same, so that one
 * measures them with the tape laid down once.
 */
record Ordinates(List<Double> atM, Ink ink) {
    /** What differs by less is one edge, m. */
    private static final double SAME_M = 0.004;

    private static final double TICK_PX = 6;
    private static final double GAP_PX = 3;

    /** Each edge once, in order; those at the ends of the side among them. */
    static Ordinates of(DoubleStream edgesM, double toM, Ink ink) {
        TreeSet<Double> sorted = new TreeSet<>();
        edgesM.filter(x -> x > -SAME_M && x < toM + SAME_M).forEach(sorted::add);
        List<Double> apart = new ArrayList<>(List.of(0.0));
        for (double x : sorted) {
            if (x - apart.get(apart.size() - 1) > SAME_M && toM - x > SAME_M) {
                apart.add(x);
            }
        }
        apart.add(toM);
        return new Ordinates(List.copyOf(apart), ink);
    }

    /** Above a base line, read from the right: figures stand on their side, so that many find room. */
    void above(double basePx) {
        List<Double> figures = spread(atM.stream().map(at -> ink.view().xPx(at)).toList());
        for (int i = 0; i < atM.size(); i++) {
            double at = atM.get(i);
            double x = ink.view().xPx(at);
            double figure = figures.get(i);
            ink.line(x, basePx, x, basePx - TICK_PX / 2, ink.palette().ink(), 0.5);
            ink.line(
                    x,
                    basePx - TICK_PX / 2,
                    figure,
                    basePx - TICK_PX,
                    ink.palette().ink(),
                    0.5);
            Graphics2D turned = (Graphics2D) ink.g().create();
            double y = basePx - TICK_PX - GAP_PX;
            turned.rotate(-Math.PI / 2, figure, y);
            new Ink(ink.look(), ink.view(), turned)
                    .text(
                            says(at),
                            figure,
                            y + letters() * 0.32,
                            font(),
                            ink.palette().ink());
            turned.dispose();
        }
    }

    /** Left of a base line. */
    void leftOf(double basePx) {
        List<Double> figures = spread(atM.stream().map(at -> ink.view().yPx(at)).toList());
        for (int i = 0; i < atM.size(); i++) {
            double at = atM.get(i);
            double y = ink.view().yPx(at);
            double figure = figures.get(i);
            ink.line(basePx, y, basePx - TICK_PX / 2, y, ink.palette().ink(), 0.5);
            ink.line(
                    basePx - TICK_PX / 2,
                    y,
                    basePx - TICK_PX,
                    figure,
                    ink.palette().ink(),
                    0.5);
            ink.textEnding(
                    says(at),
                    basePx - TICK_PX - GAP_PX,
                    figure + letters() * 0.32,
                    font(),
                    ink.palette().ink());
        }
    }

    /** As near to where they belong as their height allows; the last stays at its end, and pushes those before it. */
    private List<Double> spread(List<Double> places) {
        double[] at = places.stream().mapToDouble(Double::doubleValue).toArray();
        for (int i = 1; i < at.length; i++) {
            at[i] = Math.max(at[i], at[i - 1] + letters());
        }
        at[at.length - 1] = places.get(at.length - 1) + letters() / 2;
        for (int i = at.length - 2; i >= 0; i--) {
            at[i] = Math.min(at[i], at[i + 1] - letters());
        }
        return DoubleStream.of(at).boxed().toList();
    }

    private String says(double atM) {
        return ink.look().quantities().show(atM, Dimension.DEPTH);
    }

    private Font font() {
        return ink.type().drawing();
    }

    private double letters() {
        return ink.height(font()) * 0.92;
    }
}
