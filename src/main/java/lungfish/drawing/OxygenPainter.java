package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lungfish.oxygen.Levels;
import lungfish.quantity.Dimension;
import lungfish.room.Tank;

/**
 * Paints the oxygen of a tank: as far as water fills the gauge; hatched in alarm, crossed out in danger, a question mark where
 * nobody can judge.
 */
final class OxygenPainter {
    private static final double KG_PER_G = 1e-3;
    private static final double BESIDE_AIRLINE_PX = 18;
    private static final double GAUGE_PX = 12;
    private static final double GAUGE_INSET_PX = 5;
    private static final int SOFT = 110; // of 255: what is of an older room

    private final OxygenLaid laid;
    private final Ink ink;

    OxygenPainter(OxygenLaid laid, Ink ink) {
        this.laid = laid;
        this.ink = ink;
    }

    /** A tank in its strip from above: the strip is its gauge, filled along its longer side. */
    void strip(Tank tank, Rectangle2D box) {
        Optional<OxygenState> state = laid.state(tank);
        if (state.isEmpty()) {
            return;
        }
        ink.fill(box, ink.palette().sheet());
        laid.share(tank).ifPresent(share -> ink.fillWater(part(box, share)));
        if (laid.share(tank).isEmpty() && state.get() == OxygenState.FINE) {
            ink.fillWater(box); // only a time is typed for it: it lives, or it does not
        }
        sign(state.get(), box);
    }

    private static Rectangle2D part(Rectangle2D box, double share) {
        return box.getWidth() >= box.getHeight()
                ? new Rectangle2D.Double(box.getX(), box.getY(), share * box.getWidth(), box.getHeight())
                : new Rectangle2D.Double(
                        box.getX(), box.getMaxY() - share * box.getHeight(), box.getWidth(), share * box.getHeight());
    }

    private void sign(OxygenState state, Rectangle2D box) {
        new OxygenSign(ink, accent()).paint(state, box);
    }

    private Color accent() {
        Color accent = ink.palette().accent();
        return laid.isCurrent() ? accent : new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), SOFT);
    }

    /** A tank from its front: a gauge stands in the water at its right, and its figure beside it. */
    void front(Tank tank, Rectangle2D water) {
        Optional<OxygenState> state = laid.state(tank);
        if (state.isEmpty()) {
            return;
        }
        if (state.get() == OxygenState.UNKNOWN) {
            sign(OxygenState.UNKNOWN, water);
            return;
        }
        if (state.get() != OxygenState.FINE) {
            sign(state.get(), water);
        }
        laid.share(tank).ifPresent(share -> gauge(tank, water, share, state.get()));
    }

    private void gauge(Tank tank, Rectangle2D water, double share, OxygenState state) {
        double inset = ink.px(GAUGE_INSET_PX);
        double wide = Math.min(ink.px(GAUGE_PX), water.getWidth() / 5);
        Rectangle2D tube = new Rectangle2D.Double(
                water.getMaxX() - inset - wide, water.getY() + inset, wide, Math.max(1, water.getHeight() - 2 * inset));
        ink.fill(tube, ink.palette().sheet());
        double y = tube.getMaxY() - share * tube.getHeight();
        ink.fill(
                new Rectangle2D.Double(tube.getX(), y, tube.getWidth(), tube.getMaxY() - y),
                state == OxygenState.FINE ? ink.palette().air() : accent());
        Levels levels = laid.played().drill().levels();
        tick(tube, levels.alarmGPerM3());
        tick(tube, levels.dangerGPerM3());
        ink.draw(tube, ink.palette().softInk(), 1);
        figure(tank, tube, water, state);
    }

    private void tick(Rectangle2D tube, double gPerM3) {
        double y = tube.getMaxY() - laid.shareOf(gPerM3) * tube.getHeight();
        ink.draw(
                new Line2D.Double(tube.getX() - ink.px(3), y, tube.getMaxX(), y),
                ink.palette().ink(),
                1);
    }

    /** The figure and the word at the top of the water, where there is room between the last airline and the gauge. */
    private void figure(Tank tank, Rectangle2D tube, Rectangle2D water, OxygenState state) {
        Font font = ink.type().drawing();
        String figure =
                ink.look().quantities().show(KG_PER_G * laid.levelGPerM3(tank).orElse(0), Dimension.CONCENTRATION);
        String both = state == OxygenState.FINE ? figure : figure + ", " + state.word();
        int airlines = tank.outlets().size();
        double lastAirline = water.getX() + water.getWidth() * airlines / (airlines + 1.0);
        double room = tube.getX() - lastAirline - ink.px(BESIDE_AIRLINE_PX);
        String says = ink.width(both, font) <= room ? both : ink.width(figure, font) <= room ? figure : "";
        if (!says.isEmpty()) {
            write(says, tube.getX() - ink.px(7), water.getY() + ink.px(17), state);
        }
    }

    private void write(String says, double right, double baseline, OxygenState state) {
        Font font = ink.type().drawing();
        double wide = ink.width(says, font);
        Rectangle2D veil = new Rectangle2D.Double(
                right - wide - ink.px(3), baseline - ink.letters(font) - ink.px(3), wide + ink.px(6), ink.height(font));
        ink.fill(veil, ink.palette().sheet());
        ink.textEnding(
                says,
                right,
                baseline,
                font,
                state == OxygenState.FINE ? ink.palette().ink() : accent());
    }
}
