package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.plan.DemoPlans;
import lungfish.quantity.DisplayUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Facts about the pictures of an outage: that of the mains in the basement, which has a battery. */
final class OutagePictureTest {
    private static final Look LOOK = Look.light(DisplayUnits.METRIC);
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 600, 400);
    private static final double DAY_S = 24 * 3600;
    private static final OutagePlayed PLAYED = played("basement-rainbows", Scene.mains(24));

    private static OutagePlayed played(String room, Scene scene) {
        return OutagePlayed.of(Drills.of(DemoPlans.plan(room), DemoPlans.CATALOGUE)
                .orElseThrow()
                .play(scene));
    }

    @Test
    void theTimeUnderThePointerGoesFromNothingToAll() {
        assertThat(OutagePicture.atS(PLAYED, AREA, LOOK, 0)).isZero();
        assertThat(OutagePicture.atS(PLAYED, AREA, LOOK, 600)).isEqualTo(DAY_S);
        double left = 0;
        while (OutagePicture.atS(PLAYED, AREA, LOOK, left) == 0) {
            left++;
        }
        double middle = (left + 600 - 6) / 2; // six pixels are left free at the right
        assertThat(OutagePicture.atS(PLAYED, AREA, LOOK, middle)).isCloseTo(DAY_S / 2, within(DAY_S / 300));
    }

    @Test
    void whatRunsIsTheMainsTheBatteryAndTheAirOfTheOutlets() {
        assertThat(OutageLane.of(PLAYED.drill()))
                .extracting(OutageLane::name)
                .contains("Mains", "Battery", "Outlets with air")
                .doesNotContain("Generator", "Standby", "Essential only");
    }

    @Test
    void theBatteryIsAWedgeThatFallsFromFullToEmpty() {
        OutageLane battery = OutageLane.of(PLAYED.drill()).stream()
                .filter(OutageLane::isCharge)
                .findFirst()
                .orElseThrow();
        assertThat(battery.bars().get(0).from()).isEqualTo(1);
        assertThat(battery.bars().get(battery.bars().size() - 1).to()).isCloseTo(0, within(1e-6));
    }

    /** In the hall a generator is started by hand, and the air is cut down to the essential outlets before. */
    @Test
    void theHallHasLanesForItsGeneratorAndForTheEssentialOutlets() {
        assertThat(OutageLane.of(played("club-hall", Scene.mains(24)).drill()))
                .extracting(OutageLane::name)
                .contains("Generator", "Essential only");
    }

    @Test
    void aStoppedBlowerAndItsStandbyHaveLanes() {
        Failing stops = Drills.of(DemoPlans.plan("club-hall"), DemoPlans.CATALOGUE).orElseThrow().possible().stream()
                .filter(each -> each.kind() == Failing.Kind.BLOWER_STOPS)
                .findFirst()
                .orElseThrow();
        assertThat(OutageLane.of(played("club-hall", new Scene(stops, OptionalDouble.empty(), DAY_S))
                        .drill()))
                .extracting(OutageLane::name)
                .contains("Blower", "Standby")
                .doesNotContain("Mains");
    }

    /** The band is what it says: no tank lies outside it. */
    @Test
    void everyTankLiesInTheBand() {
        for (OxygenBand.Sample sample : PLAYED.band().samples()) {
            assertThat(PLAYED.drill().tanks().stream()
                            .flatMapToDouble(
                                    tank -> OutagePlayed.levelGPerM3(tank, Case.CAUTIOUS, sample.atS()).stream()))
                    .allMatch(level -> level >= sample.leastGPerM3() && level <= sample.mostGPerM3());
        }
    }

    @Test
    void aTankIsInAlarmAndThenInDangerFromTheMomentsThatAreTold() {
        TankDrill first = PLAYED.drill().first().orElseThrow();
        double alarm = first.alarmS(Case.CAUTIOUS).orElseThrow();
        double danger = first.dangerS(Case.CAUTIOUS).orElseThrow();
        assertThat(OutagePlayed.state(first, Case.CAUTIOUS, alarm - 60)).isEqualTo(OxygenState.FINE);
        assertThat(OutagePlayed.state(first, Case.CAUTIOUS, alarm + 60)).isEqualTo(OxygenState.ALARM);
        assertThat(OutagePlayed.state(first, Case.CAUTIOUS, danger + 60)).isEqualTo(OxygenState.DANGER);
    }

    @Test
    void aVesselWithATypedTimeIsInDangerWhenThatIsOver() {
        TankDrill typed = PLAYED.drill().tanks().stream()
                .filter(tank -> tank.typed().isPresent())
                .findFirst()
                .orElseThrow();
        double over = typed.typed().orElseThrow();
        assertThat(OutagePlayed.state(typed, Case.LIKELY, over - 1)).isEqualTo(OxygenState.FINE);
        assertThat(OutagePlayed.state(typed, Case.LIKELY, over + 1)).isEqualTo(OxygenState.DANGER);
    }

    @Test
    void theOrderOfTroubleHasEveryTankOnce() {
        List<TankDrill> order = PLAYED.inOrder();
        assertThat(order).containsExactlyInAnyOrderElementsOf(PLAYED.drill().tanks());
    }

    /** In print there is black alone: the shapes themselves must differ. */
    @Test
    void theSignsDifferWithoutColour() {
        Set<String> seen = new HashSet<>();
        for (OxygenState state : OxygenState.values()) {
            seen.add(pixels(sign(state, LOOK.with(Palette.PRINT))));
        }
        assertThat(seen).hasSize(OxygenState.values().length);
    }

    private static BufferedImage sign(OxygenState state, Look look) {
        return Pictures.of(
                (area, as, g) -> OxygenSign.sample(state, new Rectangle2D.Double(4, 4, 24, 16), as, g), 32, 24, look);
    }

    private static String pixels(BufferedImage image) {
        StringBuilder all = new StringBuilder();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                all.append(new Color(image.getRGB(x, y)).getRed() < 128 ? '#' : '.');
            }
        }
        return all.toString();
    }

    /** A strip 200 pixels long is a gauge: it is filled as far as its tank's share of the fullest. */
    @ParameterizedTest
    @EnumSource(Case.class)
    void aStripIsFilledAsFarAsItsOxygen(Case how) {
        TankDrill tank = PLAYED.drill().first().orElseThrow();
        OxygenLaid laid = new OxygenLaid(PLAYED, how, 0, true);
        BufferedImage image = new BufferedImage(200, 20, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        new OxygenPainter(laid, Ink.flat(LOOK, g)).strip(tank.tank(), new Rectangle2D.Double(0, 0, 200, 20));
        int filled = 0;
        for (int x = 0; x < 200; x++) {
            filled += new Color(image.getRGB(x, 10)).equals(LOOK.palette().waterFill()) ? 1 : 0;
        }
        double level = OutagePlayed.levelGPerM3(tank, how, 0).orElseThrow();
        double fullest = PLAYED.drill().tanks().stream()
                .flatMap(each -> each.courses().stream())
                .mapToDouble(both ->
                        Math.max(both.likely().startGPerM3(), both.cautious().startGPerM3()))
                .max()
                .orElseThrow();
        assertThat(filled).isCloseTo((int) Math.round(200 * level / fullest), within(2));
    }

    /** The line at worst of the tank that is found lies where one points. */
    @Test
    void aTankIsFoundWhereItsLineIs() {
        Optional<TankDrill> found = Optional.empty();
        for (int y = 0; y < 400 && found.isEmpty(); y++) {
            found = OutagePicture.tankAt(PLAYED, AREA, LOOK, 400, y);
        }
        assertThat(found).isPresent();
        assertThat(OutagePicture.tankAt(PLAYED, AREA, LOOK, 400, 2)).isEmpty(); // among the lanes
    }
}
