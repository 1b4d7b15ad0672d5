package lungfish.standing;

import static lungfish.standing.Carried.mainsOffSPerYear;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class CarriedTest {
    private static final double HOUR_S = 3600;
    private static final double ROUNDING = 1e-9;

    @Test
    void withoutABatteryTheMainsTakeFailuresTimesTheirLength() {
        assertThat(hours(2, 3)).isCloseTo(6, within(ROUNDING));
    }

    /** By hand: 6 h · e^(−8/3) = 6 · 0.069483 = 0.41690 h. */
    @Test
    void aBatteryCarriesAllButTheLongOnes() {
        assertThat(hours(2, 3, new Carried(0, 8 * HOUR_S))).isCloseTo(0.41690, within(5e-6));
    }

    /** By hand: 6 h · (1 − e^(−1/3) + e^(−2) ) with the fuel from hour 1 to hour 6 = 6 · (1 − 0.716531 + 0.135335) = 2.51282 h. */
    @Test
    void aGeneratorHelpsFromWhenItRunsUntilItsFuelIsGone() {
        assertThat(hours(2, 3, new Carried(HOUR_S, 6 * HOUR_S))).isCloseTo(2.51282, within(5e-6));
    }

    @Test
    void whatTwoCarryAtOnceCountsOnce() {
        Carried battery = new Carried(0, 4 * HOUR_S);
        assertThat(hours(2, 3, new Carried(HOUR_S, 6 * HOUR_S), battery, new Carried(2 * HOUR_S, 3 * HOUR_S)))
                .isCloseTo(hours(2, 3, new Carried(0, 6 * HOUR_S)), within(ROUNDING));
    }

    /** If all failures took their mean, a battery that holds longer would leave none: the long ones are counted here. */
    @Property
    void neverLessThanIfEveryFailureTookItsMean(
            @ForAll @DoubleRange(min = 0, max = 12) double perYear,
            @ForAll @DoubleRange(min = 0.1, max = 48) double meanH,
            @ForAll @DoubleRange(min = 0, max = 72) double batteryH) {
        double allAlike = perYear * Math.max(0, meanH - batteryH);
        assertThat(hours(perYear, meanH, new Carried(0, batteryH * HOUR_S)))
                .isGreaterThanOrEqualTo(allAlike - ROUNDING);
    }

    @Test
    void aStretchDoesNotRunBackwards() {
        assertThatThrownBy(() -> new Carried(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Carried(-1, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static double hours(double perYear, double meanH, Carried... carried) {
        return mainsOffSPerYear(perYear, meanH * HOUR_S, List.of(carried)) / HOUR_S;
    }
}
