package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.rack;
import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** Racks A (0 to 2 by 0 to 0.5 m) and B (3 to 5 by 1 to 1.5 m), a main from (0.2, 3) to (5, 3), a blower at (5.5, 3). */
final class SelectingTest {
    private static final Part A = Part.rack(new RackId("A"));
    private static final Part B = Part.rack(new RackId("B"));
    private static final Part MAIN = Part.run(new RunId("main"));
    private static final Part BLOWER = Part.blower(new BlowerId("central"));
    private static final Room ROOM = aRoom().with(aRack("A")
                    .shelf(
                            0.2,
                            aTank("1").with(anOutlet("a")),
                            aTank("2").at(0.7).with(anOutlet("b").device("stone-fine")))
                    .shelf(0.9, aTank("3").with(anOutlet("c"))))
            .with(aRack("B").at(3, 1).shelf(0.2, aTank("4")))
            .with(aMain("main", false, new Point(0.2, 3, 2.2), new Point(5, 3, 2.2)))
            .with(aBlower("central").at(5.5, 3, 1))
            .build();

    private static Part tank(String id) {
        return Part.tank(new TankId(id));
    }

    private static Part outlet(String id) {
        return Part.outlet(new OutletId(id));
    }

    @Test
    void aMarqueeTakesWhatLiesWithin() {
        assertThat(Selecting.within(ROOM, new Box(2.9, 0.9, 5.1, 1.6)).parts()).containsExactly(B);
        assertThat(Selecting.within(ROOM, new Box(2.9, 0.9, 4.9, 1.6)).parts()).isEmpty();
        assertThat(Selecting.within(ROOM, new Box(0, 2.9, 6, 3.1)).parts()).containsExactly(MAIN, BLOWER);
    }

    @Test
    void aMarqueeTakesWhatItTouches() {
        assertThat(Selecting.touching(ROOM, new Box(1.9, 0.4, 3.1, 1.1)).parts())
                .containsExactly(A, B);
        assertThat(Selecting.touching(ROOM, new Box(2, 2.9, 2.1, 3.1)).parts())
                .as("the middle of a leg")
                .containsExactly(MAIN);
        assertThat(Selecting.touching(ROOM, new Box(2, 3.1, 2.1, 3.2)).parts()).isEmpty();
    }

    @Test
    void aSlantedPipeIsTouchedOnlyWhereItRuns() {
        Room slanted = aRoom().with(aMain("main", false, new Point(0, 0, 2), new Point(4, 4, 2)))
                .build();
        assertThat(Selecting.touching(slanted, new Box(1.5, 1.5, 2, 2)).parts()).containsExactly(MAIN);
        assertThat(Selecting.touching(slanted, new Box(3, 0.5, 3.5, 1)).parts()).isEmpty();
    }

    @Test
    void aMarqueeInTheFrontViewTakesTanks() {
        // tank 1 and 2 stand on 0.2 m, 0.36 m high; tank 3 on 0.9 m
        assertThat(Selecting.touching(rack(ROOM, "A"), new Box(0.5, 0.3, 0.8, 0.5))
                        .parts())
                .containsExactly(tank("1"), tank("2"));
        assertThat(Selecting.touching(rack(ROOM, "A"), new Box(0, 0.7, 2, 2)).parts())
                .containsExactly(tank("3"));
    }

    @Test
    void allIsEverythingThatStandsOrHangs() {
        assertThat(Selecting.all(ROOM).parts()).containsExactly(A, B, MAIN, BLOWER);
        assertThat(Selecting.all(rack(ROOM, "A")).parts()).containsExactly(tank("1"), tank("2"), tank("3"));
    }

    @Test
    void theKeysWalkTheFloorRoundAndRound() {
        assertThat(Selecting.next(ROOM, Selection.NONE).parts()).containsExactly(A);
        assertThat(Selecting.next(ROOM, Selection.of(A)).parts()).containsExactly(B);
        assertThat(Selecting.next(ROOM, Selection.of(BLOWER)).parts()).containsExactly(A);
        assertThat(Selecting.previous(ROOM, Selection.of(A)).parts()).containsExactly(BLOWER);
        assertThat(Selecting.previous(ROOM, Selection.NONE).parts()).containsExactly(BLOWER);
    }

    @Test
    void theKeysWalkTanksAndOutletsWithinTheirRack() {
        assertThat(Selecting.next(ROOM, Selection.of(tank("3"))).parts()).containsExactly(tank("1"));
        assertThat(Selecting.next(ROOM, Selection.of(outlet("b"))).parts()).containsExactly(outlet("c"));
        assertThat(Selecting.next(ROOM, Selection.of(Part.corner(new RunId("main"), 1)))
                        .parts())
                .containsExactly(Part.corner(new RunId("main"), 0));
    }

    @Test
    void outletsAreAlikeByTheirDevice() {
        assertThat(Selecting.alike(ROOM, Selection.of(outlet("a"))).parts()).containsExactly(outlet("c"), outlet("a"));
        assertThat(Selecting.alike(ROOM, Selection.of(A)).parts()).containsExactly(B, A);
    }

    @Test
    void whatIsDeletedIsNoLongerChosen() {
        Selection both = Selection.of(A, B);
        Room after = after(ROOM, Deleting.of(ROOM, Selection.of(A)));
        assertThat(Selecting.still(after, both).parts()).containsExactly(B);
    }

    @Test
    void whatAnEditBringsCanBeChosen() {
        Room twice = after(ROOM, Copies.duplicate(ROOM, Selection.of(B)));
        assertThat(Selecting.added(ROOM, twice).parts()).containsExactly(Part.rack(new RackId("C")));
        Room added = after(
                ROOM,
                OutletEdits.add(
                        ROOM,
                        List.of(new TankId("4")),
                        Tried.CATALOGUE.device("stone-fine").orElseThrow()));
        assertThat(Selecting.added(ROOM, added).parts()).containsExactly(outlet("4-a"));
    }
}
