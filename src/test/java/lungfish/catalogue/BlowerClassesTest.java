package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lungfish.catalogue.BlowerClass.CurvePoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class BlowerClassesTest {
    private static final double M3_PER_S_PER_L_MIN = 1e-3 / 60;

    static Stream<BlowerClass> blowers() {
        return CatalogueFiles.load().blowers().stream();
    }

    @Test
    void theCatalogueHoldsAtLeast25ClassesFrom2To400LitresAMinute() {
        List<Double> rated = blowers()
                .filter(each -> each.frequencyHz().orElse(0) == 50)
                .map(each -> each.ratedM3PerS() / M3_PER_S_PER_L_MIN)
                .map(Math::rint)
                .toList();
        assertThat(rated)
                .hasSizeGreaterThanOrEqualTo(25)
                .contains(2.0, 400.0)
                .allMatch(flow -> flow >= 2 && flow <= 400);
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void aClassIsNamedByItsFlowAtRatedPressure(BlowerClass blower) {
        long litresAMinute = Math.round(blower.ratedM3PerS() / M3_PER_S_PER_L_MIN);
        assertThat(blower.id()).matches(".*-" + litresAMinute + "(-120v)?");
        assertThat(blower.points())
                .filteredOn(point -> point.gaugePa() == blower.ratedPa())
                .singleElement()
                .extracting(CurvePoint::freeM3PerS)
                .isEqualTo(blower.ratedM3PerS());
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void curvesBeginOpenAndFallOverFiveToSevenPoints(BlowerClass blower) {
        List<CurvePoint> points = blower.points();
        assertThat(points).hasSizeBetween(5, 7);
        assertThat(points.get(0).gaugePa()).isZero();
        assertThat(points).isSortedAccordingTo((a, b) -> Double.compare(b.freeM3PerS(), a.freeM3PerS()));
        assertThat(points).isSortedAccordingTo((a, b) -> Double.compare(a.gaugePa(), b.gaugePa()));
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void theContinuousPressureLiesOnTheKnownCurve(BlowerClass blower) {
        double lastPa = blower.points().get(blower.points().size() - 1).gaugePa();
        assertThat(blower.continuousPa()).isBetween(blower.ratedPa(), lastPa);
    }

    @ParameterizedTest
    @MethodSource("blowers")
    void everyClassIsMadeForOneMains(BlowerClass blower) {
        String mains = Math.round(blower.voltageV().orElseThrow()) + " V "
                + Math.round(blower.frequencyHz().orElseThrow()) + " Hz";
        assertThat(mains).isIn("230 V 50 Hz", "120 V 60 Hz");
        assertThat(blower.name()).endsWith(mains);
    }

    /** Common practice, no source; practice gives no distance, 1 m is taken. */
    @ParameterizedTest
    @MethodSource("blowers")
    void levelsAreThoseOfTheTrade(BlowerClass blower) {
        assertThat(blower.level().orElseThrow().distanceM()).isEqualTo(1);
        if (blower.kind() == BlowerClass.Kind.SMALL_PISTON) {
            assertThat(blower.level().orElseThrow().dba()).isBetween(70.0, 75.0);
        }
        if (blower.id().matches("linear-piston-(60|80|100|120)(-120v)?")) {
            assertThat(blower.level().orElseThrow().dba()).isBetween(40.0, 45.0);
        }
    }
}
