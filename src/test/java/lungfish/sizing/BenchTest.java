package lungfish.sizing;

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
import lungfish.air.FreeAir;
import lungfish.blower.Accessories;
import lungfish.blower.Machine;
import lungfish.blower.MachineTest;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Demands;
import lungfish.demand.Upkeep;
import lungfish.piping.PipedRoom;
import lungfish.piping.Piping;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.TankBuilder;
import lungfish.room.Wishes.Wish;
import org.junit.jupiter.api.Test;

/**
 * A room that needs 20 L/min, and machines on a straight line: new, 100 L/min × (1 − p/20 kPa); tired, 0.8 of it. So
 * every crossing can be worked out by hand.
 */
final class BenchTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final FreeAir ROOM_AIR = FreeAir.at(0, 297.15);
    private static final double NO_WISH = 0;
    private static final double HOT_PIPE_K = 1000;
    private static final double BISECTION_PA = 1e-3;

    private final Room room = aRoom().with(aRack("A").shelf(0.9, tenOutlets()))
            .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
            .with(aBlower("central").at(0.2, 0.2, 2.1))
            .build();
    private final PipedRoom piped = Piping.of(
                    room,
                    Demands.of(room, CatalogueFiles.load()),
                    room.blowers(Blower.Role.PLANNED),
                    CatalogueFiles.load())
            .orElseThrow();

    private static TankBuilder tenOutlets() {
        TankBuilder tank = aTank("A-1");
        for (int i = 0; i < 10; i++) {
            tank.with(anOutlet("a" + i).targetM3PerS(2 * L_PER_MIN));
        }
        return tank;
    }

    private Fleet fleet(Blower.Bleed bleed, BlowerClass.Kind kind) {
        Machine machine = new Machine(
                "m",
                new PartId(PartId.Kind.BLOWER, "central"),
                MachineTest.straight("straight", kind),
                1,
                Accessories.NONE,
                OptionalDouble.empty());
        return new Fleet(List.of(new Fleet.Placed(machine, "blower central")), bleed, ROOM_AIR);
    }

    private Needed needed(Fleet fleet) {
        return Needs.of(piped, fleet, Upkeep.DUE, needed -> needed, refused -> {
            throw new AssertionError(refused.reason());
        });
    }

    private static Asked asked(double reserve, double warmestK, double mainsV) {
        return new Asked(
                reserve, NO_WISH, OptionalDouble.empty(), warmestK, OptionalDouble.of(mainsV), List.of(Wish.SMALLEST));
    }

    private Candidate verdict(Fleet fleet, Asked asked) {
        return new Bench(needed(fleet), asked, each -> OptionalDouble.of(40), watts -> Optional.empty(), each -> 0)
                .verdict(fleet);
    }

    private List<Limit> broken(Fleet fleet, Asked asked) {
        return verdict(fleet, asked).broken().stream().map(Limit.Broken::limit).toList();
    }

    @Test
    void unbledItRunsWhereItsCurveGivesJustTheTargets() {
        Fleet fleet = fleet(new Blower.Unbled(), BlowerClass.Kind.LINEAR_PISTON);

        Candidate candidate = verdict(fleet, asked(NO_WISH, HOT_PIPE_K, 230));

        // new: 100 (1 − p/20) = 20 at 16 kPa; tired: 80 (1 − p/20) = 20 at 15 kPa
        assertThat(candidate.fresh().gaugePa()).isEqualTo(16_000, within(BISECTION_PA));
        assertThat(candidate.tired().gaugePa()).isEqualTo(15_000, within(BISECTION_PA));
        assertThat(candidate.tired().bledM3PerS()).isEqualTo(0, within(1e-12));
    }

    @Test
    void bledToAPressureItGivesItsCurveAndLetsTheRestOut() {
        Fleet fleet = fleet(new Blower.BledTo(OptionalDouble.of(10_000)), BlowerClass.Kind.LINEAR_PISTON);

        Running running = verdict(fleet, asked(NO_WISH, HOT_PIPE_K, 230)).tired();

        assertThat(running.gaugePa()).isEqualTo(10_000);
        assertThat(running.freeM3PerS()).isEqualTo(40 * L_PER_MIN, within(1e-12));
        assertThat(running.bledM3PerS()).isEqualTo(20 * L_PER_MIN, within(1e-12));
        // watts on the line from 40 W open to 60 W shut
        assertThat(running.watts()).isEqualTo(50, within(1e-9));
    }

    @Test
    void theReserveIsWhatTheTiredMachineGivesBeyondTheTargetsAtTheNeededPressure() {
        Fleet fleet = fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON);
        double neededKpa = needed(fleet).pressurePa() / 1000;

        double byHand = 80 * (1 - neededKpa / 20) / 20 - 1;

        assertThat(verdict(fleet, asked(NO_WISH, HOT_PIPE_K, 230)).reserveShare())
                .isEqualTo(byHand, within(1e-9));
    }

    @Test
    void aMachineHeldAboveItsRatingIsRefused() {
        // unbled it stands at 16 kPa; its largest continuous pressure is 15
        assertThat(broken(fleet(new Blower.Unbled(), BlowerClass.Kind.LINEAR_PISTON), asked(NO_WISH, HOT_PIPE_K, 230)))
                .containsExactly(Limit.RATING);
    }

    @Test
    void aMachineForOtherMainsIsRefused() {
        assertThat(broken(fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON), asked(NO_WISH, HOT_PIPE_K, 120)))
                .containsExactly(Limit.MAINS);
    }

    @Test
    void theMainsOfTheNeighbourAreTheSameMains() {
        // IEC 60038: 230 V ± 10 %; 240 V is within it
        assertThat(broken(fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON), asked(NO_WISH, HOT_PIPE_K, 240)))
                .isEmpty();
    }

    @Test
    void aWishForMoreReserveThanThereIsIsBrokenButTheRoomIsServed() {
        Candidate candidate =
                verdict(fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON), asked(10, HOT_PIPE_K, 230));

        assertThat(candidate.broken()).extracting(Limit.Broken::limit).containsExactly(Limit.RESERVE);
        assertThat(candidate.serves()).isTrue();
        assertThat(candidate.fits()).isFalse();
    }

    @Test
    void airTooHotForThePipeIsRefused() {
        assertThat(broken(fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON), asked(NO_WISH, 290, 230)))
                .containsExactly(Limit.HEAT);
    }

    @Test
    void moreMachinesGiveMoreAir() {
        Fleet one = fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON);
        Fleet.Placed place = one.placed().get(0);
        Fleet two = new Fleet(List.of(place, place), new Blower.Unsaid(), ROOM_AIR);

        assertThat(two.freeAt(8000, Wear.TIRED)).isEqualTo(2 * one.freeAt(8000, Wear.TIRED), within(1e-15));
    }

    @Test
    void aClassWhoseLevelNobodyKnowsIsNotTheQuietest() {
        Fleet fleet = fleet(new Blower.Unsaid(), BlowerClass.Kind.LINEAR_PISTON);
        Asked quiet = new Asked(
                NO_WISH, NO_WISH, OptionalDouble.empty(), HOT_PIPE_K, OptionalDouble.of(230), List.of(Wish.QUIETEST));
        Bench bench = new Bench(
                needed(fleet),
                quiet,
                each -> each.kind().id().equals("known") ? OptionalDouble.of(60) : OptionalDouble.empty(),
                watts -> Optional.empty(),
                each -> 0);

        assertThat(bench.rank(
                        fleet,
                        List.of(
                                MachineTest.straight("a mystery", BlowerClass.Kind.LINEAR_PISTON),
                                MachineTest.straight("known", BlowerClass.Kind.LINEAR_PISTON))))
                .extracting(candidate -> candidate.kind().id())
                .containsExactly("known", "a mystery");
    }
}
