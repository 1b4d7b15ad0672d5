package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lungfish.logbook.Logbook;
import lungfish.logbook.Logs;
import lungfish.logbook.Point;
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

        assertThat(countedAt(image, 76, 26, 156, LOOK.palette().air())).isBetween(5, 9);
        // The gauge's lane begins 156 pixels down; its mark is open, so that the sheet shows within.
        assertThat(countedAt(image, 76, 182, 236, LOOK.palette().air())).isZero();
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

    private static List<Point> jar(double... m3PerS) {
        return IntStream.range(0, m3PerS.length)
                .mapToObj(i -> new Point(Logs.START.plusDays(60L * i), m3PerS[i]))
                .toList();
    }

    private static Logbook ofJars(Map<String, List<Point>> jars) {
        Logbook none = logbook(DemoPlans.room("starting-out"));
        return new Logbook(
                none.today(),
                List.of(),
                List.of(),
                List.of(),
                jars,
                List.of(),
                List.of(),
                none.need(),
                none.trend(),
                none.forecast(),
                List.of(),
                List.of());
    }

    /** Half of the air is as great a change as twice; a jar that was read once shows no change. */
    @Test
    void theJarsThatChangedMostHaveALane() {
        Map<String, List<Point>> jars = Map.of(
                "a", jar(2e-5, 1.9e-5),
                "b", jar(2e-5, 1e-5),
                "c", jar(1e-5, 1.8e-5),
                "d", jar(2e-5, 1.4e-5),
                "e", jar(9e-5));

        assertThat(ReadingsLanes.of(ofJars(jars)))
                .extracting(ReadingsLanes.Lane::name)
                .containsExactly(
                        "Jar at outlet b (of 4 outlets these changed most)", "Jar at outlet c", "Jar at outlet d");
    }

    @Test
    void anEmptyLogHasNoPicture() {
        assertThat(ReadingsPicture.isWorthIt(logbook(DemoPlans.room("starting-out"))))
                .isFalse();
        assertThat(ReadingsPicture.isWorthIt(aYear())).isTrue();
    }
}
