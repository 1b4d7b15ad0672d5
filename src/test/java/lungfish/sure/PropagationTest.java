package lungfish.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.room.Room;
import lungfish.room.Spread;
import org.hipparchus.stat.descriptive.moment.Mean;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;

/** Sampled rooms, against errors propagated by hand. */
final class PropagationTest {
    private static final int SAMPLES = 20_000;

    /** Three standard errors of a quantile of 20 000 normal samples, in widths: 3 · √(0.09 / 20 000) / 0.1755 / 1.2816. */
    private static final double QUANTILE_WIDTHS = 0.029;

    private static final double SAMPLED_SD_PERCENT = 2;
    private static final double WATER_24_C_KG_PER_M3 = 997.3;
    private static final double GRAVITY = 9.80665;

    /** The one outlet needs ρ g d and what does not change: ± 20 mm of water are ± 195.6 Pa. */
    @Test
    void oneOutletsPressureIsAsWideAsTheWaterOverIt() {
        Room room = Doubtful.room(1, Doubtful.only(Spread.DEPTH, 0.02));
        double said = Doubtful.basis(room).needed().pressurePa();
        double halfPa = WATER_24_C_KG_PER_M3 * GRAVITY * 0.02;

        Band band = Band.of(Doubtful.neededPa(room, SAMPLES), said);

        assertThat(band.lowSi()).isCloseTo(said - halfPa, within(QUANTILE_WIDTHS * halfPa));
        assertThat(band.medianSi()).isCloseTo(said, within(QUANTILE_WIDTHS * halfPa));
        assertThat(band.highSi()).isCloseTo(said + halfPa, within(QUANTILE_WIDTHS * halfPa));
    }

    /**
     * Independent errors add by their squares. Due, the sponge takes 0.1 + 0.05 · 2 + 0.01 · 2² = 0.24 kPa at 2 L/min; 10 %
     * of that is lognormal with a logarithm of ln 1.1 / 1.2816 = 0.07437 and so off by 0.0746 of 240 Pa, 17.9 Pa; half a
     * centimetre of water by 48.9 / 1.2816 = 38.2 Pa. Together √(17.9² + 38.2²) = 42.2 Pa.
     */
    @Test
    void twoIndependentErrorsAddByTheirSquares() {
        Room room =
                Doubtful.room(1, Doubtful.only(Spread.DEPTH, 0.005).with(Spread.RESISTANCE, OptionalDouble.of(0.1)));

        double sd = new StandardDeviation().evaluate(Doubtful.neededPa(room, SAMPLES));

        assertThat(sd).isCloseTo(42.2, withinPercentage(SAMPLED_SD_PERCENT));
    }

    /** Fouling adds 0.24 - (0.04 + 0.03 · 2 + 0.006 · 2²) = 0.116 kPa; with 10 % off, 0.0746 · 116 = 8.65 Pa. */
    @Test
    void onlyWhatFoulingAddsIsOffWithFouling() {
        Room room = Doubtful.room(1, Doubtful.only(Spread.FOULING, 0.1));

        double sd = new StandardDeviation().evaluate(Doubtful.neededPa(room, SAMPLES));

        assertThat(sd).isCloseTo(8.65, withinPercentage(SAMPLED_SD_PERCENT));
    }

    /** Of eight outlets, half the variance is theirs together and half their own: σ √(1/2 + 1/16) of the sum. */
    @Test
    void halfOfTheVarianceOfAirEvensOutAmongOutletsOfAClass() {
        Room room = Doubtful.room(8, Doubtful.only(Spread.FLOW, 0.02));
        double sigma = Math.log(1.02) / 1.2815515655;

        double[] sums = Doubtful.networks(room, SAMPLES).stream()
                .mapToDouble(PropagationTest::asked)
                .toArray();

        assertThat(new Mean().evaluate(sums)).isCloseTo(8 * Doubtful.TARGET_M3_PER_S, withinPercentage(0.1));
        assertThat(new StandardDeviation().evaluate(sums) / (8 * Doubtful.TARGET_M3_PER_S))
                .isCloseTo(sigma * Math.sqrt(0.5 + 1.0 / 16), withinPercentage(SAMPLED_SD_PERCENT));
    }

    private static double asked(Network network) {
        return network.drops().stream()
                .map(Drop::targetM3PerS)
                .mapToDouble(target -> target.orElse(0))
                .sum();
    }

    /** ± 0.2 m about 0.25 m, in half a metre of water: where a ruler would say more, the release lies on the bottom. */
    @Test
    void noReleaseHangsBelowTheBottomOrAboveTheWater() {
        Room room = Doubtful.room(1, Doubtful.only(Spread.DEPTH, 0.2));

        double[] depths = Doubtful.networks(room, SAMPLES).stream()
                .mapToDouble(network -> network.drops().get(0).depthM())
                .toArray();

        double inNetworkWater = WATER_24_C_KG_PER_M3
                / Doubtful.network(Doubtful.basis(room)).conditions().waterDensityKgPerM3();
        assertThat(Arrays.stream(depths).min()).hasValue(0);
        assertThat(Arrays.stream(depths).max().orElse(0)).isCloseTo(0.5 * inNetworkWater, within(1e-4));
    }

    @Test
    void whereNothingIsOffTheNetworkIsThatOfTheRoom() {
        Room room = Doubtful.room(3, Doubtful.exact());

        assertThat(Doubtful.networks(room, 3))
                .isEqualTo(java.util.Collections.nCopies(3, Doubtful.network(Doubtful.basis(room))));
    }

    @Test
    void boreAndRoughnessChangePipeAndAirlineAndNothingElse() {
        Room room = Doubtful.room(1, Doubtful.only(Spread.BORE, 0.02).with(Spread.ROUGHNESS, OptionalDouble.of(0.5)));
        Network said = Doubtful.network(Doubtful.basis(room));

        List<Network> varied = Doubtful.networks(room, 10);

        assertThat(varied).allSatisfy(network -> {
            assertThat(network.pipes().get(0).boreM())
                    .isNotEqualTo(said.pipes().get(0).boreM())
                    .isCloseTo(said.pipes().get(0).boreM(), withinPercentage(3.62)); // 2 · 1.809 %
            assertThat(network.drops().get(0).airline())
                    .isNotEqualTo(said.drops().get(0).airline());
            assertThat(network.drops().get(0).device())
                    .isEqualTo(said.drops().get(0).device());
            assertThat(network.drops().get(0).depthM())
                    .isEqualTo(said.drops().get(0).depthM());
        });
    }
}
