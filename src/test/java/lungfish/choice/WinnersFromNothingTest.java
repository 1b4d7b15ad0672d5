package lungfish.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.air.FreeAir;
import lungfish.blower.Machine;
import lungfish.blower.Machines;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Demands;
import lungfish.demand.Surroundings;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.network.Tuned;
import lungfish.networkfile.NetworkReader;
import lungfish.networkfile.NetworkWriter;
import lungfish.piping.PipedRoom;
import lungfish.piping.Piping;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Blower;
import lungfish.room.Room;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The cheapest build checked again from nothing: its room is written and read, made a network, that is written and read,
 * and solved. Study and search share none of it but the solver.
 */
final class WinnersFromNothingTest {
    /** Files hold every number in full; the solver starts elsewhere. */
    private static final double SOLVER_PA = 0.01;

    private static final double SHARE = 1e-6;

    static Stream<String> demos() {
        return DemoPlans.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theWinnersOfTheDemoRoomsRunAsTheSearchSays(String name) {
        check(DemoPlans.room(name), DemoPlans.CATALOGUE);
    }

    @Test
    void theWinnersOfRandomRoomsRunAsTheSearchSays() {
        SmallRooms.rooms(100).forEach(room -> check(room, SmallRooms.CATALOGUE));
    }

    private static void check(Room room, Catalogue catalogue) {
        PipeStudy study =
                PipeStudy.of(room, new Planner(catalogue), Progress.UNHEARD).orElseThrow();
        CheapestBuild.of(study, Progress.UNHEARD).best().ifPresent(build -> check(build, catalogue));
    }

    private static void check(Build build, Catalogue catalogue) {
        Network read = read(build.room(), catalogue);
        Tuned tuned = (Tuned) Solver.of(read).tuned();

        assertThat(tuned.whyNot()).isEmpty();
        assertThat(tuned.requiredGaugePa()).isCloseTo(build.pipe().neededPa(), within(SOLVER_PA));
        double gives = IntStream.range(0, read.sources().size())
                .mapToDouble(i -> tuned.source(i).givesM3PerS().orElseThrow())
                .sum();
        assertThat(gives / tuned.totalFreeM3PerS() - 1)
                .isCloseTo(build.candidate().reserveShare(), within(SHARE));
        List<Double> losses = losses(read, tuned);
        for (int i = 0; i < losses.size(); i++) {
            assertThat(losses.get(i)).isCloseTo(build.pipe().losses().allPa().get(i), within(SOLVER_PA));
        }
        everyOutletTakesItsTarget(read, tuned);
    }

    /** To where each airline, or the feeder of its gang, leaves the pipe. */
    private static List<Double> losses(Network read, Tuned tuned) {
        return read.drops().stream()
                .map(drop -> read.pipes().stream()
                        .filter(pipe ->
                                pipe.to().equals(drop.node()) && drop.node().startsWith("gang "))
                        .map(Pipe::from)
                        .findFirst()
                        .orElse(drop.node()))
                .map(tap ->
                        tuned.requiredGaugePa() - tuned.nodeGaugePa(read.nodes().indexOf(tap)))
                .sorted()
                .toList();
    }

    /** With each valve at its tuned setting and the blowers held at the needed pressure, nothing else being told. */
    private static void everyOutletTakesItsTarget(Network read, Tuned tuned) {
        double[] valves = IntStream.range(0, read.drops().size())
                .mapToDouble(i -> tuned.tunedDrop(i).tunedValveK().orElseThrow())
                .toArray();
        List<Source> held = read.sources().stream()
                .map(source -> (Source) new Source.FixedPressure(source.id(), source.node(), tuned.requiredGaugePa()))
                .toList();
        AsSet asSet = (AsSet) Solver.of(read.withSources(held)).asSet(valves);
        for (int i = 0; i < valves.length; i++) {
            double target = read.drops().get(i).targetM3PerS().orElseThrow();
            assertThat(asSet.drop(i).freeM3PerS() / target).isCloseTo(1, within(1e-4));
        }
    }

    private static Network read(Room built, Catalogue catalogue) {
        Room room =
                new RoomReader(catalogue).read(RoomWriter.bytes(built)).value().orElseThrow();
        List<Blower> planned = room.blowers(Blower.Role.PLANNED);
        PipedRoom piped =
                Piping.of(room, Demands.of(room, catalogue), planned, catalogue).orElseThrow();
        FreeAir air = Surroundings.of(room, catalogue).freeAir();
        List<Source> sources = new ArrayList<>();
        for (Blower blower : planned) {
            Machine machine = Machines.chosen(blower, room, catalogue).orElseThrow();
            String node = piped.blowerNodes().getOrDefault(blower.id(), "");
            sources.add(new Source.Blower(blower.id().text(), node, machine.curve(Wear.TIRED, air), machine.count()));
        }
        String file = NetworkWriter.text(piped.network(Upkeep.DUE, sources));
        return NetworkReader.read(file).value().orElseThrow();
    }
}
