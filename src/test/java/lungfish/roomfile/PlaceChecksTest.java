package lungfish.roomfile;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Listener;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.RoomBuilder;
import lungfish.room.Run;
import org.junit.jupiter.api.Test;

/** Runs of pipe, and what stands where in the room. */
final class PlaceChecksTest {
    private static List<Problem> problems(RoomBuilder room) {
        return RoomChecks.problems(room.build(), CatalogueFiles.load());
    }

    private static List<Problem> ofRun(Run run) {
        return problems(aRoom().with(run));
    }

    private static Run fitted(Run run, Run.Fitting fitting) {
        return new Run(run.id(), run.name(), run.role(), run.size(), run.closed(), run.points(), List.of(fitting));
    }

    @Test
    void aClosedRunHasThreeCornersAndAnOpenOneTwo() {
        Point a = new Point(0, 0, 2);
        Point b = new Point(1, 0, 2);
        assertThat(ofRun(aMain("main", true, a, b)))
                .containsExactly(new Problem("/runs/0/points", "a closed run has 2 corners", "3 or more"));
        assertThat(ofRun(aMain("main", false, a)))
                .containsExactly(new Problem("/runs/0/points", "a run has 1 corners", "2 or more"));
    }

    @Test
    void aClosedRunIsAsLongAsItsWayRound() {
        Run square =
                aMain("main", true, new Point(0, 0, 2), new Point(1, 0, 2), new Point(1, 1, 2), new Point(0, 1, 2));
        assertThat(ofRun(fitted(square, new Run.Fitting("union", 3.9, OptionalDouble.empty()))))
                .isEmpty();
        assertThat(ofRun(fitted(square, new Run.Fitting("union", 4.1, OptionalDouble.empty()))))
                .extracting(Problem::path)
                .containsExactly("/runs/0/fittings/0/at_m");
    }

    @Test
    void onlyValvesAreOpenedAndShut() {
        Run run = aMain("main", false, new Point(0, 0, 2), new Point(1, 0, 2));
        assertThat(ofRun(fitted(run, new Run.Fitting("ball-valve", 0.5, OptionalDouble.of(0.5)))))
                .isEmpty();
        assertThat(ofRun(fitted(run, new Run.Fitting("union", 0.5, OptionalDouble.of(0.5)))))
                .extracting(Problem::path, Problem::found)
                .containsExactly(tuple("/runs/0/fittings/0/opening", "\"union\" is no valve and has no opening"));
    }

    @Test
    void pipeStaysInTheRoomUnlessABlowerStandsOutside() {
        Run run = aMain("main", false, new Point(0, 0, 2), new Point(0, 0, 4));
        assertThat(problems(aRoom().with(run)))
                .containsExactly(new Problem(
                        "/runs/0/points/1/z_m",
                        "4 is outside the room, whose height is 2.4",
                        "a number from 0 to 2.4"));
        assertThat(problems(aRoom().with(run).with(aBlower("attic").outside()))).isEmpty();
    }

    @Test
    void aListenerMaySitBehindAWall() {
        Point next = new Point(9, 2, 1.2);
        assertThat(problems(aRoom().with(new Listener("sofa", next, Optional.empty()))))
                .extracting(Problem::path)
                .containsExactly("/listener/place/x_m");
        assertThat(problems(aRoom().with(new Listener("sofa", next, Optional.of(new Listener.Partition("wall", 40))))))
                .isEmpty();
    }

    @Test
    void aRackMayStickOutOfTheRoomButNotStandOutside() {
        assertThat(problems(aRoom().with(aRack("A").at(5, 0)))).isEmpty(); // 2 m wide in a room of 6
        assertThat(problems(aRoom().with(aRack("A").at(5.6, 0).turned(Rack.Turn.QUARTER))))
                .isEmpty();
        assertThat(problems(aRoom().with(aRack("A").at(6.5, 0)).with(aRack("B").at(-2.1, 0))))
                .extracting(Problem::path)
                .containsExactly("/racks/0/x_m", "/racks/1/x_m");
    }
}
