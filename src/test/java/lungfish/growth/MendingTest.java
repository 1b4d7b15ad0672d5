package lungfish.growth;

import static lungfish.growth.StagesTest.broken;
import static lungfish.growth.StagesTest.stages;
import static lungfish.growth.StagesTest.withBlower;
import static lungfish.plan.DemoPlans.CATALOGUE;
import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.edit.BlowerEdits;
import lungfish.plan.Basis;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Wishes;
import lungfish.sizing.Limit;
import org.junit.jupiter.api.Test;

/** The step that mends a room which breaks something, and what it costs. */
final class MendingTest {
    private static final Planner PLANNER = new Planner(CATALOGUE);
    private static final Room BASEMENT = DemoPlans.room("basement-rainbows");
    private static final Room HALL = DemoPlans.room("club-hall");

    /** The side-channel blower that a member gave costs nothing, and would do where nothing is wished: but there is one. */
    @Test
    void aMachineAtHandIsNotExchangedForFourOthers() {
        Stages unwished = stages(HALL.withWishes(Wishes.NONE));
        Stage first = unwished.firstToBreak().orElseThrow();

        assertThat(broken(BlowerEdits.choose(HALL.ownClasses().blowers().get(0)).of(first.room())))
                .isEmpty();
        assertThat(first.standing().repair().flatMap(Repair::mend).orElseThrow().price())
                .isPositive();
        assertThat(unwished.foresight().orElseThrow().price()).isPositive();
    }

    /** Two walls of 3.8 m and 2.8 m in PVC-U 40 at 2.40 a metre (pipes.csv), and the elbow between them at 1 (fittings.csv). */
    @Test
    void pipeThatIsLaidAnewIsPaidWithItsFittings() {
        Room room = aRoom().with(
                        aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2), new Point(4, 3, 2.2)))
                .with(aRack("A").shelf(0.9, aTank("t").with(anOutlet("o").onRun("main", 3))))
                .with(aBlower("central").at(0.2, 0.2, 2.3).machine("linear-piston-40"))
                .build();
        Basis basis = PLANNER.basis(room).orElseThrow();

        Mend wider = new Mending(PLANNER, basis, basis.chosen(), () -> {})
                .widerPipe()
                .get(0);

        assertThat(wider.price()).isEqualTo((3.8 + 2.8) * 2.40 + 1, offset(1e-9));
    }

    /** blowers.csv: the class may be held at 21 kPa at most. Shutting the bleed would hold it higher still. */
    @Test
    void aBlowerBledToTooHighAPressureIsBledToWhatIsNeeded() {
        Room high = withBlower(
                DemoPlans.room("garage-killifish"), "linear-piston-80", new Blower.BledTo(OptionalDouble.of(22_000)));

        assertThat(broken(high)).contains(Limit.RATING);
        assertThat(stages(high).firstToBreak().orElseThrow().standing().repair().flatMap(Repair::mend))
                .contains(new Mend.Bleed(new Blower.BledTo(OptionalDouble.empty())));
    }

    /** The bleed costs nothing, so that both cost what the battery costs. */
    @Test
    void ofStepsAtOnePriceTheFewerAreTriedFirst() {
        Backup.Battery first = BASEMENT.backup().batteries().get(0);
        Mend alone = new Mend.MoreBattery(
                first, DemoPlans.CATALOGUE.battery(first.kind()).orElseThrow());
        Mend both = new Mend.Together(List.of(new Mend.Bleed(new Blower.Unbled()), alone));

        assertThat(Stream.of(both, alone).sorted(Mending.CHEAPEST_FIRST)).containsExactly(alone, both);
    }

    /** 12 V and 100 Ah at 0.22 a watt-hour (batteries.csv): 264. Shutting the bleed would cost nothing, and help nothing. */
    @Test
    void ofTwoMendsAtOnePriceThatOfFewerStepsIsTaken() {
        Room emptied = withBlower(BASEMENT, "linear-piston-150-120v", new Blower.BledTo(OptionalDouble.empty()));

        Repair repair = stages(emptied).all().get(0).standing().repair().orElseThrow();

        assertThat(broken(emptied)).containsOnly(Limit.RUNTIME);
        assertThat(repair.still()).isEmpty();
        assertThat(repair.mend()).containsInstanceOf(Mend.MoreBattery.class);
        assertThat(repair.mend().orElseThrow().price()).isEqualTo(12 * 100 * 0.22, offset(1e-9));
    }

    @Test
    void aBlowerHeldTooHighIsMendedByABleedForNothing() {
        Room held = withBlower(DemoPlans.room("garage-killifish"), "linear-piston-80", new Blower.Unbled());
        Stage now = stages(held).firstToBreak().orElseThrow();

        assertThat(now.standing().breaks()).map(Limit.Broken::limit).contains(Limit.RATING);
        assertThat(now.standing().repair().flatMap(Repair::mend))
                .contains(new Mend.Bleed(new Blower.BledTo(OptionalDouble.empty())));
    }

    @Test
    void aBlowerOnlyTooLoudGetsASilencer() {
        Plan plan = DemoPlans.plan("garage-killifish");
        double dba = plan.planned().dba().orElseThrow();
        Room loud = plan.room().withWishes(plan.room().wishes().withLoudestDba(OptionalDouble.of(dba - 0.5)));
        Room settled = withBlower(loud, "linear-diaphragm-40", new Blower.BledTo(OptionalDouble.empty()));

        Repair repair = stages(settled).all().get(0).standing().repair().orElseThrow();

        assertThat(repair.mend()).containsInstanceOf(Mend.Silencer.class);
        assertThat(broken(repair.mend().orElseThrow().in(settled))).isEmpty();
    }
}
