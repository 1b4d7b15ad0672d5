package lungfish.choice;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.room.TankBuilder;
import lungfish.sizing.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each pipe does to the same room, and which is good enough. */
final class PipeStudyTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final Planner PLANNER = new Planner(DemoPlans.CATALOGUE);

    static Stream<String> demos() {
        return DemoPlans.names();
    }

    private static PipeStudy study(Room room) {
        return PipeStudy.of(room, PLANNER, Progress.UNHEARD).orElseThrow();
    }

    /** Sixteen outlets of 6 L/min at the far end of 35 m of pipe, more than the narrowest size bears. */
    private static Room far() {
        TankBuilder tank = aTank("t");
        for (int i = 0; i < 16; i++) {
            tank.with(anOutlet("o" + i).targetM3PerS(6 * L_PER_MIN).onRun("main", 34.5));
        }
        List<Point> zigzag = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            zigzag.add(new Point(i % 2 == 0 ? 0.2 : 4.7, 0.2 + 0.05 * i, 2.2));
            zigzag.add(new Point(i % 2 == 0 ? 4.7 : 0.2, 0.2 + 0.05 * i, 2.2));
        }
        return aRoom().with(aMain("main", false, zigzag.toArray(new Point[0])))
                .with(aRack("A").shelf(0.9, tank))
                .with(aBlower("central").at(0.2, 0.2, 2.3))
                .build();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aWiderPipeLosesLessOnTheWayToTheIndexOutlet(String name) {
        PipeStudy study = study(DemoPlans.room(name));

        for (PipeLayout layout : study.layouts()) {
            List<PipeResult> sized = study.with(layout).stream()
                    .filter(each -> each.variant().size().isPresent())
                    .toList();
            assertThat(sized).hasSizeGreaterThan(3);
            assertThat(sized)
                    .extracting(PipeResult::neededPa)
                    .isSortedAccordingTo((one, other) -> Double.compare(other, one));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theRoomAsDrawnNeedsWhatItsPlanSays(String name) {
        PipeResult drawn = study(DemoPlans.room(name)).asDrawn();

        var plan = DemoPlans.plan(name).duty().orElseThrow();
        assertThat(drawn.neededPa()).isEqualTo(plan.needed().pressurePa());
        assertThat(drawn.duty().candidate().kind()).isEqualTo(plan.candidate().kind());
    }

    @Test
    void inAGarageThePipeDoesNotMatter() {
        PipeStudy garage = study(DemoPlans.room("garage-killifish"));

        assertThat(garage.pipeMatters()).isFalse();
        assertThat(garage.smallest(garage.asDrawn().variant().layout()))
                .map(each -> each.variant().size().orElseThrow().id())
                .contains("pvc-u-16-pn16");
    }

    @Test
    void aFarRackFeelsTheSmallPipeAndTheSmallestThatIsGoodEnoughIsWider() {
        PipeStudy study = study(far());
        List<PipeResult> sizes = study.with(new PipeLayout(PipeLayout.Main.OPEN, 1));

        assertThat(study.pipeMatters()).isTrue();
        assertThat(sizes.get(0).matters()).isTrue();
        assertThat(sizes.get(sizes.size() - 1).matters()).isFalse();
    }

    @Test
    void allAirThroughOneBoreGoesAsFastAsItsAreaSays() {
        PipeResult narrow =
                study(far()).with(new PipeLayout(PipeLayout.Main.OPEN, 1)).get(0);

        // 96 L/min of free air through 21.6 mm (3.664 cm²) are 4.37 m/s, less as it is pressed together, at most by a
        // tenth
        assertThat(narrow.metresPerS()).isBetween(0.9 * 4.37, 4.37);
    }

    @Test
    void worstTapAndSpreadAreOfTheSameTaps() {
        PipeResult drawn = study(DemoPlans.room("basement-rainbows")).asDrawn();

        double best = drawn.neededPa() - drawn.losses().bestPa();
        assertThat(drawn.worstTapPa() + drawn.spreadPa()).isCloseTo(best, within(1e-6));
    }

    /** Two taps at one place of the pipe, one of them with a gang's feeder of 2 m behind it. */
    @Test
    void theTubingBehindAGangIsNoPipe() {
        RunId main = new RunId("main");
        Room room = aRoom().with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aRack("A")
                        .shelf(
                                0.9,
                                aTank("t1").with(anOutlet("own").onRun("main", 3)),
                                aTank("t2").at(0.7).with(anOutlet("shared").onGang("g"))))
                .with(new Gang(
                        new GangId("g"),
                        Gang.Kind.GANG_VALVE,
                        new Point(3.2, 1, 1.5),
                        Optional.of(new Outlet.OnRun(main, 3)),
                        Optional.of(new Outlet.Airline(Optional.empty(), OptionalDouble.of(2)))))
                .with(aBlower("central").at(0.2, 0.2, 2.1))
                .build();

        assertThat(study(room).asDrawn().spreadPa()).isZero();
    }

    /** With a wish that no pipe can meet, the narrow one is blamed only for what it spoils itself. */
    @Test
    void aPipeIsNotBlamedForWhatTheWidestCannotMeetEither() {
        Room garage = DemoPlans.room("garage-killifish");
        Room silent = garage.withWishes(garage.wishes().withLoudestDba(OptionalDouble.of(5)));

        assertThat(study(silent).results()).allSatisfy(each -> {
            assertThat(each.missed()).extracting(Limit.Broken::limit).contains(Limit.NOISE);
            assertThat(each.faults()).isEmpty();
        });
    }

    /**
     * Of 3000 Pa wished to spare the widest pipe leaves 500: whatever leaves less than that by more than 1 % of 3000, 30 Pa,
     * is to blame for it.
     */
    @Test
    void aPipeIsBlamedForMakingWorseWhatTheWidestCannotMeet() {
        double widestPa = open(far(), "linear-piston-200", new Blower.Unsaid())
                .reduce((one, other) -> other)
                .orElseThrow()
                .neededPa();
        List<PipeResult> bled = open(far(), "linear-piston-200", new Blower.BledTo(OptionalDouble.of(widestPa + 500)))
                .toList();

        assertThat(bled)
                .allSatisfy(each -> assertThat(each.faults())
                        .extracting(Limit.Broken::limit)
                        .filteredOn(limit -> limit == Limit.SPARE)
                        .hasSize(each.neededPa() > widestPa + 30 ? 1 : 0))
                .anyMatch(each -> each.neededPa() > widestPa + 30)
                .anyMatch(each -> each.neededPa() > widestPa && each.neededPa() < widestPa + 30);
    }

    /** Each size of an open main fed once, the narrowest first. */
    private static Stream<PipeResult> open(Room room, String machine, Blower.Bleed bleed) {
        Room named = room.withWishes(room.wishes().withIndexSparePa(OptionalDouble.of(3000)))
                .withBlowers(room.blowers().stream()
                        .map(blower -> blower.withMachine(Optional.of(machine)).withBleed(bleed))
                        .toList());
        return study(named).with(new PipeLayout(PipeLayout.Main.OPEN, 1)).stream();
    }

    @Test
    void aStudyThatIsNotWantedAnyMoreStops() {
        Progress stop = (done, of) -> {
            if (done == 3) {
                throw new CancellationException();
            }
        };

        assertThatThrownBy(() -> PipeStudy.of(DemoPlans.room("starting-out"), PLANNER, stop))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void aRoomThatCannotBeSolvedHasNoStudy() {
        assertThat(PipeStudy.of(aRoom().build(), PLANNER, Progress.UNHEARD)).isEmpty();
    }
}
