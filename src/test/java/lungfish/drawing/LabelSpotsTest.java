package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LabelSpotsTest {
    private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, 100, 100);
    private static final Rectangle2D LEFT = new Rectangle2D.Double(10, 10, 20, 10);
    private static final Rectangle2D RIGHT = new Rectangle2D.Double(60, 10, 20, 10);
    private static final Rectangle2D OUTSIDE = new Rectangle2D.Double(90, 10, 20, 10);

    private final LabelSpots spots = new LabelSpots(FRAME);

    @Test
    void ofFreePlacesTheFirstIsTaken() {
        assertThat(spots.best(List.of(LEFT, RIGHT))).isEqualTo(LEFT);
    }

    @Test
    void aTakenPlaceGivesWayToAFreeOne() {
        spots.place(List.of(LEFT));
        assertThat(spots.best(List.of(LEFT, RIGHT))).isEqualTo(RIGHT);
    }

    @Test
    void aCoveredPlaceIsBetterThanOneOutside() {
        spots.take(LEFT, 30);
        assertThat(spots.best(List.of(OUTSIDE, LEFT))).isEqualTo(LEFT);
    }

    /** A line of 4 pixels' width over half the place of 20 by 10: 4 × 10 of its 200, of weight 5. */
    @Test
    void aLineCountsByWhatItCovers() {
        spots.takeAlong(new Line2D.Double(20, 0, 20, 40), 2, 5);
        assertThat(spots.share(LEFT)).isBetween(0.9 * 5 * 4 / 20.0, 1.1 * 5 * 4 / 20.0);
    }

    @Test
    void whatLiesUnderAPointIsCountedTogether() {
        spots.take(LEFT, 3);
        spots.take(new Rectangle2D.Double(0, 0, 15, 15), 4);
        assertThat(spots.weightAt(12, 12)).isEqualTo(3 + 4);
        assertThat(spots.weightAt(50, 50)).isZero();
    }
}
