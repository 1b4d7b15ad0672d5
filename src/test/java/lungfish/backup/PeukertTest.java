package lungfish.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class PeukertTest {
    private static final double HOUR_S = 3600;
    private static final double CHARGE_C = 100 * HOUR_S;
    private static final double RATED_S = 20 * HOUR_S;

    @Test
    void atItsRatedCurrentABatteryLastsItsRatedTime() {
        assertThat(Peukert.timeS(CHARGE_C, RATED_S, 5, 1.2)).isCloseTo(RATED_S, within(1e-6));
    }

    /** An electrical-engineering page prints 14.5 h here, by C/I^k without the rated time. */
    @Test
    void theFormWithoutTheRatedTimeIsNotUsed() {
        assertThat(Peukert.timeS(CHARGE_C, RATED_S, 5, 1.2) / HOUR_S).isGreaterThan(19.9);
    }

    @Test
    void whereCapacityDoesNotDependOnCurrentTimeIsChargeOverCurrent() {
        assertThat(Peukert.timeS(CHARGE_C, RATED_S, 25, 1)).isCloseTo(4 * HOUR_S, within(1e-6));
        assertThat(Peukert.share(4 * HOUR_S, RATED_S, 1)).isEqualTo(1);
    }

    /** By hand: 100 Ah at 10 A, k 1.2, last 8.7055 h (the published example), so 87.055 of the 100 Ah come out. */
    @Test
    void theShareIsWhatComesOutOfTheRatedCharge() {
        assertThat(Peukert.share(10 * HOUR_S, RATED_S, 1.2)).isCloseTo(0.87055, within(5e-6));
    }

    @Test
    void aGentleLoadIsNotCreditedWithMoreThanTheRating() {
        assertThat(Peukert.share(100 * HOUR_S, RATED_S, 1.2)).isEqualTo(1);
    }
}
