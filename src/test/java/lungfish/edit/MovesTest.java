package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.blower;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.outlet;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.run;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.BlowerId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shell;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/**
 * A main from (0.2, 0.2) by (4, 0.2) to (4, 3), at 2.2 m; a branch from its middle leg at (4, 1) to (2, 1). An outlet taps
 * the main 1 m along, the blower feeds its start, a door stands in the wall at y = 0.
 */
final class MovesTest {
    private static final double Z = 2.2;
    private static final RunId MAIN = new RunId("main");
    private static final Room ROOM = aRoom().with(aRack("A")
                    .at(0.5, 0)
                    .shelf(
                            0.9,
                            aTank("A-1").with(anOutlet("a").onRun("main", 1)).with(anOutlet("b"))))
            .with(aMain("main", false, at(0.2, 0.2), at(4, 0.2), at(4, 3)))
            .with(aMain("branch", false, at(4, 1), at(2, 1)))
            .with(aBlower("central").at(0.2, 0.2, 2.1).feeds("main", 0))
            .with(new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(new Shell.Door(5, 0, 0.8)), List.of()))
            .build();

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, Z);
    }

    private static Room moved(Part part, double dxM, double dyM) {
        return after(ROOM, Moves.by(ROOM, Selection.of(part), dxM, dyM));
    }

    private static double tapM(Room room) {
        return ((Outlet.OnRun) outlet(room, "a").tap().orElseThrow()).atM();
    }

    @Test
    void aRackMovesAndItsTapStays() {
        Room moved = moved(Part.rack(new RackId("A")), 0.3, 0.2);
        assertThat(rack(moved, "A").xM()).isEqualTo(0.8);
        assertThat(rack(moved, "A").yM()).isEqualTo(0.2);
        assertThat(moved.runs()).isEqualTo(ROOM.runs());
        assertThat(tapM(moved)).isEqualTo(1);
    }

    @Test
    void stepsLeaveNoDustBehind() {
        Room room = ROOM;
        for (int i = 0; i < 3; i++) {
            room = after(room, Moves.by(room, Selection.of(Part.rack(new RackId("A"))), 0.1, 0.00635)); // 1/4 in
        }
        assertThat(rack(room, "A").xM()).isEqualTo(0.8);
        assertThat(rack(room, "A").yM()).isEqualTo(0.01905);
    }

    @Test
    void aWholePipeCarriesItsTapsAndTheBranchFollows() {
        Room moved = moved(Part.run(MAIN), 0.5, 0.1);
        assertThat(run(moved, "main").points()).containsExactly(at(0.7, 0.3), at(4.5, 0.3), at(4.5, 3.1));
        assertThat(tapM(moved)).isEqualTo(1);
        assertThat(run(moved, "branch").points()).containsExactly(at(4.5, 1.1), at(2, 1));
    }

    @Test
    void aBranchThatMovesAlongIsNotDraggedTwice() {
        Room moved = after(ROOM, Moves.by(ROOM, Selection.of(Part.run(MAIN), Part.run(new RunId("branch"))), 0.5, 0.1));
        assertThat(run(moved, "branch").points()).containsExactly(at(4.5, 1.1), at(2.5, 1.1));
    }

    @Test
    void aCornerMovesAndTapsStayWhereTheyWereAsNearAsThePipeAllows() {
        // the corner (4, 0.2) goes to (4, 1.2): the first leg now runs from (0.2, 0.2), rising 1 in 3.8. The tap was at
        // (1.2, 0.2): its foot on the leg is 1 × 3.8 / √(3.8² + 1²) = 0.96707 m along
        Room moved = moved(Part.corner(MAIN, 1), 0, 1);
        assertThat(run(moved, "main").points().get(1)).isEqualTo(at(4, 1.2));
        assertThat(tapM(moved)).isEqualTo(0.96707);
    }

    @Test
    void aTapSlidesAlongItsPipe() {
        assertThat(tapM(moved(Part.tap(new OutletId("a")), 0.7, 0.5))).isEqualTo(1.7);
    }

    @Test
    void aTapThatWasTheNearestPointIsNowWhereItWasPut() {
        // outlet b is the second of two on the tank 0.6 m long at 0.5 m: its rim is at 0.5 + 0.6 × 2/3 = 0.9 m, so 0.7
        // m
        // along the main, and 1.2 m after half a metre
        Room moved = moved(Part.tap(new OutletId("b")), 0.5, 0);
        assertThat(outlet(moved, "b").tap()).hasValue(new Outlet.OnRun(MAIN, 1.2));
        assertThat(outlet(moved, "a")).as("the other tap stays").isEqualTo(outlet(ROOM, "a"));
    }

    @Test
    void aBlowerMovesAndStillFeedsTheSamePlace() {
        Room moved = moved(Part.blower(new BlowerId("central")), 1, 1);
        assertThat(blower(moved, "central").siting().place()).hasValue(new Point(1.2, 1.2, 2.1));
        assertThat(blower(moved, "central").feeds()).isEqualTo(Optional.of(new Outlet.OnRun(MAIN, 0)));
    }

    @Test
    void aDoorSlidesInItsWallAndStopsAtTheCorner() {
        assertThat(moved(Part.door(0), -1, 2).shell().doors()).containsExactly(new Shell.Door(4, 0, 0.8));
        assertThat(moved(Part.door(0), 3, 0).shell().doors()).containsExactly(new Shell.Door(5.2, 0, 0.8));
    }

    @Test
    void pipeOutOfTheRoomIsRefused() {
        assertThat(sentence(Moves.by(ROOM, Selection.of(Part.run(MAIN)), 0, -1)))
                .startsWith("That would lie outside the room.");
    }

    @Test
    void tanksAreNotMovedOverTheFloor() {
        assertThat(sentence(Moves.by(ROOM, Selection.of(Part.tank(new TankId("A-1"))), 1, 1)))
                .startsWith("Nothing that is chosen can be moved over the floor.");
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(Moves.by(ROOM, Selection.of(Part.rack(new RackId("A"))), 1, 1))
                        .done())
                .isEqualTo("Move rack A");
        assertThat(done(Moves.by(ROOM, Selection.of(Part.door(0), Part.run(MAIN)), 0.1, 0))
                        .done())
                .isEqualTo("Move 2 parts");
        assertThat(done(Moves.by(ROOM, Selection.of(Part.corner(MAIN, 0)), 0.1, 0))
                        .done())
                .isEqualTo("Move a corner of pipe main");
    }

    /** A figure of eight in one line would let a branch chase itself; two runs that touch each other end to end must not. */
    @Test
    void runsThatTouchEachOtherFollowOnce() {
        Run one = aMain("one", false, at(1, 1), at(2, 1));
        Run two = aMain("two", false, at(2, 1), at(3, 1));
        Room room = aRoom().with(one).with(two).build();
        Room moved = after(room, Moves.by(room, Selection.of(Part.run(one.id())), 0, 0.5));
        assertThat(run(moved, "one").points()).containsExactly(at(1, 1.5), at(2, 1.5));
        assertThat(run(moved, "two").points()).containsExactly(at(2, 1.5), at(3, 1));
    }
}
