package lungfish.piping;

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
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Demands;
import lungfish.network.Answer;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.network.Refused;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.reason.Code;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Rooms;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

final class PipingTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double MILLIMETRE = 1e-3;

    /** A rectangle of 4 by 3 m at 2 m height: 14 m of pipe. */
    private static final Run LOOP =
            aMain("loop", true, new Point(0, 0, 2), new Point(4, 0, 2), new Point(4, 3, 2), new Point(0, 3, 2));

    private static RoomBuilder withOutlets(OutletBuilder... outlets) {
        var tank = aTank("A-1");
        for (OutletBuilder outlet : outlets) {
            tank.with(outlet);
        }
        return aRoom().with(aRack("A").shelf(0.9, tank));
    }

    private static PipedRoom piped(Room room) {
        return Piping.of(room, Demands.of(room, CATALOGUE), room.blowers(Blower.Role.PLANNED), CATALOGUE)
                .orElseThrow();
    }

    private static List<Pipe> pipesOf(PipedRoom room, String run) {
        return room.network().pipes().stream()
                .filter(pipe -> pipe.id().startsWith(run + ":"))
                .toList();
    }

    @Test
    void aLoopIsAsLongInTheNetworkAsOnTheDrawing() {
        PipedRoom room =
                piped(withOutlets(anOutlet("a").onRun("loop", 1), anOutlet("b").onRun("loop", 9))
                        .with(LOOP)
                        .build());

        assertThat(pipesOf(room, "loop").stream().mapToDouble(Pipe::lengthM).sum())
                .isEqualTo(14, within(MILLIMETRE));
    }

    @Test
    void everyTapAndTheStretchBetweenLeadBackToTheRun() {
        PipedRoom room =
                piped(withOutlets(anOutlet("a").onRun("loop", 9)).with(LOOP).build());

        Spot spot = room.spots().get(room.network().drops().get(0).node());
        assertThat(spot).isNotNull();
        // 4 m along the first wall, 3 m along the second, 2 m along the third: x = 4 − 2
        assertThat(spot.place()).isEqualTo(new Point(2, 3, 2));
        assertThat(room.stretches()).allMatch(stretch -> stretch.run().equals(LOOP.id()));
    }

    @Test
    void aRectangleTakesFourElbowsAndTwoTees() {
        PipedRoom room =
                piped(withOutlets(anOutlet("a").onRun("loop", 1), anOutlet("b").onRun("loop", 9))
                        .with(LOOP)
                        .build());

        // elbow 0.9 and tee straight through 0.6 (fittings.csv); the taps at 1 and 9 m are two tees
        double byHand = 4 * 0.9 + 2 * 0.6;
        assertThat(pipesOf(room, "loop").stream().mapToDouble(Pipe::kSum).sum()).isEqualTo(byHand, within(1e-9));
    }

    @Test
    void aBranchIsJoinedWhereItsEndTouches() {
        Run branch = aMain("branch", false, new Point(4, 1.5, 2), new Point(5, 1.5, 2));
        PipedRoom room = piped(withOutlets(anOutlet("a").onRun("branch", 0.5))
                .with(LOOP)
                .with(branch)
                .with(Rooms.aBlower("central").feeds("loop", 0))
                .build());

        assertThat(solve(room)).isNotInstanceOf(Refused.class);
    }

    @Test
    void runsThatCrossInMidRunAreNotJoined() {
        Run crossing = aMain("crossing", false, new Point(2, -1, 2), new Point(2, 1, 2));
        PipedRoom room = piped(withOutlets(anOutlet("a").onRun("crossing", 0.5))
                .with(LOOP)
                .with(crossing)
                .with(Rooms.aBlower("central").feeds("loop", 0))
                .build());

        assertThat(solve(room)).isInstanceOf(Refused.class);
    }

    @Test
    void anEndThatNearlyTouchesIsPointedOut() {
        Run branch = aMain("branch", false, new Point(4.1, 1.5, 2), new Point(5, 1.5, 2));
        PipedRoom room = piped(withOutlets(anOutlet("a").onRun("loop", 1))
                .with(LOOP)
                .with(branch)
                .build());

        assertThat(room.findings()).extracting(each -> each.code()).contains(Code.LOOSE_END);
    }

    @Test
    void aShutValveOpensTheLoop() {
        Run cut = new Run(
                LOOP.id(),
                "loop",
                Run.Role.MAIN,
                LOOP.size(),
                true,
                LOOP.points(),
                List.of(new Run.Fitting("ball-valve", 2, OptionalDouble.of(0))));
        PipedRoom room =
                piped(withOutlets(anOutlet("a").onRun("loop", 1), anOutlet("b").onRun("loop", 9))
                        .with(cut)
                        .build());

        assertThat(room.findings()).extracting(each -> each.code()).contains(Code.MAIN_CLOSED_BY_VALVE);
        // stops at 0, 1, 7 and 9 m; the piece from 1 to 7 m, with the valve at 2 m, is not there
        assertThat(pipesOf(room, "loop")).hasSize(3);
    }

    @Test
    void anAirlineIsMeasuredFromTheTapOverTheRimToTheAirRelease() {
        PipedRoom room = piped(withOutlets(anOutlet("a").onRun("loop", 0.3).depthM(0.25))
                .with(LOOP)
                .build());

        // rack at 0,0; tank 0.6 m long: rim at x 0.3, y 0.25, z 0.9 + 0.36 = 1.26. Tap at x 0.3, y 0, z 2.
        double straight = Math.hypot(0.25, 2 - 1.26);
        // then 0.06 m down to the water and 0.25 m below it; a fifth more for slack (assumed.csv)
        assertThat(room.airlineM().get(0)).isEqualTo(1.2 * (straight + 0.06 + 0.25), within(MILLIMETRE));
    }

    @Test
    void withoutATapTheNearestPointOfThePipeIsTaken() {
        PipedRoom room = piped(withOutlets(anOutlet("a")).with(LOOP).build());

        Spot spot = room.spots().get(room.network().drops().get(0).node());
        assertThat(spot).isNotNull();
        // the rim stands at x 0.3, y 0.25: the wall along x (y = 0) is 0.25 away, the one along y (x = 0) 0.3
        assertThat(spot.place().distanceM(new Point(0.3, 0, 2))).isLessThan(MILLIMETRE);
    }

    @Test
    void outletsOnAGangShareOneTapAndItsFeeder() {
        Gang gang = new Gang(
                new GangId("g"),
                Gang.Kind.GANG_VALVE,
                new Point(0.5, 0.2, 1.5),
                Optional.of(new Outlet.OnRun(LOOP.id(), 0.5)),
                Optional.of(new Outlet.Airline(Optional.of("airline-6-8"), OptionalDouble.of(2))));
        PipedRoom room =
                piped(withOutlets(anOutlet("a").onGang("g"), anOutlet("b").onGang("g"))
                        .with(LOOP)
                        .with(gang)
                        .build());

        Network network = room.network();
        assertThat(network.drops()).extracting(drop -> drop.node()).containsOnly("gang g");
        assertThat(network.pipes())
                .filteredOn(pipe -> pipe.to().equals("gang g"))
                .singleElement()
                .satisfies(feeder -> {
                    assertThat(feeder.lengthM()).isEqualTo(2);
                    assertThat(feeder.boreM()).isEqualTo(0.006);
                });
    }

    @Test
    void aTapOnARunThatIsGoneIsSaid() {
        PipedRoom room =
                piped(withOutlets(anOutlet("a").onRun("gone", 1)).with(LOOP).build());

        assertThat(room.findings()).extracting(each -> each.code()).contains(Code.OUTLET_WITHOUT_TAP);
    }

    @Test
    void saltWaterWeighsAsManyPascalsInTheNetworkAsInTheTank() {
        Room salt = aRoom().with(aRack("A")
                        .shelf(
                                0.9,
                                aTank("A-1")
                                        .temperatureK(298.15)
                                        .salinityKgPerKg(0.035)
                                        .with(anOutlet("a").depthM(0.25))))
                .with(LOOP)
                .build();
        Network network = piped(salt).network();

        // EOS-80 check value, UNESCO Technical Papers in Marine Science 44, p. 19: 1023.343 kg/m³ at 25 °C, 35
        double byHand = 1023.343 * 9.80665 * 0.25;
        assertThat(network.conditions().waterColumnPa(network.drops().get(0).depthM()))
                .isEqualTo(byHand, within(0.01));
    }

    @Test
    void aRoomWithoutPipeOrOutletsHasNoNetwork() {
        Room bare = withOutlets(anOutlet("a")).build();

        assertThat(Piping.of(bare, Demands.of(bare, CATALOGUE), List.of(), CATALOGUE))
                .isEmpty();
    }

    private static Answer solve(PipedRoom room) {
        Network network = room.network();
        String node = room.blowerNodes().values().iterator().next();
        return Solver.of(network.withSources(List.of(new Source.FixedPressure("s", node, 8000))))
                .asSet();
    }

    @Test
    void aShutValveAtTheVeryEndOfABranchIsShut() {
        Run branch = new Run(
                new RunId("branch"),
                "branch",
                Run.Role.BRANCH,
                LOOP.size(),
                false,
                List.of(new Point(5, 1.5, 2), new Point(4, 1.5, 2)),
                List.of(new Run.Fitting("ball-valve", 1, OptionalDouble.of(0))));
        PipedRoom room = piped(withOutlets(anOutlet("a").onRun("branch", 0))
                .with(LOOP)
                .with(branch)
                .with(Rooms.aBlower("central").feeds("loop", 0))
                .build());

        assertThat(solve(room)).isInstanceOf(Refused.class);
    }

    @Test
    void aFittingWhereALoopBeginsCountsOnce() {
        Run loop = new Run(
                LOOP.id(),
                "loop",
                Run.Role.MAIN,
                LOOP.size(),
                true,
                LOOP.points(),
                List.of(new Run.Fitting("ball-valve", 14, OptionalDouble.empty())));
        PipedRoom with =
                piped(withOutlets(anOutlet("a").onRun("loop", 1)).with(loop).build());
        PipedRoom without =
                piped(withOutlets(anOutlet("a").onRun("loop", 1)).with(LOOP).build());

        double valve = CATALOGUE.fitting("ball-valve").orElseThrow().lossFactor();
        assertThat(kSum(with) - kSum(without)).isEqualTo(valve, within(1e-9));
    }

    private static double kSum(PipedRoom room) {
        return pipesOf(room, "loop").stream().mapToDouble(Pipe::kSum).sum();
    }

    @Test
    void machinesSideBySideHaveAHoseEach() {
        PipedRoom room = piped(withOutlets(anOutlet("a").onRun("loop", 1))
                .with(LOOP)
                .with(Rooms.aBlower("central").count(3).feeds("loop", 0))
                .build());

        assertThat(room.network().pipes())
                .filteredOn(pipe -> pipe.from().equals("blower central"))
                .hasSize(3);
    }

    @Test
    void twoRunsEndToEndMeetInOneFitting() {
        Room room = withOutlets(anOutlet("a"))
                .with(aMain("one", false, new Point(0, 0, 2), new Point(4, 0, 2)))
                .with(aMain("two", false, new Point(4, 0, 2), new Point(8, 0, 2)))
                .build();

        assertThat(PipeCount.of(room).fittings()).containsEntry("tee-branch", 1);
    }
}
