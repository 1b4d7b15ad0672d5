package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import lungfish.air.Atmosphere;
import lungfish.air.Compression;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.network.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The catalogue's machines against what air and the trade allow. */
final class BlowerPhysicsTest {
    /** No small machine turns more of its watts into compressed air: motor and valves or vanes take the rest. */
    private static final double BEST_WIRE_TO_AIR = 0.7;

    /** The file prints a tenth of a per cent; its exponent was 1/3.5, the formula's is 0.283. */
    private static final double PRINTED_SHARE = 0.002;

    private static final double M3_PER_S_PER_L_MIN = 1e-3 / 60;

    static Stream<BlowerClass> blowers() {
        return CatalogueFiles.load().blowers().stream();
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void noMachinePutsMoreIntoTheAirThanItDraws(BlowerClass blower) {
        assertThat(blower.points()).allMatch(point -> wireToAir(point) < BEST_WIRE_TO_AIR);
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void theEfficiencyThatIsPrintedIsThatOfTheRatedPoint(BlowerClass blower) {
        CurvePoint rated = blower.points().stream()
                .filter(point -> point.gaugePa() == blower.ratedPa())
                .findFirst()
                .orElseThrow();
        assertThat(blower.efficiency()).isCloseTo(wireToAir(rated), within(PRINTED_SHARE));
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void largerClassesOfAKindGiveMoreEverywhereAndDrawMore(BlowerClass blower) {
        CatalogueFiles.load().blowers().stream()
                .filter(other -> other.kind() == blower.kind())
                .filter(other -> other.frequencyHz().equals(blower.frequencyHz()))
                .filter(other -> other.ratedM3PerS() > blower.ratedM3PerS())
                .forEach(larger -> {
                    assertThat(curve(larger).flowAt(blower.ratedPa())).isGreaterThan(blower.ratedM3PerS());
                    assertThat(larger.points().get(0).watts())
                            .isGreaterThan(blower.points().get(0).watts());
                    assertThat(larger.price()).isGreaterThan(blower.price());
                });
    }

    /**
     * Common practice, no source: about 1 L/min an airline; an 80 class carries 60 to 80 airlines at rack depths, a 60
     * class about 50. By hand, what an airline needs: 0.45 m of water 4.41 kPa, disc check valve 0.62, sponge due for
     * cleaning 0.16, 1.5 m of 4 mm tubing 0.07, the main 0.5, to spare 0.5: 6.26 kPa. The blower tired, a quarter more
     * air in reserve.
     */
    @ParameterizedTest
    @CsvSource({
        "linear-piston-80, 60, 80",
        "linear-piston-80-120v, 60, 80",
        "linear-piston-60, 47, 55",
        "linear-piston-60-120v, 47, 55"
    })
    void aLinearPistonCarriesTheAirlinesThatTheTradeExpects(String id, double least, double most) {
        BlowerClass blower = CatalogueFiles.load().blower(id).orElseThrow();
        double tired = blower.tiredShare() * curve(blower).flowAt(6260) / M3_PER_S_PER_L_MIN;
        assertThat(tired / 1.25).isBetween(least, most);
    }

    @Test
    void aSideChannelMachineKeepsItsLeastFlowUpToItsRating() {
        blowers().filter(each -> each.kind() == BlowerClass.Kind.SIDE_CHANNEL).forEach(each -> assertThat(
                        curve(each).flowAt(each.continuousPa()))
                .isGreaterThan(each.leastShare() * each.openM3PerS()));
    }

    private static double wireToAir(CurvePoint point) {
        double sea = Atmosphere.SEA_LEVEL_PA;
        return Compression.powerW(sea, sea + point.gaugePa(), point.freeM3PerS(), 1) / point.watts();
    }

    private static Curve curve(BlowerClass blower) {
        return Curve.of(blower.points().stream()
                .map(point -> new Curve.Point(point.gaugePa(), point.freeM3PerS()))
                .toList());
    }
}
