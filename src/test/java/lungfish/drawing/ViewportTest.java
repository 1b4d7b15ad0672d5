package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class ViewportTest {
    /** Rounding of doubles: a nanometre in a hall. */
    private static final double ROUNDING_M = 1e-9;

    private static final double ROUNDING_PX = 1e-6;

    @Property
    void thereAndBackIsTheSamePlace(
            @ForAll @DoubleRange(min = -50, max = 50) double xM,
            @ForAll @DoubleRange(min = -50, max = 50) double yM,
            @ForAll @DoubleRange(min = 2, max = 2000) double pxPerM,
            @ForAll @DoubleRange(min = -5000, max = 5000) double left) {
        Viewport view = new Viewport(pxPerM, left, -left);
        Point2D back = view.m(view.px(xM, yM));
        assertThat(back.getX()).isCloseTo(xM, within(ROUNDING_M));
        assertThat(back.getY()).isCloseTo(yM, within(ROUNDING_M));
    }

    @Property
    void zoomingKeepsThePointUnderThePointer(
            @ForAll @DoubleRange(min = 0.2, max = 5) double factor,
            @ForAll @DoubleRange(min = 0, max = 2000) double xPx,
            @ForAll @DoubleRange(min = 0, max = 2000) double yPx) {
        Viewport view = new Viewport(100, 30, 40);
        Point2D about = new Point2D.Double(xPx, yPx);
        Viewport zoomed = view.zoomed(factor, about);
        assertThat(zoomed.xM(xPx)).isCloseTo(view.xM(xPx), within(ROUNDING_M));
        assertThat(zoomed.yM(yPx)).isCloseTo(view.yM(yPx), within(ROUNDING_M));
    }

    @Property
    void zoomingInAndOutAgainIsNoChange(@ForAll @DoubleRange(min = 0.2, max = 5) double factor) {
        Point2D about = new Point2D.Double(333, 222);
        Viewport back = new Viewport(100, 30, 40).zoomed(factor, about).zoomed(1 / factor, about);
        assertThat(back.pxPerM()).isCloseTo(100, within(ROUNDING_PX));
        assertThat(back.leftPx()).isCloseTo(30, within(ROUNDING_PX));
        assertThat(back.topPx()).isCloseTo(40, within(ROUNDING_PX));
    }

    @Property
    void whatFitsLiesInsideAndTouches(
            @ForAll @DoubleRange(min = 0.5, max = 40) double longM,
            @ForAll @DoubleRange(min = 0.5, max = 40) double wideM) {
        Rectangle2D area = new Rectangle2D.Double(20, 10, 800, 600);
        Rectangle2D shown = Viewport.fit(new Rectangle2D.Double(-1, -2, longM, wideM), area)
                .px(new Rectangle2D.Double(-1, -2, longM, wideM));
        assertThat(shown.getCenterX()).isCloseTo(area.getCenterX(), within(ROUNDING_PX));
        assertThat(shown.getCenterY()).isCloseTo(area.getCenterY(), within(ROUNDING_PX));
        assertThat(Math.max(shown.getWidth() / area.getWidth(), shown.getHeight() / area.getHeight()))
                .isCloseTo(1, within(ROUNDING_PX));
    }

    /** By hand: 100 px for a metre, pushed 7 to the right and 5 up. */
    @Test
    void panningMovesThePage() {
        Viewport view = new Viewport(100, 0, 0).panned(7, -5);
        assertThat(view.px(2, 3)).isEqualTo(new Point2D.Double(207, 295));
    }

    @Test
    void zoomHasAnEndOnBothSides() {
        Point2D about = new Point2D.Double(0, 0);
        assertThat(new Viewport(100, 0, 0).zoomed(1e-9, about).pxPerM()).isEqualTo(Viewport.LEAST_PX_PER_M);
        assertThat(new Viewport(100, 0, 0).zoomed(1e9, about).pxPerM()).isEqualTo(Viewport.MOST_PX_PER_M);
    }
}
