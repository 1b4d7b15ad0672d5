package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.DoubleStream;
import lungfish.logbook.Logbook;
import lungfish.logbook.Logs;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** Where readings stand in their picture. */
final class ReadingsPictureTest {
    private static final Look LOOK = Look.light(DisplayUnits.METRIC);

    private static Logbook logbook(Room room) {
        Plan plan = new Planner(DemoPlans.CATALOGUE).plan(room);
        return Logbook.of(plan, DemoPlans.CATALOGUE, Logs.TODAY);
    }

    private static Logbook aYear() {
        return logbook(Logs.aYear(DemoPlans.room("starting-out"), 6_229));
    }

    private static ReadingsLane lane(BufferedImage image, double... values) {
        ReadingsTime time = new ReadingsTime(logbook(DemoPlans.room("starting-out")), 0, 100);
        return new ReadingsLane(
                Ink.flat(LOOK, image.createGraphics()),
                new Rectangle2D.Double(0, 0, 100, 100),
                time,
                Dimension.POWER,
                DoubleStream.of(values));
    }

    /** 10 and 20 with 15 % of room beyond each end: 8.5 to 21.5, over 100 pixels. */
    @Test
    void aLaneReachesALittleBeyondWhatWasRead() {
        ReadingsLane lane = lane(new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB), 10, 20);

        assertThat(lane.y(15)).isEqualTo(50, within(1e-9));
        assertThat(lane.y(10)).isEqualTo(100 - 1.5 / 13 * 100, within(1e-9));
        assertThat(lane.y(20)).isEqualTo(1.5 / 13 * 100, within(1e-9));
    }

    /** The first point of the log stands at the left end, in the colour of air; a log of the gauge alone has one lane fewer. */
    @Test
    void theBlowerIsADotAndTheGaugeAnOpenSquare() {
        Logbook logbook = aYear();
        int height = (int) ReadingsPicture.height(logbook, LOOK);
        BufferedImage image =
                Pictures.of((area, look, g) -> ReadingsPicture.paint(logbook, area, look, g), 700, height, LOOK);

        assertThat(countedAt(image, 62, 26, 156, LOOK.palette().air())).isBetween(5, 9);
        // The gauge's lane begins 156 pixels down; its mark is open, so that the sheet shows within.
        assertThat(countedAt(image, 62, 182, 236, LOOK.palette().air())).isZero();
    }

    private static int countedAt(BufferedImage image, int x, int fromY, int toY, Color colour) {
        int count = 0;
        for (int y = fromY; y < toY; y++) {
            count += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
        }
        return count;
    }

    /** A lane is 54 pixels and 26 for its name. */
    @Test
    void eachSeriesThatWasReadHasALane() {
        Logbook all = aYear();
        Logbook gauges = new Logbook(
                all.today(),
                all.gauges(),
                List.of(),
                List.of(),
                all.jars(),
                all.leaks(),
                all.shares(),
                all.need(),
                all.trend(),
                all.forecast(),
                all.dues(),
                all.services());

        assertThat(ReadingsPicture.height(all, LOOK) - ReadingsPicture.height(gauges, LOOK))
                .isEqualTo(80);
    }

    @Test
    void anEmptyLogHasNoPicture() {
        assertThat(ReadingsPicture.isWorthIt(logbook(DemoPlans.room("starting-out"))))
                .isFalse();
        assertThat(ReadingsPicture.isWorthIt(aYear())).isTrue();
    }
}
