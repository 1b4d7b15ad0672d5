package lungfish.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Against Markov chains solved by a general library; the sums of rare events must never lie below them. */
final class MachinesTest {
    private static final double HOUR_S = 3600;
    private static final double YEAR_H = 8760;
    private static final double ROUNDING = 1e-12;
    private static final Rates USUAL = rates(20_000, 8, 72, 0.5);

    /** By hand: 80 h down in 20 080 h, of 8760: 34.90 h a year. */
    @Test
    void oneBlowerIsDownUntilItIsNoticedAndReplaced() {
        Machines one = Machines.one(USUAL);
        assertThat(one.airlessShare() * YEAR_H).isCloseTo(34.90, within(0.005));
        assertThat(one.shortShare()).isEqualTo(one.airlessShare());
    }

    /**
     * By hand, in hours: 1/20 000 · (8.5 + 80 · (80 + 360)/20 000) = 5.13e-4, of 8760: 4.494 h a year; of which 0.771 h because
     * both are down.
     */
    @Test
    void aStandbyByHandIsMostlyWaitingForAHand() {
        Machines standby = Machines.withStandby(1, USUAL, 8.5 * HOUR_S, 80 * HOUR_S);
        assertThat(standby.airlessShare() * YEAR_H).isCloseTo(4.494, within(0.0005));
    }

    /** By hand: full air 1 − (20 000/20 080)² = 7.952e-3, 69.66 h; half of it (80/20 000)² = 1.6e-5, 0.1402 h a year. */
    @Test
    void twoHalvesAreOftenerShortAndSeldomAirless() {
        Machines halves = Machines.sharing(2, USUAL);
        assertThat(halves.shortShare() * YEAR_H).isCloseTo(69.66, within(0.005));
        assertThat(halves.airlessShare() * YEAR_H).isCloseTo(0.1402, within(0.00005));
    }

    @Property
    void twoInParallelAreNeverToldBetterThanTheirChain(
            @ForAll @DoubleRange(min = 100, max = 100_000) double mtbfH,
            @ForAll @DoubleRange(min = 0, max = 24) double noticeH,
            @ForAll @DoubleRange(min = 1, max = 500) double mendH) {
        Machines halves = Machines.sharing(2, rates(mtbfH, noticeH, mendH, 0.5));
        double fails = 1 / mtbfH;
        double back = 1 / (noticeH + mendH);
        double[] steady = new Chain(3)
                .goes(0, 1, 2 * fails)
                .goes(1, 2, fails)
                .goes(1, 0, back)
                .goes(2, 1, 2 * back)
                .steady();
        assertThat(halves.airlessShare()).isGreaterThanOrEqualTo(steady[2] - ROUNDING);
        assertThat(halves.shortShare()).isCloseTo(steady[1] + steady[2], within(1e-9));
    }

    /** Rare, so the sum is close as well: by at most the share of time that one is down, twice. */
    @Test
    void whereFailuresAreRareTheSumIsTheChain() {
        double[] steady = new Chain(3)
                .goes(0, 1, 2.0 / 20_000)
                .goes(1, 2, 1.0 / 20_000)
                .goes(1, 0, 1.0 / 80)
                .goes(2, 1, 2.0 / 80)
                .steady();
        assertThat(Machines.sharing(2, USUAL).airlessShare() / steady[2]).isBetween(1.0, 1 + 3 * 80.0 / 20_000);
    }

    @Property
    void severalThatShareAreTheirChain(
            @ForAll @IntRange(min = 3, max = 6) int running,
            @ForAll @DoubleRange(min = 200, max = 50_000) double mtbfH) {
        Machines sharing = Machines.sharing(running, rates(mtbfH, 8, 72, 0.5));
        Chain chain = new Chain(running + 1);
        for (int down = 0; down < running; down++) {
            chain.goes(down, down + 1, (running - down) / mtbfH).goes(down + 1, down, (down + 1) / 80.0);
        }
        double[] steady = chain.steady();
        double lessThanHalf = 0;
        for (int down = 0; down <= running; down++) {
            lessThanHalf += 2 * (running - down) < running ? steady[down] : 0;
        }
        assertThat(sharing.shortShare()).isCloseTo(1 - steady[0], within(1e-9));
        assertThat(sharing.airlessShare()).isCloseTo(lessThanHalf, within(1e-9));
    }

    /**
     * The chain: 0 blower runs, standby good; 1 standby dead, unseen; 2 standby being replaced; 3 blower failed, standby being
     * started; 4 standby runs, blower being replaced; 5 both failed. A standby that waits ages as if it ran, and is found dead
     * at half the time between two trials.
     */
    @Property
    void aStandbyIsNeverToldBetterThanItsChain(
            @ForAll @DoubleRange(min = 500, max = 100_000) double mtbfH,
            @ForAll @DoubleRange(min = 0.01, max = 40) double startH,
            @ForAll @DoubleRange(min = 10, max = 500) double mendH) {
        double fails = 1 / mtbfH;
        double back = 1 / mendH;
        double[] steady = new Chain(6)
                .goes(0, 1, fails)
                .goes(1, 2, 2 / (30.0 * 24))
                .goes(2, 0, back)
                .goes(0, 3, fails)
                .goes(1, 5, fails)
                .goes(2, 5, fails)
                .goes(3, 4, 1 / startH)
                .goes(3, 5, fails)
                .goes(4, 0, back)
                .goes(4, 5, fails)
                .goes(5, 4, 2 * back)
                .steady();
        Machines told = Machines.withStandby(1, rates(mtbfH, 0, mendH, startH), startH * HOUR_S, mendH * HOUR_S);
        double down = steady[3] + steady[5];
        double alone = 1 - Availability.of(mtbfH, mendH);
        assertThat(told.airlessShare()).isGreaterThanOrEqualTo(Math.min(down, alone) - ROUNDING);
    }

    @Property
    void aStandbyNeverMakesItWorse(
            @ForAll @IntRange(min = 1, max = 4) int running,
            @ForAll @DoubleRange(min = 50, max = 100_000) double mtbfH,
            @ForAll @DoubleRange(min = 0, max = 5000) double startH) {
        Rates rates = rates(mtbfH, 8, 72, 0.5);
        Machines alone = running == 1 ? Machines.one(rates) : Machines.sharing(running, rates);
        Machines standby = Machines.withStandby(running, rates, startH * HOUR_S, rates.backS());
        assertThat(standby.shortShare()).isLessThanOrEqualTo(alone.shortShare());
        assertThat(standby.airlessShare()).isLessThanOrEqualTo(alone.airlessShare());
    }

    /** What fails every few hours is down nearly always, but not longer than always. */
    @Test
    void nothingIsDownMoreThanAlways() {
        Rates hopeless = rates(1, 8, 720, 0.5);
        assertThat(Machines.one(hopeless).airlessShare()).isLessThan(1);
        assertThat(Machines.sharing(2, hopeless).airlessShare()).isEqualTo(1);
        assertThat(Machines.withStandby(1, hopeless, HOUR_S, 720 * HOUR_S).airlessShare())
                .isLessThan(1);
    }

    private static Rates rates(double mtbfH, double noticeH, double mendH, double handH) {
        return new Rates(
                mtbfH * HOUR_S, noticeH * HOUR_S, noticeH * HOUR_S, mendH * HOUR_S, handH * HOUR_S, 60, 2, 3 * HOUR_S);
    }
}
