package lungfish.today;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lungfish.cost.Bill;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.report.BesideWords;
import lungfish.room.BlowerBuilder;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Listener;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.RackBuilder;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Supply;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts about the small pumps beside the central blower. */
final class BesideTest {
    private static final double ROUNDING = 1e-9;
    private static final double L_PER_MIN = 1 / 60_000.0;
    private static final Supply FREE_POWER =
            new Supply(OptionalDouble.of(230), OptionalDouble.of(50), OptionalDouble.of(0), Optional.of("EUR"));

    private static Beside beside(Room room) {
        return Beside.of(new Planner(DemoPlans.CATALOGUE).plan(room));
    }

    /** Two tanks: the first with two outlets, the second with one; 0.8 L/min each, as deep as a sponge stands. */
    private static RoomBuilder room() {
        return aRoom().with(FREE_POWER)
                .with(aRack("r")
                        .at(0.5, 0.5)
                        .shelf(
                                0.5,
                                aTank("t1").with(outlet("o1")).with(outlet("o2")),
                                aTank("t2").at(0.65).with(outlet("o3"))));
    }

    private static OutletBuilder outlet(String id) {
        return anOutlet(id).device("sponge-small").depthM(0.2).targetM3PerS(0.8 * L_PER_MIN);
    }

    private static RoomBuilder piped() {
        return room().with(aMain("main", true, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2), new Point(4, 3, 2.2)));
    }

    private static BlowerBuilder pump(String id, String kind, String... outlets) {
        return aBlower(id).machine(kind).today(outlets).at(0.5, 0.5, 1);
    }

    private static RackBuilder planned(double targetLPerMin) {
        return wall(targetLPerMin).planned();
    }

    private static RackBuilder wall(double targetLPerMin) {
        return aRack("w")
                .at(2, 0.5)
                .shelf(
                        0.5,
                        aTank("w1")
                                .with(anOutlet("p1")
                                        .device("sponge-small")
                                        .depthM(0.2)
                                        .targetM3PerS(targetLPerMin * L_PER_MIN)));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # as the issue that asked for it says of the first; the others lack air today and a blower never pays there
        starting-out,      NOT_YET
        garage-killifish,  NEEDED
        basement-rainbows, NEEDED
        club-hall,         NEEDED""")
    void everyDemoRoomGetsItsVerdict(String name, Verdict verdict) {
        assertThat(Beside.of(DemoPlans.plan(name)).verdict()).isEqualTo(verdict);
    }

    /**
     * By hand, from the class: life 4 years, of unknown age and so 2 old: replaced after 2 and 6 years for 22.50 (the
     * middle of 15 to 30), that after 10 being the last day; rebuilt every 1.5 years of a life for 5, at 1, 3.5, 5, 7.5 and 9
     * years from now. What is due on the last day of a year is paid in the next.
     */
    @Test
    void onePumpOfATinyRoomCostsWhatItsEventsCost() {
        Beside beside = beside(
                piped().with(pump("p", "small-diaphragm-5", "o1", "o2", "o3")).build());
        Bill bill = beside.today().orElseThrow().bill().orElseThrow();

        assertThat(bill.byYear()).containsExactly(0.0, 5.0, 27.5, 32.5, 32.5, 37.5, 60.0, 65.0, 65.0, 70.0);
        assertThat(bill.events()).isEqualTo(new Bill.Events(5, 2));
        assertThat(bill.events().perYear(beside.years())).isCloseTo(0.7, within(ROUNDING));
    }

    /** Levels add by energy: L + 10 lg 2 for two equal sources, ISO 3744. */
    @Test
    void twoPumpsSideBySideAreThreeDecibelsLouderThanOne() {
        Listener here = new Listener("chair", new Point(3, 2, 1.1), Optional.empty());
        Way one = beside(room().with(here)
                        .with(pump("p", "small-diaphragm-5", "o1"))
                        .build())
                .today()
                .orElseThrow();
        Way two = beside(room().with(here)
                        .with(pump("p", "small-diaphragm-5", "o1"))
                        .with(pump("q", "small-diaphragm-5", "o2"))
                        .build())
                .today()
                .orElseThrow();

        assertThat(two.dba().orElseThrow() - one.dba().orElseThrow()).isCloseTo(3.0103, within(1e-4));
        assertThat(List.of(one.machines(), two.machines())).containsExactly(1, 2);
    }

    @Test
    void pumpsThatGiveWhatIsAskedAreKept() {
        Beside beside = beside(
                piped().with(pump("p", "small-diaphragm-5", "o1", "o2", "o3")).build());

        assertThat(beside.verdict()).isEqualTo(Verdict.NOT_YET);
        assertThat(beside.today().orElseThrow().air().isEnough()).isTrue();
        assertThat(beside.paybackYear()).isEmpty();
    }

    /** A pump of 2 L/min open and tired gives less than the 2.4 L/min that three outlets ask. */
    @Test
    void aPumpThatLacksAirIsAReasonForTheBlower() {
        Beside beside = beside(
                piped().with(pump("p", "small-diaphragm-2", "o1", "o2", "o3")).build());
        Way.Air air = beside.today().orElseThrow().air();

        assertThat(beside.verdict()).isEqualTo(Verdict.NEEDED);
        assertThat(air.shortOutlets()).isEqualTo(3);
        assertThat(air.missingM3PerS()).isCloseTo(2.4 * L_PER_MIN - air.givesM3PerS(), within(ROUNDING));
        assertThat(beside.reasons().get(0)).isEqualTo(new Reason(Reason.Kind.AIR_SHORT, air.missingM3PerS(), 3));
    }

    @Test
    void outletsWithoutAPumpAreAReason() {
        Beside beside =
                beside(piped().with(pump("p", "small-diaphragm-5", "o1")).build());

        assertThat(beside.verdict()).isEqualTo(Verdict.NEEDED);
        assertThat(beside.reasons()).contains(new Reason(Reason.Kind.UNFED, 2, 3));
    }

    /** The pump gives 5 L/min at most and 2.4 are asked: 0.2 more are there, 50 are not. */
    @Test
    void aPlannedRackCountsOnceThePumpsCannotFeedIt() {
        BlowerBuilder pump = pump("p", "small-diaphragm-5", "o1", "o2", "o3");

        assertThat(beside(piped().with(pump).with(planned(0.2)).build()).verdict())
                .isEqualTo(Verdict.NOT_YET);
        assertThat(beside(piped().with(pump).with(planned(50)).build()).verdict())
                .isEqualTo(Verdict.NEEDED);
    }

    @Test
    void ofPumpsThatFeedNobodyKnowsWhatNothingIsClaimed() {
        Beside beside = beside(piped().with(pump("p", "small-diaphragm-5")).build());

        assertThat(beside.verdict()).isEqualTo(Verdict.UNSAID);
        assertThat(beside.today().orElseThrow().failure()).isEmpty();
        assertThat(beside.reasons()).extracting(Reason::kind).doesNotContain(Reason.Kind.UNFED, Reason.Kind.AIR_SHORT);
    }

    @Test
    void withoutPumpsThereIsNothingToCompare() {
        Beside beside = beside(piped().build());

        assertThat(beside.verdict()).isEqualTo(Verdict.NO_PUMPS);
        assertThat(beside.today()).isEmpty();
        assertThat(beside.reasons()).isEmpty();
    }

    @Test
    void withoutAMainPumpsThatLackAirHaveNoBlowerBesideThem() {
        Beside beside = beside(
                room().with(pump("p", "small-diaphragm-2", "o1", "o2", "o3")).build());

        assertThat(beside.verdict()).isEqualTo(Verdict.NO_BLOWER);
        assertThat(beside.planned()).isEmpty();
    }

    @Test
    void aBlowerThatDoesNotServeIsMendedFirst() {
        Room room = piped().with(pump("p", "small-diaphragm-2", "o1", "o2", "o3"))
                .with(aBlower("b").machine("small-diaphragm-2"))
                .build();

        assertThat(beside(room).verdict()).isEqualTo(Verdict.MEND_FIRST);
    }

    /** Both pumps feed the first tank: the first failing stops two outlets, but only the second tank stands without air. */
    @Test
    void aTankWithASecondPumpGoesOnBreathing() {
        Beside beside = beside(piped().with(pump("p", "small-diaphragm-5", "o1", "o3"))
                .with(pump("q", "small-diaphragm-5", "o2"))
                .build());

        assertThat(beside.today().orElseThrow().failure()).contains(new Failure("Blower p", 2, 1, 0, false));
    }

    @Test
    void oneBlowerTakesEveryTankAndOneOfTwoTakesNone() {
        RoomBuilder pumped = piped().with(pump("p", "small-diaphragm-2", "o1", "o2", "o3"));
        Failure one = beside(
                        pumped.with(aBlower("b").machine("linear-diaphragm-15")).build())
                .planned()
                .flatMap(Way::failure)
                .orElseThrow();
        Failure two = beside(piped().with(
                                aBlower("b").machine("linear-diaphragm-15").count(2))
                        .with(aBlower("s").machine("linear-diaphragm-15").standby())
                        .build())
                .planned()
                .flatMap(Way::failure)
                .orElseThrow();

        assertThat(one.outlets()).isEqualTo(3);
        assertThat(one.tanks()).isEqualTo(2);
        assertThat(one.leftShare()).isZero();
        assertThat(one.standby()).isFalse();
        assertThat(two.leftShare()).isEqualTo(1); // one of them gives 15 L/min where 2.4 are asked
        assertThat(two.standby()).isTrue();
    }

    /** Asked are 22.4 L/min: 20 of the planned outlet, now in place, and three of 0.8; the small one alone lacks some of it. */
    @ParameterizedTest
    @CsvSource({"linear-diaphragm-15,linear-diaphragm-40", "linear-diaphragm-40,linear-diaphragm-15"})
    void ofTwoUnlikeBlowersTheFailureOfTheLargerCountsHoweverTheyAreDrawn(String first, String second) {
        Failure failure = beside(piped().with(wall(20))
                        .with(aBlower("b1").machine(first))
                        .with(aBlower("b2").machine(second))
                        .build())
                .planned()
                .flatMap(Way::failure)
                .orElseThrow();
        assertThat(failure.machine()).startsWith("Linear diaphragm blower, 40 L/min");
        assertThat(failure.leftShare()).isLessThan(1);
    }

    @Test
    void circuitsAreCountedOnceEachAndOnlyWhereAllAreSaid() {
        RoomBuilder room = room().with(new Circuit(new CircuitId("a"), "a", Optional.empty(), Optional.empty()))
                .with(pump("p", "small-diaphragm-5", "o1").circuit("a"))
                .with(pump("q", "small-diaphragm-5", "o2").circuit("a"));

        assertThat(beside(room.build()).today().orElseThrow().circuits()).isEqualTo(OptionalInt.of(1));
        assertThat(beside(room.with(pump("s", "small-diaphragm-5", "o3")).build())
                        .today()
                        .orElseThrow()
                        .circuits())
                .isEmpty();
    }

    /**
     * By hand: 596.45 − 532.79 = 63.66 is the blower dearer. Of outlets of 1.00 L/min each the pumps have room for one more
     * (3.19 − 2.00 = 1.19 L/min; the others have 0.99 and 0.29); the next one wants a fourth pump, which costs far more
     * than 63.66 and two valves over ten years (22.50, two more, and some 130 of power). So nine, two more than there are.
     */
    @Test
    void startingOutWouldPayWhenItsPumpsAreFull() {
        assertThat(Beside.of(DemoPlans.plan("starting-out")).paysFrom()).isEqualTo(OptionalInt.of(9));
    }

    @Test
    void theVerdictIsAPlainWord() {
        var plan = DemoPlans.plan("starting-out");
        BesideWords words = new BesideWords(plan, Beside.of(plan), new Quantities(DisplayUnits.METRIC, "EUR"));

        assertThat(words.headline()).isEqualTo("Not yet");
        assertThat(words.because()).contains("would not pay within 10 years");
    }
}
