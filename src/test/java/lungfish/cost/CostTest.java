package lungfish.cost;

import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Room;
import lungfish.room.Supply;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class CostTest {
    private static final double YEAR_S = 365.25 * 86400;
    private static final double ROUNDING = 1e-9;
    private static final double A_CENT = 0.005;

    private final Catalogue catalogue = CatalogueFiles.load();
    private final Room room = aRoom().with(new Supply(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(0.30 / 3.6e6),
                    Optional.of("EUR")))
            .build();

    /** By hand: 100 W are 876.6 kWh in 365.25 days; at 0.30 a kWh 262.98 a year. */
    @Test
    void energyIsPowerTimesTheYearTimesThePrice() {
        CostAnswer answer = cost(central("linear-piston-80", 100, 0), List.of());
        assertThat(answer.central().energyPerYear()).isCloseTo(262.98, within(A_CENT));
        assertThat(answer.currency()).contains("EUR");
    }

    /** By hand, from the class: price 250 to 420, rebuild 85 every 4 years (at 4 and 8), life 12 years; 150 of pipe. */
    @Test
    void theCentralBlowerIsBoughtAndRebuilt() {
        Bill bill = cost(central("linear-piston-80", 0, 150), List.of()).central();
        assertThat(bill.purchase()).isEqualTo(485);
        assertThat(bill.wearParts()).isEqualTo(170);
        assertThat(bill.replacements()).isZero();
        assertThat(bill.byYear()).hasSize(10);
        assertThat(bill.byYear().get(3)).isEqualTo(485); // due on the last day of the fourth year: paid in the fifth
        assertThat(bill.byYear().get(4)).isEqualTo(570);
    }

    /** By hand: 100 W are 262.98 a year as above; two rebuilds of 85 in a life of 12 years are 14.167 a year. */
    @Test
    void aYearsRunningIsEnergyAndTheRebuildsOfALifeShared() {
        Running machine = machines("linear-piston-80", 1, 100, OptionalDouble.empty());
        assertThat(Cost.perYear(room, catalogue, List.of(machine))).isCloseTo(262.98 + 170.0 / 12, within(A_CENT));
    }

    /** By hand, from the class: life 4 years, 2 old: replaced after 2 and 6 years, at (15 + 30)/2 each, not on the last day of ten; six of them. */
    @Test
    void theSmallPumpsAreNotBoughtAgainBeforeTheyWearOut() {
        Running six = machines("small-diaphragm-5", 6, 36, OptionalDouble.of(2 * YEAR_S));
        Bill bill =
                cost(central("linear-piston-80", 60, 0), List.of(six)).today().orElseThrow();
        assertThat(bill.purchase()).isZero();
        assertThat(bill.replacements()).isCloseTo(6 * 2 * 22.5, within(ROUNDING));
    }

    @Test
    void theTermsOfTheWhysAddUpToTheTotals() {
        CostAnswer answer = cost(central("linear-piston-80", 61.3, 150), List.of(pumps(6)));
        Bill today = answer.today().orElseThrow();
        assertThat(answer.whyCentral().sumSi()).isCloseTo(answer.central().total(), within(ROUNDING));
        assertThat(answer.whyToday().orElseThrow().sumSi()).isCloseTo(today.total(), within(ROUNDING));
        assertThat(answer.central().byYear().get(9)).isCloseTo(answer.central().total(), within(ROUNDING));
    }

    /** Two pumps of 6 W for six tanks: a blower of 25 W and its pipe never pay. */
    @Test
    void aSmallRoomKeepsItsSmallPumps() {
        CostAnswer answer = cost(central("linear-diaphragm-30", 25, 80), List.of(pumps(2)));
        assertThat(answer.paybackYear()).isEmpty();
        double dearer = answer.keepSmallPumps().orElseThrow().amounts().get(0).si();
        double saved = answer.central().total() - answer.today().orElseThrow().total();
        assertThat(dearer * answer.years())
                .isCloseTo(saved, within(ROUNDING * answer.central().total()));
    }

    /** Thirty pumps of 12 W against one blower of 68 W. */
    @Test
    void aGrownRoomPaysItsBlowerBack() {
        Running thirty = machines("small-diaphragm-12", 30, 360, OptionalDouble.empty());
        CostAnswer answer = cost(central("linear-piston-80", 68, 400), List.of(thirty));
        assertThat(answer.paybackYear()).hasValue(1);
        assertThat(answer.keepSmallPumps()).isEmpty();
    }

    @Test
    void fromThePayBackYearOnTheBlowerStaysNoDearer() {
        CostAnswer answer = cost(central("linear-piston-40", 35, 150), List.of(pumps(12)));
        int payback = answer.paybackYear().orElseThrow();
        assertThat(payback).isGreaterThan(1);
        for (int year = 1; year <= answer.years(); year++) {
            double central = answer.central().byYear().get(year - 1);
            double today = answer.today().orElseThrow().byYear().get(year - 1);
            if (year >= payback) {
                assertThat(central).isLessThanOrEqualTo(today);
            }
            if (year == payback - 1) {
                assertThat(central).isGreaterThan(today);
            }
        }
    }

    @Test
    void withoutPumpsThereIsNothingToCompare() {
        CostAnswer answer = cost(central("linear-piston-80", 60, 0), List.of());
        assertThat(answer.today()).isEmpty();
        assertThat(answer.paybackYear()).isEmpty();
        assertThat(answer.keepSmallPumps()).isEmpty();
    }

    @Test
    void anUnknownAgeIsTheMiddleOfLifeAndSaid() {
        CostAnswer answer = cost(central("linear-piston-80", 60, 0), List.of(pumps(1)));
        assertThat(said(answer)).anyMatch(what -> what.startsWith("age of a pump"));
        Running halfway = machines("small-diaphragm-5", 1, 6, OptionalDouble.of(2 * YEAR_S));
        CostAnswer typed = cost(central("linear-piston-80", 60, 0), List.of(halfway));
        assertThat(typed.today()).isEqualTo(answer.today());
        assertThat(said(typed)).noneMatch(what -> what.startsWith("age of a pump"));
    }

    /** By hand: life 4 years, 5 old: one is behind it; to 15 years two more come, at 8 and 12; rebuilds at 5.5, 7, 9.5, 11, 13.5; that at 15 is the last day. */
    @Test
    void whatLiesBehindIsNotPaidAgain() {
        Running old = machines("small-diaphragm-5", 1, 6, OptionalDouble.of(5 * YEAR_S));
        Bill bill =
                cost(central("linear-piston-80", 60, 0), List.of(old)).today().orElseThrow();
        assertThat(bill.replacements()).isCloseTo(2 * 22.5, within(ROUNDING));
        assertThat(bill.wearParts()).isCloseTo(5 * 5, within(ROUNDING));
    }

    @Test
    void anUnknownPriceOfEnergyIsAssumedAndSaid() {
        Central central = central("linear-piston-80", 60, 0);
        assertThat(said(Cost.of(aRoom().build(), catalogue, central, List.of())))
                .contains("price of a kWh");
        assertThat(said(cost(central, List.of()))).doesNotContain("price of a kWh");
    }

    @Property
    void moreWattsNeverCostLess(
            @ForAll @DoubleRange(min = 1, max = 500) double watts,
            @ForAll @DoubleRange(min = 0, max = 500) double more) {
        double less =
                cost(central("linear-piston-80", watts, 0), List.of()).central().total();
        double dearer = cost(central("linear-piston-80", watts + more, 0), List.of())
                .central()
                .total();
        assertThat(dearer).isGreaterThanOrEqualTo(less);
    }

    private static List<String> said(CostAnswer answer) {
        return answer.assumptions().stream().map(Assumption::what).toList();
    }

    private CostAnswer cost(Central central, List<Running> today) {
        return Cost.of(room, catalogue, central, today);
    }

    private Central central(String kind, double watts, double parts) {
        return new Central(List.of(machines(kind, 1, watts, OptionalDouble.empty())), parts);
    }

    private Running pumps(int count) {
        return machines("small-diaphragm-5", count, 6.0 * count, OptionalDouble.empty());
    }

    private Running machines(String kind, int count, double watts, OptionalDouble ageS) {
        PartId part = new PartId(PartId.Kind.BLOWER, kind);
        return new Running(kind, part, catalogue.blower(kind).orElseThrow(), count, watts, ageS);
    }
}
