package lungfish.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The line through what the blowers gave, and the day on which it falls below what the room needs. */
final class TrendTest {
    private static final LocalDate START = LocalDate.of(2026, 1, 1);
    private static final double ROUNDING = 1e-12;

    private static Share share(int day, double share, double error) {
        return new Share(START.plusDays(day), share, error);
    }

    private static Optional<Trend> trend(Share... shares) {
        return Trend.through(List.of(shares));
    }

    private static Trend falling() {
        return trend(share(0, 1.00, 0.01), share(100, 0.95, 0.01), share(200, 0.90, 0.01))
                .orElseThrow();
    }

    /**
     * Three points on a line that falls by 0.05 in 100 days, each off by 0.01. Mean day 100; the squares of the days about it add up
     * to 20 000: variance of the slope 1e-4 / 20 000 = 5e-9, of the level 1e-4 / 3.
     */
    @Test
    void threePointsOnALineGiveThatLineAndTheErrorOfTheirs() {
        Trend trend = falling();

        assertThat(trend.mean()).isEqualTo(100, within(ROUNDING * 100));
        assertThat(trend.level()).isEqualTo(0.95, within(ROUNDING));
        assertThat(trend.slope()).isEqualTo(-0.0005, within(ROUNDING));
        assertThat(trend.slopeVariance()).isEqualTo(5e-9, within(ROUNDING));
        assertThat(trend.levelVariance()).isEqualTo(1e-4 / 3, within(ROUNDING));
    }

    /**
     * The line is at 0.8 on day 400. u days after day 100 its band is 1.2816 × 0.01 × √(1/3 + u²/20 000) wide on each side. Lower
     * edge: u = 251 leaves 0.8245 − 0.0239 > 0.8, u = 252 0.8240 − 0.024006 < 0.8. Upper edge: u = 368 leaves 0.7660 + 0.03416 >
     * 0.8, u = 369 0.7655 + 0.03425 < 0.8.
     */
    @Test
    void itFallsBelowTheNeedBetweenTheEdgesOfItsBand() {
        Forecast forecast = Forecast.of(Optional.of(falling()), 0.8);

        assertThat(forecast.kind()).isEqualTo(Forecast.Kind.FALLS);
        assertThat(forecast.likely()).contains(START.plusDays(400));
        assertThat(forecast.earliest()).contains(START.plusDays(352));
        assertThat(forecast.latest()).contains(START.plusDays(469));
    }

    /**
     * By hand: weights 1, 4, 4 (errors 1, 1/2, 1/2 of 0.02) at days 0, 50, 100 with 1, 0.9, 0.9. Mean day (4 × 50 + 4 × 100) / 9 =
     * 66.67, mean 8.2 / 9 = 0.91111. Squares: 4444.4 + 4 × 277.8 + 4 × 1111.1 = 10 000; products −66.67 × 1 + 4 × (−16.67) × 0.9 +
     * 4 × 33.33 × 0.9 = −6.667: slope −6.667e-4.
     */
    @Test
    void aReadingWithHalfTheErrorCountsFourTimes() {
        Trend trend = trend(share(0, 1, 0.02), share(50, 0.9, 0.01), share(100, 0.9, 0.01))
                .orElseThrow();

        assertThat(trend.mean()).isEqualTo(200 / 3.0, within(1e-9));
        assertThat(trend.level()).isEqualTo(8.2 / 9, within(1e-9));
        assertThat(trend.slope()).isEqualTo(-6.667e-4, within(1e-6));
    }

    @Test
    void fewReadingsOrAShortTimeTellNothing() {
        assertThat(trend(share(0, 1, 0.01))).isEmpty();
        assertThat(trend(share(0, 1, 0.01), share(59, 0.9, 0.01))).isEmpty();
        assertThat(trend(share(0, 1, 0.01), share(60, 0.9, 0.01))).isPresent();
        assertThat(Forecast.of(Optional.empty(), 0.8).kind()).isEqualTo(Forecast.Kind.TOO_EARLY);
    }

    @Test
    void aLineThatRisesHoldsAndOneThatLiesBelowIsBelow() {
        Optional<Trend> rising = trend(share(0, 0.9, 0.001), share(100, 0.95, 0.001));

        assertThat(Forecast.of(rising, 0.8).kind()).isEqualTo(Forecast.Kind.HOLDS);
        assertThat(Forecast.of(rising, 0.96).kind()).isEqualTo(Forecast.Kind.BELOW);
    }
}
