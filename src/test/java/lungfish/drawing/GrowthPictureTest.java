package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Mapping;
import lungfish.growth.NewKind;
import lungfish.growth.Place;
import lungfish.growth.Span;
import lungfish.headroom.Fits;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts about what is laid over a room to show where it can grow. */
final class GrowthPictureTest {
    private static final int WIDE = 900;
    private static final int HIGH = 600;
    private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, WIDE, HIGH);
    private static final Planner PLANNER = new Planner(DemoPlans.CATALOGUE);
    private static final Room ROOM = Rooms.small();
    private static final Run MAIN = ROOM.runs().get(0);
    private static final HeadroomMap REAL =
            Mapping.of(PLANNER, ROOM, NewKind.COMMONEST, Progress.UNHEARD).orElseThrow();

    private static Place place(double alongM, int outlets) {
        Point at = MAIN.at(alongM);
        return new Place(MAIN.id(), alongM, at, false, new Fits(outlets, 5000, Optional.empty()));
    }

    /** The main of the small room with so many at its beginning and at its end. */
    private static GrowthLaid growing(int first, int last, boolean isCurrent) {
        double length = MAIN.lengthM();
        HeadroomMap map = new HeadroomMap(
                REAL.newcomer(),
                REAL.candidate(),
                REAL.recommended(),
                List.of(place(0, first), place(length, last)),
                List.of(new Span(MAIN.id(), 0, length, 0, 1)),
                List.of());
        return new GrowthLaid(map, isCurrent);
    }

    private static BufferedImage painted(Optional<GrowthLaid> growing, Look look) {
        RoomScene scene = RoomScene.of(ROOM).growing(growing);
        Viewport view = Viewport.fit(scene.boundsM(), new Rectangle2D.Double(60, 60, WIDE - 120, HIGH - 120));
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(look.palette().sheet());
        g.fillRect(0, 0, WIDE, HIGH);
        RoomPainter.unmarked(scene, view, FRAME, look, g);
        return image;
    }

    private static Look look(boolean isDark) {
        Look light = Look.light(DisplayUnits.METRIC);
        return isDark ? light.with(Palette.DARK) : light;
    }

    /** How many pixels of a column are another than without the map. */
    private static int changed(GrowthLaid growing, double shareAlong, Look look) {
        BufferedImage with = painted(Optional.of(growing), look);
        BufferedImage without = painted(Optional.empty(), look);
        Viewport view =
                Viewport.fit(RoomScene.of(ROOM).boundsM(), new Rectangle2D.Double(60, 60, WIDE - 120, HIGH - 120));
        int x = (int) view.xPx(MAIN.at(shareAlong * MAIN.lengthM()).xM());
        int count = 0;
        for (int y = 0; y < HIGH; y++) {
            count += with.getRGB(x, y) == without.getRGB(x, y) ? 0 : 1;
        }
        return count;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theBandIsWiderWhereMoreFit(boolean isDark) {
        GrowthLaid growing = growing(4, 40, true);

        assertThat(changed(growing, 0.9, look(isDark))).isGreaterThan(changed(growing, 0.15, look(isDark)) + 4);
    }

    @Test
    void whereNothingFitsThereIsNoBand() {
        assertThat(changed(growing(0, 0, true), 0.15, look(false))).isZero();
    }

    @Test
    void whereThePlaceDoesNotMatterTheBandIsNarrowAllAlong() {
        GrowthLaid growing = growing(39, 40, true);

        assertThat(changed(growing, 0.15, look(false)))
                .isEqualTo(changed(growing, 0.85, look(false)))
                .isLessThan(changed(growing(4, 40, true), 0.9, look(false)));
    }

    @Test
    void anOlderMapIsSofter() {
        Look look = look(false);
        assertThat(contrast(growing(4, 40, false), look)).isLessThan(contrast(growing(4, 40, true), look));
    }

    /** Of the strongest colour that the map brings. */
    private static double contrast(GrowthLaid growing, Look look) {
        BufferedImage with = painted(Optional.of(growing), look);
        BufferedImage without = painted(Optional.empty(), look);
        double most = 0;
        for (int x = 100; x < WIDE - 100; x += 7) {
            for (int y = 0; y < HIGH; y++) {
                if (with.getRGB(x, y) != without.getRGB(x, y)) {
                    Color colour = new Color(with.getRGB(x, y));
                    most = Math.max(
                            most, Palette.contrast(colour, look.palette().sheet()));
                }
            }
        }
        return most;
    }

    /** Names find their places beside the figures, and all racks keep theirs. */
    @ParameterizedTest
    @ValueSource(strings = {"basement-rainbows", "club-hall"})
    void noNameStandsOnAFigure(String demo) {
        Room room = DemoPlans.room(demo);
        HeadroomMap map =
                Mapping.of(PLANNER, room, NewKind.COMMONEST, Progress.UNHEARD).orElseThrow();
        RoomScene scene = RoomScene.of(DemoPlans.plan(demo), Shown.AS_IT_SHOULD_BE_SET)
                .growing(Optional.of(new GrowthLaid(map, true)));
        Viewport view = Viewport.fit(scene.boundsM(), new Rectangle2D.Double(60, 60, WIDE - 120, HIGH - 120));
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Ink ink = new Ink(look(false), view, image.createGraphics());

        GrowthFigures figures = GrowthFigures.of(scene, FRAME, ink).orElseThrow();
        List<Label> names = RoomNames.of(scene, FRAME, figures.boxes(), ink);

        assertThat(figures.boxes()).hasSizeGreaterThanOrEqualTo(map.racks().size() + 2);
        assertThat(names).isNotEmpty().allMatch(name -> figures.boxes().stream()
                .noneMatch(box -> box.intersects(name.box())));
    }
}
