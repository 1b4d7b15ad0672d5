package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

final class DropsTest {
    private static final Conditions USUAL = Conditions.usual();

    /** What is left when pressures of 1e5 Pa are subtracted in doubles, with room. */
    private static final double ROUNDING_PA = 1e-8;

    private static Drop drop(Optional<Tubing> airline, Optional<Check> check, Optional<Device> device, double depthM) {
        return new Drop("d", "n", 2e11, 1e9, airline, check, device, depthM, OptionalDouble.of(1e-4));
    }

    @Test
    void itOpensAboveWaterBubblingAndOpeningPressure() {
        Drop drop = drop(
                Optional.empty(), Optional.of(new Check(300.0, 0.0)), Optional.of(new Device(1200.0, 0.0, 0.0)), 0.4);
        // 998.2 · 9.80665 · 0.4 = 3915.6; + 1200 + 300
        assertThat(Drops.opensAtGaugePa(USUAL, drop)).isCloseTo(5415.599, within(0.001));
        assertThat(Drops.flowAt(USUAL, drop, 5415.0)).isZero();
        assertThat(Drops.flowAt(USUAL, drop, 5416.0)).isPositive();
    }

    @Test
    void deviceAndCheckAreTheirPolynomials() {
        Drop drop = drop(
                Optional.empty(), Optional.of(new Check(300.0, 5e6)), Optional.of(new Device(1200.0, 8e6, 4e10)), 0.0);
        DropNeed need = Drops.needed(USUAL, drop, 1e-4);
        assertThat(need.devicePa()).isCloseTo(1200.0 + 800.0 + 400.0, within(ROUNDING_PA));
        assertThat(need.checkPa()).isCloseTo(300.0 + 500.0, within(ROUNDING_PA));
        assertThat(need.waterPa()).isZero();
        assertThat(need.airlinePa()).isCloseTo(0.0, within(ROUNDING_PA));
    }

    @Test
    void theValveLosesAtTheMeanDensity() {
        Drop drop = drop(Optional.empty(), Optional.empty(), Optional.empty(), 0.3);
        DropNeed need = Drops.needed(USUAL, drop, 2e11, 1e-4);
        // density at the mean of the pressures before and behind it, as the law is written
        double behindPa = USUAL.ambientPa() + need.waterPa();
        double meanPa = behindPa + need.valvePa() / 2.0;
        double density = meanPa / (287.05 * 293.15);
        double flow = 1e-4 * USUAL.airDensityKgPerM3();
        assertThat(need.valvePa()).isCloseTo(2e11 * flow * flow / density, within(ROUNDING_PA));
    }

    @Test
    void aSlowAirlineFollowsHagenPoiseuille() {
        Tubing airline = new Tubing(1.5, 0.004, 0.0, 0.0);
        Drop drop = drop(Optional.of(airline), Optional.empty(), Optional.empty(), 0.0);
        DropNeed need = Drops.needed(USUAL, drop, 1e-5);
        // 128 µ L Q / (π D⁴) with Q at the mean pressure, Re 211; µ = 1.8134e-5 Pa s (Sutherland at 20 °C)
        double viscosity = 1.458e-6 * Math.pow(293.15, 1.5) / (293.15 + 110.4);
        double volume = 1e-5 * USUAL.ambientPa() / (USUAL.ambientPa() + need.airlinePa() / 2.0);
        double loss = 128.0 * viscosity * 1.5 * volume / (Math.PI * Math.pow(0.004, 4));
        assertThat(need.airlinePa()).isCloseTo(loss, within(ROUNDING_PA));
    }

    @Property
    void itsTermsAddUpToTheInverseOfItsFlow(
            @ForAll @LongRange(min = 0, max = 100_000) long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        for (Drop drop : RandomNetworks.roomLike(seed).drops()) {
            double tapPa = Drops.opensAtGaugePa(USUAL, drop) + 20_000.0 * share;
            double flow = Drops.flowAt(USUAL, drop, tapPa);
            double needPa = Drops.needed(USUAL, drop, drop.valveK(), flow).totalPa();
            assertThat(needPa).isCloseTo(tapPa, within(ROUNDING_PA));
        }
    }

    @Property
    void everyDropIsMonotone(
            @ForAll @LongRange(min = 0, max = 100_000) long seed,
            @ForAll @DoubleRange(min = 0, max = 40_000) double first,
            @ForAll @DoubleRange(min = 0, max = 40_000) double second) {
        for (Drop drop : RandomNetworks.nasty(seed).drops()) {
            if (Drops.flowAt(USUAL, drop, 40_000.0) < 1.0) {
                double less = Drops.flowAt(USUAL, drop, Math.min(first, second));
                double more = Drops.flowAt(USUAL, drop, Math.max(first, second));
                assertThat(more).isGreaterThanOrEqualTo(less * (1.0 - 1e-14));
            }
        }
    }

    @Test
    void theAccelerationTermCostsAFastAirlineMore() {
        Conditions withLog = new Conditions(101_325, 293.15, 293.15, 998.2, 9.80665, true, 0.05);
        Drop drop = drop(Optional.of(new Tubing(1.5, 0.004, 0.0, 0.0)), Optional.empty(), Optional.empty(), 0.0);
        double plain = Drops.needed(USUAL, drop, 5e-4).airlinePa();
        double more = Drops.needed(withLog, drop, 5e-4).airlinePa();
        // the bracket gains 2 ln(p_up/p_down): by hand at the plain loss, its own effect on the ratio left out
        double flow = 5e-4 * USUAL.airDensityKgPerM3();
        double area = Math.PI / 4.0 * 0.004 * 0.004;
        double unit = flow * flow * 287.05 * 293.15 / (area * area);
        double added = unit * 2.0 * Math.log1p(plain / 101_325) / (2.0 * (101_325 + plain));
        assertThat(more - plain).isCloseTo(added, within(0.03 * added));
    }
}
