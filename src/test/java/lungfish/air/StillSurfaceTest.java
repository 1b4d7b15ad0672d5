package lungfish.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class StillSurfaceTest {
    private static final double SMALL_STEPS_PERCENT = 0.5;

    @Test
    void aSurfaceThatBringsEnoughNeverLetsTheWaterFall() {
        // 54 L, 30 mg/h; at the limit the surface brings 0.18 m² · 0.0251 m/h · 6.1 g/m³ = 27.6 mg/h at 2 mg/L: not
        // enough;
        // twice the surface is
        double exchange = 0.18 * 0.0251 / 3600.0;
        double use = 0.030 / 3600.0;
        assertThat(StillSurface.secondsUntil(exchange, 0.054, use, 8.11, 7.5, 2.0))
                .isPresent();
        assertThat(StillSurface.secondsUntil(2.0 * exchange, 0.054, use, 8.11, 7.5, 2.0))
                .isEmpty();
    }

    @Test
    void waterAlreadyAtTheLimitHasNoTimeLeft() {
        assertThat(StillSurface.secondsUntil(0.0, 0.054, 1e-5, 8.11, 2.0, 2.0)).hasValue(0.0);
    }

    @Property
    void theClosedFormIsTheSlowSum(
            @ForAll @DoubleRange(min = 0.0, max = 3.0) double cmPerH,
            @ForAll @DoubleRange(min = 10.0, max = 500.0) double mgPerH) {
        double exchange = 0.2 * cmPerH / 100.0 / 3600.0;
        double use = mgPerH / 1000.0 / 3600.0;
        Assume.that(use > 1.05 * exchange * (8.26 - 2.0));
        double closed =
                StillSurface.secondsUntil(exchange, 0.06, use, 8.26, 8.0, 2.0).orElseThrow();
        assertThat(summed(exchange, use)).isCloseTo(closed, withinPercentage(SMALL_STEPS_PERCENT));
    }

    /** Small steps in oxygen: each takes its fall over the rate of fall at its middle. */
    private static double summed(double exchange, double use) {
        double seconds = 0.0;
        int steps = 2000;
        double step = (8.0 - 2.0) / steps;
        for (int i = 0; i < steps; i++) {
            double oxygen = 8.0 - (i + 0.5) * step;
            seconds += step * 0.06 / (use - exchange * (8.26 - oxygen));
        }
        return seconds;
    }
}
