package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.outlet;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.sentence;
import static lungfish.edit.Tried.tank;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/**
 * Rack A, 2 m wide. On the shelf at 0.2 m: tank 1 from 0 to 0.6 m with outlet a, 0.25 m deep, and tank 2 from 0.7 to 1.3 m.
 * The shelf at 0.9 m is empty. Tanks are 0.36 m high, with 0.3 m of water. Rack B has a shelf at 1.1 m.
 */
final class FrontMovesTest {
    private static final TankId ONE = new TankId("1");
    private static final TankId TWO = new TankId("2");
    private static final OutletId A = new OutletId("a");
    private static final ShelfId LOW = new ShelfId("A-s1");
    private static final OptionalDouble NO_GRID = OptionalDouble.empty();
    private static final Room ROOM = aRoom().with(aRack("A")
                    .shelf(
                            0.2,
                            aTank("1").with(anOutlet("a").depthM(0.25)),
                            aTank("2").at(0.7))
                    .shelf(0.9))
            .with(aRack("B").shelf(1.1))
            .build();

    private static List<String> on(Room room, int shelf) {
        return rack(room, "A").shelves().get(shelf).tanks().stream()
                .map(tank -> tank.id().text())
                .toList();
    }

    @Test
    void tanksKeepTheirPlacesBesideEachOtherOnAnotherShelf() {
        Room room = after(ROOM, FrontMoves.tanks(ROOM, List.of(ONE, TWO), 0.1, 1));
        assertThat(on(room, 0)).isEmpty();
        assertThat(on(room, 1)).containsExactly("1", "2");
        assertThat(tank(room, "1").xM()).isEqualTo(0.1);
        assertThat(tank(room, "2").xM()).isEqualTo(0.8);
    }

    @Test
    void aboveTheTopmostShelfThereIsNone() {
        assertThat(sentence(FrontMoves.tanks(ROOM, List.of(ONE), 0, 2)))
                .isEqualTo("There is no shelf there. Add a shelf first.");
    }

    @Test
    void aCopyHasAnIdOfItsOwnAndItsModelStays() {
        Room room = after(ROOM, FrontMoves.tankCopies(ROOM, List.of(ONE), 1.35, 0));
        assertThat(on(room, 0)).containsExactly("1", "2", "A-s1-1");
        assertThat(tank(room, "A-s1-1").xM()).isEqualTo(1.35);
        assertThat(outlet(room, "A-s1-1-a").depthM()).hasValue(0.25);
        assertThat(tank(room, "1")).isEqualTo(tank(ROOM, "1"));
    }

    @Test
    void anOutletIsHungIntoAnotherTankAtADepth() {
        Room room = after(ROOM, FrontMoves.outlets(ROOM, Map.of(A, 0.1), TWO));
        assertThat(tank(room, "1").outlets()).isEmpty();
        assertThat(tank(room, "2").outlets()).containsExactly(outlet(ROOM, "a").withDepthM(OptionalDouble.of(0.1)));
    }

    @Test
    void aCopyOfAnOutletIsHungBesideIt() {
        Room room = after(ROOM, FrontMoves.outletCopies(ROOM, Map.of(A, 0.1), ONE));
        assertThat(tank(room, "1").outlets()).hasSize(2);
        assertThat(outlet(room, "1-a").depthM()).hasValue(0.1);
        assertThat(outlet(room, "a").depthM()).hasValue(0.25);
    }

    @Test
    void aShelfIsCopiedWithItsTanksAndOnTopLeavesRoomForAHand() {
        Room room = after(ROOM, FrontMoves.shelfCopy(ROOM, LOW, 1.5));
        assertThat(rack(room, "A").shelves()).extracting(Shelf::heightM).containsExactly(0.2, 0.9, 1.5);
        assertThat(on(room, 2)).containsExactly("A-1-1", "A-1-2");
        Room top = after(room, Copies.duplicate(room, Selection.of(Part.shelf(LOW))));
        assertThat(rack(top, "A").shelves()).extracting(Shelf::heightM).last().isEqualTo(2.11); // 1.5 + 0.36 + 0.25
    }

    @Test
    void aCopiedShelfIsPastedOnTopOfAnotherRack() {
        Clip clip = Clip.of(ROOM, Selection.of(Part.shelf(LOW)));
        Room room = after(ROOM, clip.ontoRack(ROOM, new RackId("B")));
        Rack b = rack(room, "B");
        assertThat(b.shelves()).extracting(Shelf::heightM).containsExactly(1.1, 1.7); // an empty one is 0.6 m high
        assertThat(b.tanks()).hasSize(2);
    }

    @Test
    void aShelfIsFilledWithCopiesAsFarAsItGoes() {
        Room wide = after(ROOM, FrontMoves.tanks(ROOM, List.of(TWO), 0, 1));
        Attempt filling = Copies.fill(wide, ONE);
        Room room = after(wide, filling); // 0.6 m of tank and 2 cm of gap: two more end at 1.84 m of 2 m
        assertThat(rack(room, "A").shelves().get(0).tanks())
                .extracting(Tank::xM)
                .containsExactly(0.0, 0.62, 1.24);
        assertThat(done(filling).done()).isEqualTo("Fill the shelf of tank 1");
        assertThat(sentence(Copies.fill(room, ONE))).startsWith("No gap on that shelf of rack A is 60 cm long.");
    }

    /** A shelf of 900 m, whose tanks of 60 cm could be copied some 1400 times: nobody wants that. */
    @Test
    void aShelfWithoutEndIsNotFilledWithoutEnd() {
        Room endless = after(
                ROOM,
                RackEdits.resize(
                        after(ROOM, RoomEdits.resize(ROOM, 950, 8, 2.5)),
                        rack(ROOM, "A").id(),
                        900,
                        0.5));
        Room filled = after(endless, Copies.fill(endless, ONE));
        assertThat(rack(filled, "A").shelves().get(0).tanks()).hasSizeBetween(150, 220);
    }

    @Test
    void aNewShelfRestsAboveTanksInStepAndLevelWithOtherRacks() {
        Rack a = rack(ROOM, "A");
        assertThat(height(a, 0.79)).isEqualTo("0.81 room for a hand"); // 0.2 + 0.36 + 0.25
        assertThat(height(a, 1.59)).isEqualTo("1.6 same step"); // 0.9 + 0.7
        assertThat(height(a, 1.11)).isEqualTo("1.1 level with rack B");
        assertThat(height(a, 1.3)).isEqualTo("1.3 ");
        assertThat(height(a, -0.3)).isEqualTo("0.0 ");
    }

    private static String height(Rack rack, double heightM) {
        HeightSnap rest = HeightSnap.at(ROOM, rack, Optional.empty(), heightM, 0.025, NO_GRID);
        return rest.heightM() + " " + rest.why().map(Stop::words).orElse("");
    }

    @Test
    void aDeviceRestsOnTheBottomOrAsDeepAsAnotherAndStaysInTheWater() {
        assertThat(depth(0.285)).isEqualTo("0.3 bottom glass");
        assertThat(depth(0.24)).isEqualTo("0.25 as deep as a");
        assertThat(depth(0.18)).isEqualTo("0.18 ");
        assertThat(depth(0.5)).isEqualTo("0.3 ");
        assertThat(depth(-0.1)).isEqualTo("0.0 ");
    }

    private static String depth(double depthM) {
        DepthSnap rest = DepthSnap.at(tank(ROOM, "2"), Map.of("a", 0.25), depthM, 0.02, NO_GRID);
        return rest.depthM() + " " + rest.why().map(Stop::words).orElse("");
    }

    @Test
    void aTankRestsAsFarFromItsNeighbourAsTheyAreFromEachOther() {
        Rack a = rack(ROOM, "A");
        ShelfSnap rest = ShelfSnap.at(a, a.shelves().get(0), List.of(), 0.5, 1.41, 0.02, NO_GRID);
        assertThat(rest.xM()).isEqualTo(1.4); // 0.1 m behind the one that ends at 1.3 m
        assertThat(rest.why()).hasValueSatisfying(why -> assertThat(why.words()).isEqualTo("same gap"));
    }

    @Test
    void onTheNextShelfATankRestsInLineWithThoseBelow() {
        Rack a = rack(ROOM, "A");
        ShelfSnap rest = ShelfSnap.at(a, a.shelves().get(1), List.of(), 0.5, 0.69, 0.02, NO_GRID);
        assertThat(rest.xM()).isEqualTo(0.7);
        assertThat(rest.why()).hasValueSatisfying(why -> assertThat(why.words()).isEqualTo("in line with tank 2"));
    }

    @Test
    void withNothingNearTheGridHolds() {
        Rack a = rack(ROOM, "A");
        ShelfSnap rest = ShelfSnap.at(a, a.shelves().get(1), List.of(), 0.5, 0.373, 0.005, OptionalDouble.of(0.05));
        assertThat(rest.xM()).isEqualTo(0.35);
        assertThat(rest.why()).isEmpty();
    }
}
