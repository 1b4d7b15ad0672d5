package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import lungfish.plan.DemoPlans;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Names on the demo rooms, at every size of text, on a canvas as the window has it. */
final class RoomNamesTest {
    private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, 1000, 560);
    private static final Graphics2D NOWHERE = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();

    /** Share of a line's area: letters do not fill their line, so that lines may touch. */
    private static final double LINES_TOUCH = 0.1;

    /** A veil over more of a rack than this is seen at once; judged by eye. */
    private static final double MUCH = 0.25;

    static Stream<Arguments> roomsAndSizes() {
        return DemoPlans.names().flatMap(name -> Stream.of(1.0, 1.5, 2.0).map(scale -> Arguments.of(name, scale)));
    }

    /** The names, and what they stand among. */
    private record Drawn(RoomScene scene, Viewport view, List<Label> names) {}

    private static List<Label> names(String demo, double scale) {
        return drawn(demo, scale).names();
    }

    private static Drawn drawn(String demo, double scale) {
        RoomScene scene = RoomScene.of(DemoPlans.plan(demo), Shown.AS_IT_SHOULD_BE_SET);
        Look look = Look.light(scene.room().displayUnits()).with(new Type(scale));
        Rectangle2D inside = new Rectangle2D.Double(40 * scale, 32 * scale, 1000 - 60 * scale, 560 - 48 * scale);
        Viewport view = Viewport.fit(scene.boundsM(), inside);
        return new Drawn(scene, view, RoomNames.of(scene, FRAME, new Ink(look, view, NOWHERE)));
    }

    @ParameterizedTest
    @MethodSource("roomsAndSizes")
    void noNameCoversAnother(String demo, double scale) {
        List<Label> names = names(demo, scale);
        for (Label one : names) {
            assertThat(names).filteredOn(other -> !other.equals(one)).allSatisfy(other -> assertThat(
                            common(one.box(), other.box()))
                    .as("%s over %s", one.text(), other.text())
                    .isLessThan(LINES_TOUCH * area(one.box())));
        }
    }

    /** On tanks a name hides how they stand. */
    @ParameterizedTest
    @MethodSource("roomsAndSizes")
    void noNameHidesMuchOfARack(String demo, double scale) {
        Drawn drawn = drawn(demo, scale);
        for (Label name : drawn.names()) {
            double covers = drawn.scene().racks().stream()
                    .mapToDouble(rack -> common(name.box(), drawn.view().px(rack.outlineM())))
                    .sum();
            assertThat(covers).as(name.text()).isLessThan(MUCH * area(name.box()));
        }
    }

    @ParameterizedTest
    @MethodSource("roomsAndSizes")
    void everyNameIsInsideTheFrame(String demo, double scale) {
        assertThat(names(demo, scale)).allMatch(name -> FRAME.contains(name.box()));
    }

    @ParameterizedTest
    @MethodSource("roomsAndSizes")
    void theIndexOutletIsAlwaysNamed(String demo, double scale) {
        String index = DemoPlans.plan(demo).outlets().stream()
                .filter(outlet -> outlet.index())
                .findFirst()
                .orElseThrow()
                .need()
                .id()
                .text();
        assertThat(names(demo, scale))
                .filteredOn(name -> name.text().startsWith(index))
                .hasSize(1);
    }

    /** A leader that crosses a room reads as a line of the room. */
    @ParameterizedTest
    @MethodSource("roomsAndSizes")
    void noLeaderCrossesHalfTheCanvas(String demo, double scale) {
        assertThat(names(demo, scale))
                .filteredOn(name -> name.leader().isPresent())
                .allSatisfy(name -> {
                    Rectangle2D along = name.leader().orElseThrow().getBounds2D();
                    assertThat(Math.hypot(along.getWidth(), along.getHeight())).isLessThan(FRAME.getHeight() / 2);
                });
    }

    private static double common(Rectangle2D one, Rectangle2D other) {
        Rectangle2D both = one.createIntersection(other);
        return both.getWidth() > 0 && both.getHeight() > 0 ? area(both) : 0;
    }

    private static double area(Rectangle2D box) {
        return box.getWidth() * box.getHeight();
    }
}
