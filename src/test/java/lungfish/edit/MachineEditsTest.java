package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.blower;
import static lungfish.edit.Tried.done;
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
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Listener;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.RunId;
import lungfish.room.Shell;
import org.junit.jupiter.api.Test;

final class MachineEditsTest {
    private static final BlowerId HUM = new BlowerId("hum");
    private static final BlowerId BUZZ = new BlowerId("buzz");
    private static final OutletId A = new OutletId("a");
    private static final OutletId B = new OutletId("b");
    private static final Room ROOM = aRoom().with(
                    aRack("A").shelf(0.5, aTank("1").with(anOutlet("a")).with(anOutlet("b"))))
            .with(aBlower("hum").today("a", "b"))
            .with(aBlower("buzz").today())
            .with(aMain("main", false, new Point(0, 2, 2), new Point(4, 2, 2)))
            .build();

    @Test
    void aPlacedMachineSaysNoMoreThanWhereItStands() {
        Room placed = after(
                Rooms.empty(),
                MachineEdits.place(Rooms.empty(), Blower.Role.PLANNED, Optional.empty(), new Point(1, 1, 0.5)));
        Blower blower = blower(placed, "blower");
        assertThat(blower.machine()).isEmpty();
        assertThat(blower.feeds()).isEmpty();
        assertThat(blower.siting().place()).hasValue(new Point(1, 1, 0.5));
        assertThat(blower.fittings()).isEqualTo(Blower.Fittings.UNKNOWN);
    }

    @Test
    void machinesOfEachRoleHaveNamesOfTheirOwn() {
        Point place = new Point(1, 1, 0.5);
        Room one = after(ROOM, MachineEdits.place(ROOM, Blower.Role.STANDBY, Optional.empty(), place));
        Room two = after(
                one, MachineEdits.place(one, Blower.Role.STANDBY, CATALOGUE.blower("linear-diaphragm-40"), place));
        assertThat(two.blowers()).extracting(Blower::name).endsWith("Standby", "Standby 2");
        assertThat(blower(two, "standby-2").machine()).hasValue("linear-diaphragm-40");
    }

    @Test
    void anOutletHangsOnOnePumpOfToday() {
        Room served = after(ROOM, MachineEdits.serve(ROOM, BUZZ, List.of(B)));
        assertThat(blower(served, "hum").serves()).containsExactly(A);
        assertThat(blower(served, "buzz").serves()).containsExactly(B);
    }

    @Test
    void pipeMayLeaveTheRoomOnlyToABlowerOutside() {
        Room outside = after(ROOM, MachineEdits.standOutside(ROOM, HUM, OptionalDouble.of(30)));
        Room away = after(outside, MachineEdits.place(outside, HUM, new Point(-2, 2, 1)));
        Room piped = after(away, MainEdits.placeCorner(away, new RunId("main"), 0, new Point(-2, 2, 2)));
        assertThat(MachineEdits.standInside(piped, HUM).refused()).isPresent();
        assertThat(MainEdits.placeCorner(ROOM, new RunId("main"), 0, new Point(-2, 2, 2))
                        .refused())
                .isPresent();
    }

    @Test
    void aFeedStaysOnItsPipe() {
        Room fed = after(ROOM, MachineEdits.feed(ROOM, HUM, Optional.of(new Outlet.OnRun(new RunId("main"), 7))));
        assertThat(blower(fed, "hum").feeds()).hasValue(new Outlet.OnRun(new RunId("main"), 4));
        assertThat(MachineEdits.feed(ROOM, HUM, Optional.of(new Outlet.OnRun(new RunId("none"), 1)))
                        .refused())
                .isPresent();
    }

    @Test
    void aSlipOfSignOrUnitIsRefused() {
        assertThat(MachineEdits.count(ROOM, HUM, 0).refused()).isPresent();
        assertThat(MachineEdits.intakeK(ROOM, HUM, OptionalDouble.of(20)).refused())
                .as("20 °C taken for kelvin")
                .isPresent();
        assertThat(MachineEdits.bleed(ROOM, HUM, new Blower.BledTo(OptionalDouble.of(-5)))
                        .refused())
                .isPresent();
    }

    @Test
    void aDoorGoesIntoTheNearestWallAndFollowsIt() {
        Room door = after(ROOM, RoomEdits.addDoor(ROOM, 5.9, 2, 0.8));
        assertThat(door.shell().doors()).containsExactly(new Shell.Door(6, 1.6, 0.8));
        assertThat(after(door, RoomEdits.resize(door, 7, 4, 2.4)).shell().doors())
                .containsExactly(new Shell.Door(7, 1.6, 0.8));
        assertThat(after(door, RoomEdits.resize(door, 6, 2.2, 2.4)).shell().doors())
                .as("a shorter wall pushes it along")
                .containsExactly(new Shell.Door(6, 1.4, 0.8));
    }

    @Test
    void aRoomTooSmallForItsPipeIsRefused() {
        assertThat(sentence(RoomEdits.resize(ROOM, 3, 4, 2.4))).startsWith("That would lie outside the room.");
    }

    @Test
    void theListenerIsPlacedOnceAndThenMoved() {
        Room heard = after(ROOM, RoomEdits.listen(ROOM, new Point(1, 1, 1.2)));
        Room walled = after(heard, RoomEdits.partition(heard, Optional.of(new Listener.Partition("Wall", 30))));
        Room moved = after(walled, RoomEdits.listen(walled, new Point(2, 1, 1.2)));
        assertThat(moved.listener())
                .hasValue(new Listener(
                        "Listener", new Point(2, 1, 1.2), Optional.of(new Listener.Partition("Wall", 30))));
        assertThat(sentence(RoomEdits.partition(ROOM, Optional.empty()))).startsWith("Nobody listens yet.");
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(MachineEdits.place(ROOM, Blower.Role.TODAY, Optional.empty(), new Point(1, 1, 1)))
                        .done())
                .isEqualTo("Place a pump");
        assertThat(done(MachineEdits.count(ROOM, HUM, 2)).done()).isEqualTo("Set how many of Blower hum");
    }
}
