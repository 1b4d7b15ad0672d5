package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** In a room of 6 by 4 m: rack A of 2 by 0.5 m in the first corner, with a tank of 0.6 m at its left end; rack B like it at (3, 1), empty. */
final class RackEditsTest {
    private static final RackId A = new RackId("A");
    private static final RackId B = new RackId("B");
    private static final Room ROOM = aRoom().with(
                    aRack("A").shelf(0.3, aTank("A-1").at(0.1)))
            .with(aRack("B").at(3, 1))
            .build();

    @Test
    void exactPlacesAreTakenAsTyped() {
        Rack placed = rack(after(ROOM, RackEdits.place(ROOM, B, 1.2345678, 0.7)), "B");
        assertThat(placed.xM()).isEqualTo(1.2345678);
        assertThat(placed.yM()).isEqualTo(0.7);
    }

    @Test
    void aRackOutsideTheRoomIsRefused() {
        assertThat(sentence(RackEdits.place(ROOM, B, 6.5, 1)))
                .isEqualTo("Rack B would stand outside the room. Keep a part of it within the walls.");
    }

    @Test
    void aRackMayStickOutOfTheRoom() {
        assertThat(rack(after(ROOM, RackEdits.place(ROOM, B, 5, 1)), "B").xM()).isEqualTo(5);
    }

    @Test
    void aRackTooShortForItsTanksIsRefused() {
        // the tank ends at 0.1 + 0.6 = 0.7 m
        assertThat(sentence(RackEdits.resize(ROOM, A, 0.65, 0.5)))
                .isEqualTo(
                        "Tank A-1 would end 70 cm from the left, beyond its shelf (65 cm). Take a shorter tank, or make"
                                + " the rack wider.");
        assertThat(rack(after(ROOM, RackEdits.resize(ROOM, A, 0.7, 0.4)), "A").widthM())
                .isEqualTo(0.7);
    }

    @Test
    void aQuarterTurnKeepsTheMiddleAndSwapsTheSpans() {
        // B covers 3 to 5 by 1 to 1.5: its middle is (4, 1.25); turned it covers 3.75 to 4.25 by 0.25 to 2.25
        Rack turned = rack(after(ROOM, RackEdits.turn(ROOM, List.of(B), 1)), "B");
        assertThat(Box.of(turned)).isEqualTo(new Box(3.75, 0.25, 4.25, 2.25));
        assertThat(turned.turn()).isEqualTo(Rack.Turn.QUARTER);
    }

    @Test
    void twoRacksTurnAboutTheirCommonMiddle() {
        // A covers 0..2 by 0..0.5, B 3..5 by 1..1.5: around both 0..5 by 0..1.5, middle (2.5, 0.75). A's middle lies
        // (-1.5,
        // -0.5) from it; clockwise on a page whose y goes down, (x, y) becomes (-y, x): (0.5, -1.5), so (3, -0.75)
        Rack turned = rack(after(ROOM, RackEdits.turn(ROOM, List.of(A, B), 1)), "A");
        assertThat(Box.of(turned)).isEqualTo(new Box(2.75, -1.75, 3.25, 0.25));
    }

    @Test
    void fourQuartersAreNone() {
        assertThat(after(ROOM, RackEdits.turn(ROOM, List.of(A, B), 4))).isEqualTo(ROOM);
        Room once = after(ROOM, RackEdits.turn(ROOM, List.of(A, B), 1));
        assertThat(after(once, RackEdits.turn(once, List.of(A, B), -1))).isEqualTo(ROOM);
    }

    @Test
    void aStretchedRackTakesUpTheRectangle() {
        Room turned = after(ROOM, RackEdits.turn(ROOM, List.of(B), 1));
        Rack stretched = rack(after(turned, RackEdits.stretch(turned, B, new Box(3, 0, 3.6, 3))), "B");
        assertThat(Box.of(stretched)).isEqualTo(new Box(3, 0, 3.6, 3));
        assertThat(stretched.widthM()).isEqualTo(3);
        assertThat(stretched.depthM()).isEqualTo(0.6);
    }

    @Test
    void plannedRacksArePlannedUntilTheyAreInPlace() {
        Room planned = after(ROOM, RackEdits.markPlanned(ROOM, List.of(A, B)));
        assertThat(planned.racks()).allMatch(Rack::isPlanned);
        assertThat(after(planned, RackEdits.markInPlace(planned, List.of(A, B))))
                .isEqualTo(ROOM);
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(RackEdits.place(ROOM, B, 1, 1)).done()).isEqualTo("Move rack B");
        assertThat(done(RackEdits.turn(ROOM, List.of(A, B), 1)).done()).isEqualTo("Turn 2 racks");
    }

    @Test
    void aNameIsOneLineOfText() {
        assertThat(rack(after(ROOM, RackEdits.rename(ROOM, B, "Fry")), "B").name())
                .isEqualTo("Fry");
        assertThat(sentence(RackEdits.rename(ROOM, B, "two\nlines"))).startsWith("A name is one line of text.");
    }

    @Test
    void aRackThatIsNotThereIsRefused() {
        assertThat(sentence(RackEdits.place(ROOM, new RackId("Z"), 1, 1)))
                .isEqualTo("No rack is chosen. Choose one first.");
    }

    @Test
    void racksThatDoNotChangeAreShared() {
        assertThat(rack(after(ROOM, RackEdits.place(ROOM, B, 1, 1)), "A")).isSameAs(rack(ROOM, "A"));
    }
}
