package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.outlet;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.sentence;
import static lungfish.edit.Tried.tank;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Run;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** Rack A of 2 by 0.5 m in the corner with a tank of 0.6 m and 0.3 m of water; its outlet lies 0.25 m deep, 0.05 m above the bottom. */
final class ClipTest {
    private static final Room ROOM = aRoom().with(aRack("A")
                    .shelf(
                            0.9,
                            aTank("A-s1-1")
                                    .with(anOutlet("A-s1-1-a")
                                            .onRun("main", 1)
                                            .airline("airline-4-6", 2)
                                            .valve("needle-brass", 0.5)),
                            aTank("low").at(0.7).waterDepthM(0.04)))
            .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
            .build();
    private static final Selection RACK = Selection.of(Part.rack(new RackId("A")));

    private static Clip outlets() {
        return Clip.of(ROOM, Selection.of(Part.outlet(new OutletId("A-s1-1-a"))));
    }

    @Test
    void aPastedRackHasIdsAndNamesOfItsOwn() {
        Rack copy = rack(after(ROOM, Clip.of(ROOM, RACK).ontoFloor(ROOM, 2.5, 1)), "B");
        assertThat(copy.name()).isEqualTo("Rack B");
        assertThat(copy.xM()).isEqualTo(2.5);
        assertThat(copy.yM()).isEqualTo(1);
        assertThat(copy.tanks()).extracting(tank -> tank.id().text()).containsExactly("B-1-1", "B-1-2");
        assertThat(copy.tanks()).extracting(Tank::name).containsExactly("Tank B-1-1", "Tank B-1-2");
    }

    @Test
    void whatBelongsToAPlaceIsNotCopied() {
        Outlet copy = outlet(after(ROOM, Clip.of(ROOM, RACK).ontoFloor(ROOM, 2.5, 1)), "B-1-1-a");
        assertThat(copy.tap()).isEmpty();
        assertThat(copy.airline()).hasValue(new Outlet.Airline(Optional.of("airline-4-6"), OptionalDouble.empty()));
        assertThat(copy.valve()).hasValue(new Outlet.Valve("needle-brass", OptionalDouble.empty()));
        assertThat(copy.depthM()).hasValue(0.25);
    }

    @Test
    void aClipOutlivesItsRoom() {
        Clip clip = Clip.of(ROOM, RACK);
        assertThat(after(Rooms.empty(), clip.ontoFloor(Rooms.empty(), 0, 0)).racks())
                .hasSize(1);
    }

    @Test
    void pastingTwiceGivesTwoRacks() {
        Clip clip = Clip.of(ROOM, RACK);
        Room once = after(ROOM, clip.ontoFloor(ROOM, 2.5, 1));
        assertThat(after(once, clip.ontoFloor(once, 2.5, 2)).racks())
                .extracting(Rack::name)
                .containsExactly("Rack A", "Rack B", "Rack C");
    }

    @Test
    void aPastedOutletHangsAsHighAboveTheBottom() {
        // 0.05 m above the bottom of a tank filled 0.04 m deep would be in the air: at the water line then
        Room pasted = after(ROOM, outlets().intoTanks(ROOM, List.of(new TankId("A-s1-1"), new TankId("low"))));
        assertThat(outlet(pasted, "A-s1-1-b").depthM()).hasValue(0.25);
        assertThat(outlet(pasted, "low-a").depthM()).hasValue(0);
    }

    @Test
    void pastedTanksFillTheGapsOfAShelf() {
        // tanks at 0 to 0.6 and 0.7 to 1.3 m; the shelf ends at 2 m: the gap of 0.7 m holds 0.6 m with 0.02 m to the
        // left
        Clip clip = Clip.of(ROOM, Selection.of(Part.tank(new TankId("A-s1-1"))));
        Room pasted = after(ROOM, clip.ontoShelf(ROOM, new ShelfId("A-s1")));
        assertThat(tank(pasted, "A-s1-2").xM()).isEqualTo(1.32);
        assertThat(sentence(clip.ontoShelf(pasted, new ShelfId("A-s1"))))
                .isEqualTo(
                        "No gap on that shelf of rack A is 60 cm long. Take a shorter tank, another shelf, or make the"
                                + " rack wider.");
    }

    @Test
    void aDuplicatedRackStandsBesideItsModel() {
        Room twice = after(ROOM, Copies.duplicate(ROOM, RACK));
        assertThat(rack(twice, "B").xM()).isEqualTo(2);
        assertThat(rack(twice, "B").yM()).isEqualTo(0);
        Room thrice = after(twice, Copies.duplicate(twice, RACK)); // right is taken, left and above are walls
        assertThat(rack(thrice, "C").xM()).isEqualTo(0);
        assertThat(rack(thrice, "C").yM()).isEqualTo(0.5);
    }

    @Test
    void aDuplicatedPipeIsSetOff() {
        Room twice = after(
                ROOM,
                Copies.duplicate(ROOM, Selection.of(Part.run(ROOM.runs().get(0).id()))));
        Run copy = twice.runs().get(1);
        assertThat(copy.id().text()).isEqualTo("main-2");
        assertThat(copy.points().get(0)).isEqualTo(new Point(0.4, 0.4, 2.2));
    }

    @Test
    void aRackBringsTheGangThatFeedsItAlone() {
        Room ganged = after(ROOM, TapEdits.gang(ROOM, List.of(new OutletId("A-s1-1-a")), Gang.Kind.TEES));
        Room twice = after(ganged, Copies.duplicate(ganged, RACK));
        assertThat(twice.gangs()).extracting(gang -> gang.id().text()).containsExactly("gang", "gang-2");
        assertThat(outlet(twice, "B-1-1-a").tap()).hasValue(new Outlet.OnGang(new GangId("gang-2")));
        assertThat(outlet(twice, "A-s1-1-a").tap()).hasValue(new Outlet.OnGang(new GangId("gang")));
        // the copy stands 2 m to the right of its model
        assertThat(twice.gangs().get(1).place().xM())
                .isEqualTo(twice.gangs().get(0).place().xM() + 2);
    }

    @Test
    void doorsAndInnerWallsAreCopiedToo() {
        Room doored = after(ROOM, RoomEdits.addDoor(ROOM, 3, 0, 0.8));
        Room walled = after(doored, RoomEdits.addWall(doored, 4, 0, 4, 2));
        Clip clip = Clip.of(walled, Selection.of(Part.door(0), Part.wall(0)));
        Room pasted = after(walled, clip.ontoFloor(walled, 1, 0));
        assertThat(pasted.shell().doors()).hasSize(2);
        assertThat(pasted.shell().doors().get(1).xM()).isCloseTo(3.6, within(1e-9)); // 2.6 m, and 1 m on
        assertThat(pasted.shell().walls().get(1).fromXM()).isEqualTo(5);
        assertThat(done(clip.ontoFloor(walled, 1, 0)).done()).isEqualTo("Paste 2 parts");
    }

    @Test
    void whatIsPastedStaysInItsPlaceWhereThatIsFreeElseStandsBeside() {
        Clip clip = Clip.of(ROOM, RACK);
        assertThat(rack(after(Rooms.empty(), clip.ontoFloor(Rooms.empty())), "A")
                        .xM())
                .isZero();
        assertThat(rack(after(ROOM, clip.ontoFloor(ROOM)), "B").xM()).isEqualTo(2);
    }

    @Test
    void aRackPastedIntoASmallerRoomStandsWithinItsWalls() {
        Room far = after(ROOM, RackEdits.place(ROOM, new RackId("A"), 4, 3.5));
        Room small = after(Rooms.empty(), RoomEdits.resize(Rooms.empty(), 3, 3, 2.4));
        Rack pasted = after(small, Clip.of(far, RACK).ontoFloor(small)).racks().get(0);
        assertThat(pasted.xM()).isEqualTo(1); // 3 m less its own 2 m
        assertThat(pasted.yM()).isEqualTo(2.5);
    }

    @Test
    void pastedPipeStaysWithinTheWalls() {
        // a copy is set off by 0.2 m; this one ends 0.1 m from both walls, at 6 and 4 m
        Room room = aRoom().with(aMain("main", false, new Point(1, 3.9, 2.2), new Point(5.9, 3.9, 2.2)))
                .build();
        Clip clip = Clip.of(room, Selection.of(Part.run(room.runs().get(0).id())));
        Run copy = after(room, clip.ontoFloor(room)).runs().get(1);
        assertThat(copy.points().get(1).xM()).isCloseTo(6, within(1e-9));
        assertThat(copy.points().get(1).yM()).isCloseTo(4, within(1e-9));
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(Copies.duplicate(ROOM, RACK)).done()).isEqualTo("Duplicate rack A");
        assertThat(done(outlets().intoTanks(ROOM, List.of(new TankId("low")))).done())
                .isEqualTo("Paste 1 outlet");
    }

    @Test
    void anEmptyClipPastesNothing() {
        Clip empty = Clip.of(ROOM, Selection.NONE);
        assertThat(empty.isEmpty()).isTrue();
        assertThat(empty.ontoFloor(ROOM, 0, 0).refused()).isPresent();
        assertThat(empty.ontoShelf(ROOM, new ShelfId("A-s1")).refused()).isPresent();
        assertThat(empty.intoTanks(ROOM, List.of(new TankId("low"))).refused()).isPresent();
    }
}
