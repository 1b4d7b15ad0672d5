package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.sentence;
import static org.assertj.core.api.Assertions.assertThat;

import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Shell;
import org.junit.jupiter.api.Test;

/** Doors and inner walls of a room of 6 by 4 m. */
final class WallEditsTest {
    private static final Room ROOM = walled();

    private static Room walled() {
        Room doored = after(Rooms.empty(), RoomEdits.addDoor(Rooms.empty(), 2, 0, 0.8));
        return after(doored, RoomEdits.addWall(doored, 4, 0, 4, 2));
    }

    private static Shell.Door door(Room room) {
        return room.shell().doors().get(0);
    }

    @Test
    void aDoorGoesRoundTheCornerToTheNearestWall() {
        assertThat(door(ROOM)).isEqualTo(new Shell.Door(1.6, 0, 0.8));
        // 0.8 m wide, its middle at 2.5 m: it begins at 2.1 m
        assertThat(door(after(ROOM, RoomEdits.placeDoor(ROOM, 0, 5.9, 2.5)))).isEqualTo(new Shell.Door(6, 2.1, 0.8));
    }

    @Test
    void aDoorStandsWhereItIsTyped() {
        Room slid = after(ROOM, RoomEdits.slideDoor(ROOM, 0, 0.3));
        assertThat(door(slid)).isEqualTo(new Shell.Door(0.3, 0, 0.8));
        assertThat(RoomEdits.doorFromM(slid.shell(), door(slid))).isEqualTo(0.3);
    }

    @Test
    void aDoorStaysInItsWall() {
        // the wall is 6 m long, the door 0.8 m wide
        assertThat(sentence(RoomEdits.slideDoor(ROOM, 0, 5.5))).startsWith("The door would reach beyond its wall");
        assertThat(sentence(RoomEdits.doorWidth(ROOM, 0, 4.5))).startsWith("The door would reach beyond its wall");
        assertThat(sentence(RoomEdits.slideDoor(ROOM, 1, 1))).isEqualTo("No door is chosen. Choose one first.");
    }

    @Test
    void anInnerWallHasItsEndsWhereTheyArePut() {
        Room moved = after(ROOM, RoomEdits.placeWall(ROOM, 0, 4, 0, 4, 4));
        assertThat(moved.shell().walls().get(0).toYM()).isEqualTo(4);
        assertThat(sentence(RoomEdits.placeWall(ROOM, 0, 4, 2, 4, 2))).startsWith("A wall needs two ends");
    }
}
