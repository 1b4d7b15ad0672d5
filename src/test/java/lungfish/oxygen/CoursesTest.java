package lungfish.oxygen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A tank followed over time. */
final class CoursesTest {
    private static final double HOUR_S = 3600;
    private static final double M_PER_S_OF_M_PER_H = 1 / HOUR_S;

    /** The tank of the published rows tcrit-*: 54 L, 0.18 m², 30 mg/h, from 7.5 mg/L. */
    private static Balance published(double kMPerH) {
        return new Balance(
                0.054,
                0.18,
                8.11364,
                8.11364,
                0.030 / HOUR_S,
                0,
                1,
                kMPerH * M_PER_S_OF_M_PER_H,
                5 * M_PER_S_OF_M_PER_H);
    }

    private static double hoursToTwo(double kMPerH) {
        Course course = Courses.of(published(kMPerH), 7.5, List.of(new Phase(0, Breath.NONE, true)), 48 * HOUR_S);
        return course.downToS(2).orElseThrow() / HOUR_S;
    }

    /** Closed form of the first-order balance: 9.9 h without exchange, 10.25 h at 0.168 cm/h, 19.49 h at 2.07 cm/h (tcrit-*). */
    @Test
    void theIntegratorGivesTheClosedFormWhereTheBalanceIsLinear() {
        assertThat(hoursToTwo(0)).isCloseTo(5.5 * 54 / 30, offset(1e-4));
        assertThat(hoursToTwo(0.00168)).isCloseTo(10.25, withPercentage(0.05));
        assertThat(hoursToTwo(0.0207)).isCloseTo(19.49, withPercentage(0.05));
    }

    @Property(tries = 200)
    void theIntegratorMeetsTheClosedFormAboveAndBelowTheCriticalLevel(
            @ForAll @DoubleRange(min = 0.01, max = 2) double litresAcross,
            @ForAll @DoubleRange(min = 0, max = 8) double brings,
            @ForAll @DoubleRange(min = 1, max = 400) double mgPerHour,
            @ForAll @DoubleRange(min = 0.2, max = 6) double critical,
            @ForAll @DoubleRange(min = 0.1, max = 7) double limit) {
        Balance balance =
                new Balance(0.1 * litresAcross, 0.2, 8.2, 8, mgPerHour * 1e-3 / HOUR_S, 0, critical, 3e-6, 1e-5);
        Breath breath = new Breath(brings * 1e-6, brings > 0);
        Course course = Courses.of(balance, 7.5, List.of(new Phase(0, breath, true)), 500 * HOUR_S);

        double closed = balance.downToS(7.5, limit, breath).orElse(Double.POSITIVE_INFINITY);
        double followed = course.downToS(limit).orElse(Double.POSITIVE_INFINITY);

        // near a level that is only just reached, or not, a millionth of a mg/L is a long time; else within half a
        // thousandth
        if (Math.abs(balance.steadyGPerM3(breath) - limit) > 0.01 && closed < 499 * HOUR_S) {
            assertThat(followed).isCloseTo(closed, offset(5e-4 * closed + 1));
        }
    }

    @Property(tries = 200)
    void whatCameLessWhatWasUsedIsTheChange(
            @ForAll @DoubleRange(min = 0, max = 9) double start,
            @ForAll @DoubleRange(min = 0, max = 8) double brings,
            @ForAll @DoubleRange(min = 1, max = 400) double mgPerHour) {
        Balance balance = new Balance(0.08, 0.2, 8.2, 8, mgPerHour * 1e-3 / HOUR_S, 1e-6, 1.4, 3e-6, 1e-5);
        List<Phase> phases = List.of(
                new Phase(0, Breath.NONE, true),
                new Phase(5 * HOUR_S, new Breath(brings * 1e-6, true), true),
                new Phase(9 * HOUR_S, Breath.NONE, false));

        Course course = Courses.of(balance, start, phases, 48 * HOUR_S);

        assertThat(course.budget().change()).isCloseTo(course.endGPerM3() - start, offset(1e-11));
    }

    /** What the surface brings stops where the water holds what the room's air gives it, whoever lives there or not. */
    @Property(tries = 200)
    void withoutAirNoTankComesAboveSaturation(
            @ForAll @DoubleRange(min = 0, max = 8.2) double start,
            @ForAll @DoubleRange(min = 0, max = 400) double mgPerHour,
            @ForAll @DoubleRange(min = 0, max = 50) double micrometresPerS,
            @ForAll boolean stirred) {
        double saturation = 8.2;
        Balance balance =
                new Balance(0.08, 0.2, saturation, 8, mgPerHour * 1e-3 / HOUR_S, 0, 1.4, micrometresPerS * 1e-6, 5e-5);

        Course course = Courses.of(balance, start, List.of(new Phase(0, new Breath(0, stirred), true)), 48 * HOUR_S);

        for (int hour = 0; hour <= 48; hour++) {
            assertThat(course.atS(hour * HOUR_S)).isLessThanOrEqualTo(saturation + 1e-4); // the integrator's own error
        }
    }

    /** To a ten-thousandth of a mg/L: a tank that is stirred so hard holds the integrator at its longest stable step. */
    @Test
    void aTankInBalanceStaysThere() {
        Balance balance = published(0.0207);
        Breath breath = new Breath(2e-6, true);
        double steady = balance.steadyGPerM3(breath);

        Course course = Courses.of(balance, steady, List.of(new Phase(0, breath, true)), 48 * HOUR_S);

        assertThat(balance.rate(steady, breath)).isCloseTo(0, offset(1e-18));
        assertThat(course.endGPerM3()).isCloseTo(steady, offset(1e-4));
        assertThat(course.lowestGPerM3()).isCloseTo(steady, offset(1e-4));
    }

    /** (5 m/h · 0.18 m² = 0.9 m³/h) · 8.11364 brings 7.302 g/h, less 0.03 g/h, over 0.9: 8.0803 mg/L. */
    @Test
    void theBalanceIsWhereAsMuchComesAsIsUsed() {
        assertThat(published(0).steadyGPerM3(new Breath(0, true))).isCloseTo(8.0803, offset(1e-4));
    }

    @Test
    void withoutAnyExchangeAllIsUsedUp() {
        assertThat(published(0).steadyGPerM3(Breath.NONE)).isZero();
    }

    /** Between the steps a cubic is drawn; a straight fall, 30 mg/h in 54 L, is told to the last digit. */
    @Test
    void anyMomentCanBeAsked() {
        Course course = Courses.of(published(0), 7.5, List.of(new Phase(0, Breath.NONE, true)), 9 * HOUR_S);

        assertThat(course.atS(0)).isEqualTo(7.5);
        assertThat(course.atS(4.5 * HOUR_S)).isCloseTo(7.5 - 4.5 * 30 / 54, offset(1e-9));
        assertThat(course.atS(99 * HOUR_S)).isCloseTo(7.5 - 9 * 30.0 / 54, offset(1e-9));
    }

    @Test
    void aTankThatBeginsBelowALevelIsThereAtOnce() {
        Course course = Courses.of(published(0), 7.5, List.of(new Phase(0, Breath.NONE, true)), HOUR_S);

        assertThat(course.downToS(8)).hasValue(0);
        assertThat(course.downToS(2)).isEmpty();
    }
}
