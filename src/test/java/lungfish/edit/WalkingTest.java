package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

/** A room of 6 by 4 m: rack A from 1 to 3 m, a main of 4.8 m with a tap at 1 m and a valve at 2 m, a door, an inner wall. */
final class WalkingTest {
    private static final RunId MAIN = new RunId("main");
    private static final Part RACK = Part.rack(new RackId("A"));
    private static final Part RUN = Part.run(MAIN);
    private static final Part TAP = Part.tap(new OutletId("a"));
    private static final Part VALVE = Part.fitting(MAIN, 0);
    private static final Room ROOM = furnished();

    private static Room furnished() {
        Room room = aRoom().with(aRack("A")
                        .at(1, 1)
                        .shelf(0.5, aTank("1").with(anOutlet("a").onRun("main", 1))))
                .with(aMain("main", false, new Point(0.2, 3, 2.2), new Point(5, 3, 2.2)))
                .build();
        room = after(
                room,
                FittingEdits.insert(
                        room, MAIN, 2, CATALOGUE.fitting("ball-valve").orElseThrow()));
        room = after(room, RoomEdits.addDoor(room, 3, 0, 0.8));
        return after(room, RoomEdits.addWall(room, 4, 0, 4, 2));
    }

    private static Part lead(Selection chosen) {
        return chosen.lead().orElseThrow();
    }

    @Test
    void theFloorIsWalkedThenDoorsAndInnerWallsAndRoundAgain() {
        List<Part> walked = new ArrayList<>();
        Selection at = Selection.NONE;
        for (int i = 0; i < 5; i++) {
            at = Walking.along(ROOM, at, 1);
            walked.add(lead(at));
        }
        assertThat(walked).containsExactly(RACK, RUN, Part.door(0), Part.wall(0), RACK);
        assertThat(lead(Walking.along(ROOM, Selection.of(RACK), -1))).isEqualTo(Part.wall(0));
    }

    @Test
    void downFromAPipeIsWhatSitsOnItFromItsStart() {
        List<Part> walked = new ArrayList<>();
        Selection at = Walking.down(ROOM, Selection.of(RUN));
        for (int i = 0; i < 4; i++) {
            walked.add(lead(at));
            at = Walking.along(ROOM, at, 1);
        }
        assertThat(walked).containsExactly(Part.corner(MAIN, 0), TAP, VALVE, Part.corner(MAIN, 1));
    }

    @Test
    void upFromAValveIsItsPipe() {
        assertThat(lead(Walking.up(ROOM, Selection.of(VALVE)))).isEqualTo(RUN);
        assertThat(lead(Walking.up(ROOM, Selection.of(TAP)))).isEqualTo(RUN);
        assertThat(lead(Walking.up(ROOM, Selection.of(RUN)))).isEqualTo(RACK);
    }

    @Test
    void jumpsGoFromEdgeToEdge() {
        // across: walls at 0 and 6, the rack's sides at 1 and 3, the main's ends at 0.2 and 5
        List<Double> stops = new ArrayList<>();
        for (double at = 0; at < 6; at = Jumps.next(ROOM, at, true, 1)) {
            stops.add(at);
        }
        assertThat(stops).containsExactly(0.0, 0.2, 1.0, 3.0, 5.0);
        assertThat(Jumps.next(ROOM, 0.5, true, -1)).isEqualTo(0.2);
        assertThat(Jumps.next(ROOM, 6, true, 1)).isEqualTo(6);
    }
}
