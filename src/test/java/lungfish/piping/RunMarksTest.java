package lungfish.piping;

import static lungfish.room.Rooms.aMain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lungfish.piping.RunMarks.Kind;
import lungfish.piping.RunMarks.Mark;
import lungfish.plan.DemoPlans;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

/** A square loop of 4 m, or a straight pipe of 4 m, and what comes to it. */
final class RunMarksTest {
    private static final Run LOOP =
            aMain("a", true, new Point(0, 0, 2), new Point(4, 0, 2), new Point(4, 4, 2), new Point(0, 4, 2));
    private static final Run PIPE = aMain("a", false, new Point(0, 0, 2), new Point(4, 0, 2));

    private static List<RunMarks> marks(Run... runs) {
        return RunMarks.of(DemoPlans.room("starting-out").withRuns(List.of(runs)), List.of());
    }

    private static List<String> fittings(RunMarks marks) {
        return marks.marks().stream()
                .filter(mark -> mark.kind() == Kind.FITTING)
                .map(Mark::fitting)
                .toList();
    }

    private static Run other(String id, Point... points) {
        return aMain(id, false, points);
    }

    @Test
    void aLoopHasAnElbowAtEachCornerItsFirstToo() {
        assertThat(marks(LOOP).get(0).marks()).extracting(Mark::alongM).containsExactly(0.0, 4.0, 8.0, 12.0);
        assertThat(fittings(marks(LOOP).get(0))).containsOnly("elbow-90");
    }

    @Test
    void anOpenRunIsCappedAtBothEnds() {
        assertThat(marks(PIPE).get(0).marks()).extracting(Mark::kind).containsExactly(Kind.OPEN, Kind.OPEN);
        assertThat(marks(PIPE).get(0).marks()).extracting(Mark::fitting).containsOnly("cap");
    }

    @Test
    void aRunThatComesToTheMiddleOfALegTakesATee() {
        List<RunMarks> marks = marks(LOOP, other("b", new Point(2, 0, 2), new Point(2, 1, 2)));
        assertThat(fittings(marks.get(0)))
                .containsExactly("elbow-90", "tee-branch", "elbow-90", "elbow-90", "elbow-90");
        assertThat(marks.get(1).marks()).extracting(Mark::kind).containsExactly(Kind.INTO_OTHER, Kind.OPEN);
    }

    /** In line with a leg: the tee's run goes on, its branch is the other leg. */
    @Test
    void aRunThatGoesStraightOnAtACornerMakesItATee() {
        List<RunMarks> marks = marks(LOOP, other("b", new Point(6, 0, 2), new Point(4, 0, 2)));
        assertThat(fittings(marks.get(0))).containsExactly("elbow-90", "tee-branch", "elbow-90", "elbow-90");
    }

    /** From above, square to both legs: no tee has three such ways, so it takes an elbow and a tee. */
    @Test
    void aRunThatComesSquareToACornerTakesATeeBesideTheElbow() {
        List<RunMarks> marks = marks(LOOP, other("b", new Point(4, 0, 3), new Point(4, 0, 2)));
        assertThat(fittings(marks.get(0)))
                .containsExactlyInAnyOrder("elbow-90", "elbow-90", "tee-branch", "elbow-90", "elbow-90");
    }

    @Test
    void twoRunsEndToEndAreCoupledOrTurned() {
        Run on = other("b", new Point(4, 0, 2), new Point(6, 0, 2));
        Run round = other("b", new Point(4, 0, 2), new Point(4, 2, 2));
        assertThat(joint(marks(PIPE, on))).containsExactly("coupling");
        assertThat(joint(marks(PIPE, round))).containsExactly("elbow-90");
    }

    /** The fittings of both runs: the joint is counted once. */
    private static List<String> joint(List<RunMarks> marks) {
        return marks.stream().flatMap(each -> fittings(each).stream()).toList();
    }

    @Test
    void aHoseComesToAnEndOrToATee() {
        Outlet.OnRun end = new Outlet.OnRun(new RunId("a"), 0);
        Outlet.OnRun middle = new Outlet.OnRun(new RunId("a"), 1.5);
        var room = DemoPlans.room("starting-out").withRuns(List.of(PIPE));
        assertThat(RunMarks.of(room, List.of(end)).get(0).marks())
                .extracting(Mark::kind)
                .containsExactly(Kind.FED, Kind.OPEN);
        assertThat(fittings(RunMarks.of(room, List.of(middle)).get(0))).containsExactly("tee-branch");
    }

    @Test
    void placesAreToldFromTheCornerBefore() {
        RunMarks loop = marks(LOOP).get(0);
        assertThat(loop.cornerNumber(3.9)).isEqualTo(1);
        assertThat(loop.cornerNumber(4.5)).isEqualTo(2);
        assertThat(loop.cornerBeforeM(4.5)).isEqualTo(4, within(1e-12));
        assertThat(loop.cornerNumber(15)).isEqualTo(4);
        assertThat(loop.cornerBeforeM(15)).isEqualTo(12, within(1e-12));
    }
}
