package lungfish.build;

import static lungfish.room.Rooms.aMain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.ThreadClass;
import lungfish.piping.RunMarks;
import lungfish.plan.DemoPlans;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Building;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PiecesTest {
    private static final String PIPE = "pvc-u-25-pn16";

    private static Room room(Run... runs) {
        return DemoPlans.room("starting-out").withRuns(List.of(runs));
    }

    private static Run straight(double lengthM) {
        return aMain("long", false, new Point(0, 1, 2), new Point(lengthM, 1, 2))
                .sized(PIPE);
    }

    private static Ways ways(Room room) {
        return new Ways(room, DemoPlans.CATALOGUE);
    }

    private static Pieces pieces(Room room, TapPlace... taps) {
        return Pieces.of(RunMarks.of(room, List.of()), ways(room), List.of(taps));
    }

    private static TapPlace tap(double alongM, boolean typed) {
        return new TapPlace(new RunId("long"), alongM, List.of(new OutletId("o")), Optional.empty(), 0.004, typed);
    }

    /** 12 m between two caps, out of 5 m: 5 + 5 + rest; each of the two couplings keeps 2 × 3 mm between the pipe ends. */
    @Test
    void aPieceLongerThanTheStockIsJoinedByCouplings() {
        Pieces pieces = pieces(room(straight(12)));
        assertThat(pieces.pieces())
                .extracting(Piece::cutM)
                .satisfiesExactly(
                        first -> assertThat(first).isEqualTo(5),
                        second -> assertThat(second).isEqualTo(5),
                        third -> assertThat(third).isEqualTo(1.988, within(1e-9)));
        assertThat(pieces.couplings()).containsEntry(PIPE, 2);
    }

    /** The coupling would sit at 5.003 m: a tap at 5 m makes it give way by its socket of 18.5 mm and 20 mm for the tap. */
    @Test
    void aCouplingKeepsClearOfATap() {
        Pieces pieces = pieces(room(straight(8)), tap(5.0, true));
        double jointM = pieces.pieces().get(0).end().atM();
        assertThat(Math.abs(jointM - 5.0)).isGreaterThan(0.0185 + 0.02);
        assertThat(pieces.pieces().stream().mapToDouble(Piece::cutM).sum()).isEqualTo(8 - 0.006, within(1e-9));
    }

    /**
     * A union 30 mm from an elbow: 30 − 13.5 − 8.75 = 7.75 mm are left, two sockets of 18.5 mm take 37: 29.25 mm more are
     * wanted.
     */
    @Test
    void fittingsThatSitTooCloseAreTold() {
        Run bent = aMain("bent", false, new Point(0, 0, 2), new Point(2, 0, 2), new Point(2, 2, 2))
                .sized(PIPE)
                .fitted(List.of(new Run.Fitting("union", 2.03, OptionalDouble.empty())));
        Pieces pieces = pieces(room(bent));
        assertThat(pieces.findings()).singleElement().satisfies(found -> {
            assertThat(found.code()).isEqualTo(Code.PIECE_TOO_SHORT);
            assertThat(amount(found, "found")).isEqualTo(0.00775, within(1e-9));
            assertThat(amount(found, "missing")).isEqualTo(0.02925, within(1e-9));
        });
        assertThat(pieces.pieces().get(1).cutM()).isEqualTo(0.037, within(1e-9));
    }

    private static double amount(Finding found, String name) {
        return found.amounts().stream()
                .filter(amount -> amount.name().equals(name))
                .findFirst()
                .orElseThrow()
                .si();
    }

    /** The cap's socket is 18.5 mm, and a tap wants 20 mm beside it: from 1.962 m on it is too close to the end at 2 m. */
    @ParameterizedTest
    @CsvSource({"1.95, 1.95, 0", "1.98, 1.9615, 0", "1.98, 1.98, 1"})
    void aTapKeepsClearOfSocketsUnlessItsPlaceIsTyped(double drawnM, double placedM, int told) {
        Room room = room(straight(2));
        List<RunMarks> marks = RunMarks.of(room, List.of());
        Taps taps = Taps.of(
                List.of(tap(drawnM, told > 0)), marks, pieces(room), ways(room), new Walls(ways(room), List.of()));
        assertThat(taps.taps()).singleElement().satisfies(tap -> assertThat(tap.alongM())
                .isEqualTo(placedM, within(1e-9)));
        assertThat(taps.findings())
                .filteredOn(found -> found.code() == Code.TAP_AT_FITTING)
                .hasSize(told);
    }

    /**
     * Walls by ASTM D1785: Schedule 80 of 1 in 4.55 mm, Schedule 40 of 1 1/4 in 3.56 mm and of 1 in 3.38 mm. L1 of NPT 1/8 is
     * 0.1615 in = 4.10 mm; four turns of 10-32 are 3.175 mm. No thread in Schedule 40, nor above 110 °F (43 °C): a pipe maker's
     * table.
     */
    @ParameterizedTest
    @CsvSource({
        "pvc-sch80-1in, npt-1-8, 297, WALL, ",
        "pvc-sch80-1in, npt-1-4, 297, SADDLE, WALL_THIN_FOR_THREAD",
        "pvc-sch80-1in, npt-1-8, 320, SADDLE, NO_THREAD_IN_WARM_PIPE",
        "pvc-sch40-1-1-4in, npt-1-8, 297, SADDLE, WALL_THIN_FOR_THREAD",
        "pvc-sch40-1in, unf-10-32, 297, SADDLE, NO_THREAD_IN_SCHEDULE_40",
        "copper-22, m5, 297, SADDLE, WALL_THIN_FOR_THREAD"
    })
    void aThreadWantsAWallThatHoldsIt(String pipe, String thread, double warmK, Tap.Hold hold, String told) {
        Run run = straight(2).sized(pipe).surroundedBy(OptionalDouble.of(warmK));
        ThreadClass kind = DemoPlans.CATALOGUE.building().thread(thread).orElseThrow();
        Walls.Verdict verdict = new Walls(ways(room(run)), List.of()).of(run, kind);
        assertThat(verdict.hold()).isEqualTo(hold);
        assertThat(verdict.findings())
                .extracting(found -> found.code().name())
                .isEqualTo(told == null ? List.of() : List.of(told));
    }

    @Test
    void theThreadIsAsSaid() {
        Room room = room(straight(2)).withBuilding(Building.UNKNOWN.withThread(Optional.of("m6")));
        assertThat(ways(room).thread().id()).isEqualTo("m6");
        assertThat(ways(room).thread(0.008).id()).isEqualTo("m6");
        assertThat(ways(room(straight(2))).thread(0.008).id()).isEqualTo("g-1-4");
    }
}
