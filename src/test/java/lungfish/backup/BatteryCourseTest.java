package lungfish.backup;

import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.room.Backup.Battery;
import lungfish.room.BatteryId;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class BatteryCourseTest {
    private static final double HOUR_S = 3600;
    private static final double ROUNDING_S = 1e-6;
    private static final double ROUNDING = 1e-9;
    private static final double FOUR_DIGITS_PERCENT = 0.02;

    /** 12 V · 50 Ah = 2.16 MJ, of which half may be drawn, at 25 °C and new; a tenth of it in an hour is 60 W. */
    private static final Bank LEAD = bank(store("lead-sealed", 12, 50));

    private static final double CHARGER_W = 60;

    /** By hand in BatteryRuntimeTest: 100 W draw 116.1 W and last 7593 s. */
    @Test
    void oneLoadEmptiesThemWhenTheirRuntimeIsOver() {
        BatteryCourse course = of(LEAD, Span.carrying(10 * HOUR_S, 100));
        assertThat(course.emptyS().orElseThrow()).isCloseTo(7593, withinPercentage(FOUR_DIGITS_PERCENT));
        assertThat(course.shareAt(7593 / 2.0)).isCloseTo(0.5, within(1e-4));
        assertThat(course.shareAt(9 * HOUR_S)).isZero();
    }

    /**
     * By hand: at 100 W 1.08 MJ · 0.81628 = 881.58 kJ come out. An hour of 116.11 W takes 418.00 kJ: 0.5259 is left, 463.58 kJ.
     * 25 W draw 25/0.9 + 5 = 32.778 W: 14 143 s more.
     */
    @Test
    void theHardestLoadRulesTheWholeCourse() {
        BatteryCourse course = of(LEAD, Span.carrying(HOUR_S, 100), Span.carrying(24 * HOUR_S, 25));
        assertThat(course.shareAt(HOUR_S)).isCloseTo(0.5259, within(5e-5));
        assertThat(course.emptyS().orElseThrow()).isCloseTo(17_743, withinPercentage(FOUR_DIGITS_PERCENT));
    }

    /** Cautious against both usual sums: shares of the runtimes, and energy drawn against what the load of the moment draws. */
    @Property
    void neverLaterEmptyThanEitherUsualSum(
            @ForAll @DoubleRange(min = 5, max = 400) double firstW,
            @ForAll @DoubleRange(min = 5, max = 400) double thenW,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double part) {
        double firstS = part * LEAD.runtimeS(firstW);
        double byShares = firstS + (1 - part) * LEAD.runtimeS(thenW);
        double drawnJ = firstS * LEAD.inverting().batteryW(firstW);
        double byEnergy = firstS
                + Math.max(0, LEAD.usableJ(thenW) - drawnJ) / LEAD.inverting().batteryW(thenW);
        double emptyS = of(LEAD, Span.carrying(firstS, firstW), Span.carrying(1e7, thenW))
                .emptyS()
                .orElseThrow();
        assertThat(emptyS).isLessThanOrEqualTo(Math.min(byShares, byEnergy) + ROUNDING_S);
    }

    @Property
    void whatIsDrawnUntilTheyAreEmptyIsWhatMayBeDrawn(
            @ForAll @DoubleRange(min = 5, max = 400) double firstW,
            @ForAll @DoubleRange(min = 5, max = 400) double thenW) {
        BatteryCourse course = of(LEAD, Span.carrying(600, firstW), Span.carrying(1e7, thenW));
        double emptyS = course.emptyS().orElseThrow();
        double drawnJ = Math.min(600, emptyS) * LEAD.inverting().batteryW(firstW)
                + Math.max(0, emptyS - 600) * LEAD.inverting().batteryW(thenW);
        assertThat(drawnJ).isCloseTo(course.usableJ(), withinPercentage(1e-6));
    }

    @Test
    void atRestNothingIsDrawnAndNothingComesBack() {
        BatteryCourse course = of(
                LEAD, Span.carrying(HOUR_S, 50), Span.resting(HOUR_S), Span.carrying(90 * HOUR_S, 50), Span.resting(9));
        assertThat(course.shareAt(2 * HOUR_S)).isEqualTo(course.shareAt(HOUR_S));
        assertThat(course.shareAt(93 * HOUR_S)).isZero();
    }

    @Test
    void emptyTheyStaySoUnderALighterLoad() {
        BatteryCourse course = of(LEAD, Span.carrying(10 * HOUR_S, 100), Span.carrying(HOUR_S, 1));
        assertThat(course.shareAt(10.5 * HOUR_S)).isZero();
    }

    /** By hand: an idling inverter of 5 W takes 18 kJ in an hour, of 1.08 MJ. */
    @Test
    void anInverterWithoutALoadStillDraws() {
        assertThat(of(LEAD, Span.carrying(HOUR_S, 0)).shareAt(HOUR_S)).isCloseTo(1 - 1.0 / 60, within(ROUNDING));
    }

    /**
     * By hand: 60 W · 0.85 = 51 W. The last fifth of the rated charge is 0.4 of the half that may be drawn. 0.6 · 1.08 MJ at
     * 51 W take 12 706 s; the rest would take 8471 s, and takes 4 h: 27 106 s.
     */
    @Test
    void leadAcidFillsFastAndThenSlowly() {
        double rested = 100 * HOUR_S;
        BatteryCourse course = of(LEAD, Span.carrying(rested, 10), Span.charging(20 * HOUR_S));
        assertThat(course.emptyS().orElseThrow()).isLessThan(rested);
        assertThat(course.shareAt(rested + 12_706)).isCloseTo(0.6, within(5e-5));
        assertThat(course.shareAt(rested + 12_706 + 2 * HOUR_S)).isCloseTo(0.8, within(5e-5));
        assertThat(course.shareAt(rested + 27_000)).isLessThan(1);
        assertThat(course.shareAt(rested + 27_107)).isEqualTo(1);
        assertThat(Charging.of(LEAD, CHARGER_W, 1.08e6).fromEmptyS()).isCloseTo(27_106, within(1.0));
    }

    /** By hand: 12.8 V · 100 Ah = 4.608 MJ, 0.8 of it 3.6864 MJ; 128 W · 0.95 = 121.6 W: 30 316 s. */
    @Test
    void lithiumFillsStraightToTheTop() {
        Bank bank = bank(store("lifepo4", 12.8, 100));
        assertThat(Charging.of(bank, 128, 3.6864e6).fromEmptyS()).isCloseTo(30_316, within(1.0));
    }

    @Test
    void ofTwoKindsTheSlowestSaysHowLongFillingTakes() {
        Bank both = bank(store("lead-sealed", 12, 50), store("lifepo4", 12.8, 50));
        Charging charging = Charging.of(both, CHARGER_W, 2e6);
        assertThat(charging).isEqualTo(Charging.of(LEAD, CHARGER_W, 2e6));
    }

    @Test
    void fullTheyAreNotOverfilled() {
        BatteryCourse course = of(LEAD, Span.charging(HOUR_S), Span.carrying(1, 1), Span.charging(9 * HOUR_S));
        assertThat(course.moments()).allMatch(moment -> moment.share() <= 1);
        assertThat(course.shareAt(10 * HOUR_S)).isEqualTo(1);
    }

    @Test
    void theCourseRunsOnInTimeAndEndsWhenTheSpansEnd() {
        BatteryCourse course = of(LEAD, Span.carrying(HOUR_S, 10), Span.charging(HOUR_S), Span.resting(HOUR_S));
        assertThat(course.moments())
                .extracting(BatteryCourse.Moment::atS)
                .isSorted()
                .endsWith(3 * HOUR_S);
        assertThat(course.moments().get(0)).isEqualTo(new BatteryCourse.Moment(0, 1));
    }

    @Test
    void aRoomWithoutBatteriesHasNoCourse() {
        assertThat(BatteryCourse.of(aRoom().build(), CatalogueFiles.load(), List.of(Span.carrying(1, 1))))
                .isEmpty();
    }

    @Test
    void aSpanDoesNotRunBackwards() {
        assertThatThrownBy(() -> Span.carrying(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Span.carrying(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    private static BatteryCourse of(Bank bank, Span... spans) {
        return BatteryCourse.of(bank, CHARGER_W, List.of(spans));
    }

    private static Bank bank(Store... stores) {
        return new Bank(List.of(stores), new Inverting(typed(0.9), typed(5)));
    }

    private static Store store(String kind, double voltageV, double ah) {
        Battery battery = new Battery(
                new BatteryId(kind),
                kind,
                1,
                voltageV,
                ah * HOUR_S,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        return new Store(battery, CatalogueFiles.load().battery(kind).orElseThrow(), typed(298.15), typed(1));
    }

    private static Given typed(double si) {
        return new Given(si, Origin.typed(""));
    }
}
