package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.run;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.FittingClass;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

/** Valves in the pipe; the main has a ball valve at 1 m, a union at 2 m and a gate valve at 3 m. */
final class ValveEditsTest {
    private static final RunId MAIN = new RunId("main");
    private static final ValveEdits VALVES = new ValveEdits(CATALOGUE);
    private static final Room ROOM = fitted();
    private static final Selection BALL = Selection.of(Part.fitting(MAIN, 0));
    private static final Selection UNION = Selection.of(Part.fitting(MAIN, 1));

    private static FittingClass kind(String id) {
        return CATALOGUE.fitting(id).orElseThrow();
    }

    private static Room fitted() {
        Run main = new Run(
                MAIN,
                "Main",
                Run.Role.MAIN,
                "pvc-u-32-pn10",
                false,
                List.of(new Point(0, 1, 2), new Point(5, 1, 2)),
                List.of());
        Room room = aRoom().with(main).build();
        room = after(room, FittingEdits.insert(room, MAIN, 1, kind("ball-valve")));
        room = after(room, FittingEdits.insert(room, MAIN, 2, kind("union")));
        return after(room, FittingEdits.insert(room, MAIN, 3, kind("gate-valve")));
    }

    private static OptionalDouble opening(Room room, int number) {
        return run(room, "main").fittings().get(number).opening();
    }

    @Test
    void anOpenValveIsShutAndAShutOneOpened() {
        Room shut = after(ROOM, VALVES.turn(ROOM, BALL));
        assertThat(opening(shut, 0)).hasValue(0);
        assertThat(opening(shut, 2)).isEmpty();
        assertThat(opening(after(shut, VALVES.turn(shut, BALL)), 0)).hasValue(1);
        assertThat(done(VALVES.turn(ROOM, BALL)).done()).isEqualTo("Shut a fitting of pipe Main");
    }

    @Test
    void whatIsNoValveCannotBeShut() {
        assertThat(sentence(VALVES.turn(ROOM, UNION))).startsWith("Only a valve can be opened");
        assertThat(sentence(VALVES.set(ROOM, BALL, OptionalDouble.of(1.2)))).contains("up to 100 %");
    }

    @Test
    void ofSeveralFittingsTheValvesAreSet() {
        Selection all = Selection.of(Part.fitting(MAIN, 0), Part.fitting(MAIN, 1), Part.fitting(MAIN, 2));
        Room half = after(ROOM, VALVES.set(ROOM, all, OptionalDouble.of(0.5)));
        assertThat(opening(half, 0)).hasValue(0.5);
        assertThat(opening(half, 1)).isEmpty();
        assertThat(opening(half, 2)).hasValue(0.5);
    }

    @Test
    void aValveThatBecomesAnotherStaysAsFarOpenAndAUnionHasNoSetting() {
        Room half = after(ROOM, VALVES.set(ROOM, BALL, OptionalDouble.of(0.5)));
        Room gate = after(half, FittingEdits.kind(half, MAIN, 0, kind("gate-valve")));
        assertThat(run(gate, "main").fittings().get(0))
                .isEqualTo(new Run.Fitting("gate-valve", 1, OptionalDouble.of(0.5)));
        Room union = after(half, FittingEdits.kind(half, MAIN, 0, kind("union")));
        assertThat(opening(union, 0)).isEmpty();
    }

    @Test
    void whatIsFittedWhereNoPipeIsIsRefused() {
        assertThat(sentence(FittingEdits.insert(ROOM, Optional.empty(), kind("union"))))
                .isEqualTo("There is no pipe at that place. Click on a pipe; draw it first.");
        Room more = after(ROOM, FittingEdits.insert(ROOM, Optional.of(new Outlet.OnRun(MAIN, 4)), kind("gauge")));
        assertThat(Selecting.added(ROOM, more).parts()).containsExactly(Part.fitting(MAIN, 3));
    }
}
