package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
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

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** Rack A, 2 m wide; on its lower shelf tank 1 from 0 to 0.6 m and tank 2 from 0.7 to 1.3 m, both 0.36 m high with 0.3 m of water. */
final class TankEditsTest {
    private static final ShelfId LOW = new ShelfId("A-s1");
    private static final ShelfId HIGH = new ShelfId("A-s2");
    private static final TankId ONE = new TankId("1");
    private static final TankId TWO = new TankId("2");
    private static final Room ROOM = aRoom().with(aRack("A")
                    .shelf(
                            0.2,
                            aTank("1")
                                    .with(anOutlet("a").depthM(0.25))
                                    .with(anOutlet("b").depthUnknown()),
                            aTank("2").at(0.7))
                    .shelf(0.9))
            .build();

    private static List<String> onShelf(Room room, ShelfId shelf) {
        return Find.shelf(room, shelf.text()).orElseThrow().tanks().stream()
                .map(tank -> tank.id().text())
                .toList();
    }

    @Test
    void aCommonSizeGoesIntoTheFirstGap() {
        // 45 cm do not fit between the two, but in the 0.7 m behind them
        Room room = after(
                ROOM, TankEdits.add(ROOM, LOW, CATALOGUE.tankSize("cm-45-30-30").orElseThrow(), Optional.empty()));
        Tank added = tank(room, "A-s1-1");
        assertThat(added.xM()).isEqualTo(1.32);
        assertThat(added.outside()).isEqualTo(new Tank.Size(0.45, 0.3, 0.3));
        assertThat(added.waterDepthM()).isEqualTo(0.26);
        assertThat(added.temperatureK()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void anOwnSizeThatFitsExactlyIsTaken() {
        Room room = after(ROOM, TankEdits.add(ROOM, LOW, new Tank.Size(0.1, 0.3, 0.3), 0.2, Optional.of("stone-fine")));
        assertThat(tank(room, "A-s1-1").xM()).isEqualTo(0.6);
        assertThat(outlet(room, "A-s1-1-a").device()).isEqualTo("stone-fine");
        assertThat(onShelf(room, LOW)).containsExactly("1", "A-s1-1", "2");
    }

    @Test
    void tanksSlideUntilTheyTouch() {
        assertThat(tank(after(ROOM, TankEdits.slide(ROOM, List.of(TWO), -0.1)), "2")
                        .xM())
                .isEqualTo(0.6);
        assertThat(sentence(TankEdits.slide(ROOM, List.of(TWO), -0.15)))
                .isEqualTo("Tank 1 and tank 2 would overlap by 5 cm. Move one of them, or take a shorter tank.");
        assertThat(sentence(TankEdits.slide(ROOM, List.of(ONE), -0.1)))
                .startsWith("Tank 1 would stick out of the rack on the left, by 10 cm.");
    }

    @Test
    void tanksMayPassEachOther() {
        Room room = after(ROOM, TankEdits.place(ROOM, ONE, 1.35));
        assertThat(onShelf(room, LOW)).containsExactly("2", "1");
    }

    @Test
    void aTankIsCarriedToAnotherShelf() {
        Room room = after(ROOM, TankEdits.carry(ROOM, ONE, HIGH, 0.5));
        assertThat(onShelf(room, LOW)).containsExactly("2");
        assertThat(onShelf(room, HIGH)).containsExactly("1");
        assertThat(tank(room, "1").xM()).isEqualTo(0.5);
        assertThat(tank(after(ROOM, TankEdits.carry(ROOM, ONE, HIGH)), "1").xM())
                .isEqualTo(0.02);
    }

    @Test
    void devicesStayWhereTheyStandWhenTheWaterFalls() {
        // the release is 0.05 m above the bottom: 0.1 m deep in 0.15 m of water
        Room half = after(ROOM, TankEdits.fill(ROOM, List.of(ONE), 0.15));
        assertThat(outlet(half, "a").depthM()).hasValue(0.1);
        assertThat(outlet(half, "b").depthM()).isEmpty();
        assertThat(after(half, TankEdits.fill(half, List.of(ONE), 0.3))).isEqualTo(ROOM);
    }

    @Test
    void waterAboveTheRimIsRefused() {
        assertThat(sentence(TankEdits.fill(ROOM, List.of(ONE), 0.4)))
                .isEqualTo(
                        "The water in tank 1 would be 40 cm deep. It must be more than nothing, and at most the tank's"
                                + " height, 36 cm.");
        assertThat(TankEdits.fill(ROOM, List.of(ONE), 0).refused()).isPresent();
    }

    @Test
    void aLowerTankIsFilledAsFarBelowItsRim() {
        // 0.06 m below the rim before and after: 0.25 - 0.06 m; the release stays 0.05 m above the bottom
        Room low = after(ROOM, TankEdits.resize(ROOM, List.of(ONE), new Tank.Size(0.6, 0.3, 0.25)));
        assertThat(tank(low, "1").waterDepthM()).isEqualTo(0.19);
        assertThat(outlet(low, "a").depthM()).hasValue(0.14);
    }

    @Test
    void shelvesAreAddedAboveTheTanks() {
        // the topmost shelf is empty: 0.6 m above it
        Room room = after(ROOM, ShelfEdits.add(ROOM, new RackId("A")));
        assertThat(rack(room, "A").shelves()).extracting(Shelf::heightM).containsExactly(0.2, 0.9, 1.5);
        Room filled = after(ROOM, TankEdits.carry(ROOM, ONE, HIGH)); // 0.36 m of tank and 0.25 m for a hand
        assertThat(rack(after(filled, ShelfEdits.add(filled, new RackId("A"))), "A")
                        .shelves()
                        .get(2)
                        .heightM())
                .isEqualTo(1.51);
    }

    @Test
    void shelvesStayInOrderWhenOnePassesAnother() {
        Room room = after(ROOM, ShelfEdits.raise(ROOM, LOW, 1.2));
        assertThat(rack(room, "A").shelves())
                .extracting(shelf -> shelf.id().text())
                .containsExactly("A-s2", "A-s1");
        assertThat(sentence(ShelfEdits.raise(ROOM, LOW, 0.9)))
                .startsWith("Two shelves would be at the same height, 90 cm.");
    }

    @Test
    void contentsBecomeKnownAndUnknownAgain() {
        Room warm = after(ROOM, ContentEdits.temperatureK(ROOM, List.of(ONE, TWO), OptionalDouble.of(299)));
        assertThat(tank(warm, "2").temperatureK()).hasValue(299);
        assertThat(after(warm, ContentEdits.temperatureK(warm, List.of(ONE, TWO), OptionalDouble.empty())))
                .isEqualTo(ROOM);
        assertThat(ContentEdits.temperatureK(ROOM, List.of(ONE), OptionalDouble.of(25))
                        .refused())
                .as("25 °C taken for kelvin")
                .isPresent();
    }

    @Test
    void outletsInAnotherRackLeaveThePipeAtTheNearestPoint() {
        Room hung = aRoom().with(aRack("A")
                        .shelf(
                                0.2,
                                aTank("1").with(anOutlet("a").onRun("main", 1).airline("airline-4-6", 2))))
                .with(aRack("B").at(3, 0).shelf(0.2, aTank("2").waterDepthM(0.2)))
                .with(aMain("main", false, new Point(0, 0, 2), new Point(4, 0, 2)))
                .build();
        Outlet carried = outlet(after(hung, OutletEdits.carry(hung, List.of(new OutletId("a")), TWO)), "a");
        assertThat(carried.depthM()).as("0.05 m above the bottom of 0.2 m").hasValue(0.15);
        assertThat(carried.tap()).as("in another rack: the nearest point").isEmpty();
        assertThat(carried.airline().orElseThrow().lengthM()).isEmpty();
    }
}
