package lungfish.edit;

import static lungfish.edit.Tried.METRIC;
import static lungfish.edit.Tried.US;
import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import org.junit.jupiter.api.Test;

final class TankListTest {
    private static final String LIST =
            """
            Tank name;Rack;Shelf;Length (cm);Front to back (cm);Height (cm);Water temp.;Filter;Notes
            Fry 1;Left;1;40;25;25;26 °C;sponge-small;new
            Fry 2;Left;2;40;25;25;;;
            ;;;;;;;;
            Big;B;1;24 in;30;30;78 F;Air stone of wood;"with; a semicolon"
            """;

    private static TankList list(String text) {
        return TankList.read(text).orElseThrow();
    }

    private static TankList.Preview preview(String text, Reader reader) {
        return list(text).preview(list(text).guess(), reader);
    }

    @Test
    void headingsTellWhatColumnsMean() {
        assertThat(list(LIST).guess())
                .containsExactly(
                        entry(0, TankProperty.NAME),
                        entry(1, TankProperty.RACK),
                        entry(2, TankProperty.SHELF),
                        entry(3, TankProperty.LENGTH),
                        entry(4, TankProperty.WIDTH),
                        entry(5, TankProperty.HEIGHT),
                        entry(6, TankProperty.TEMPERATURE),
                        entry(7, TankProperty.DEVICE));
    }

    @Test
    void rowsBecomeTanks() {
        TankList.Preview preview = preview(LIST, US);
        assertThat(preview.bad()).isEmpty();
        // no water depth in the list: a tenth of the height below the rim. Row 4 is empty. 24 in is 0.6096 m
        assertThat(preview.items())
                .containsExactly(
                        new TankList.Item(
                                2,
                                "Fry 1",
                                Optional.of("Left"),
                                1,
                                new Tank.Size(0.4, 0.25, 0.25),
                                0.225,
                                OptionalDouble.of(299.15),
                                Optional.of("sponge-small")),
                        new TankList.Item(
                                3,
                                "Fry 2",
                                Optional.of("Left"),
                                2,
                                new Tank.Size(0.4, 0.25, 0.25),
                                0.225,
                                OptionalDouble.empty(),
                                Optional.empty()),
                        new TankList.Item(
                                5,
                                "Big",
                                Optional.of("B"),
                                1,
                                new Tank.Size(0.6096, 0.3, 0.3),
                                0.27,
                                OptionalDouble.of((78 + 459.67) * 5 / 9),
                                Optional.of("stone-wood")));
    }

    @Test
    void aCommonSizeIsEnough() {
        TankList.Preview preview = preview("Tank,Size\nOne,20 gal long\nTwo,60 × 30 × 30 cm\n", METRIC);
        assertThat(preview.bad()).isEmpty();
        // 30 by 12 by 12 in of 25.4 mm
        assertThat(preview.items().get(0).outside()).isEqualTo(new Tank.Size(0.762, 0.3048, 0.3048));
        assertThat(preview.items().get(1).waterDepthM()).isEqualTo(0.26);
    }

    @Test
    void everyBadCellIsToldWithItsRowInTheFile() {
        TankList.Preview preview = preview(
                """
                Tank,Shelf,Length,Width,Height,Water depth,Filter
                One,1,40 cm,30 cm,30 cm,25 cm,sponge-small
                Two,0,40 kg,30 cm,,25 cm,sponge
                Three,2,40 cm,-30 cm,30 cm,31 cm,
                """,
                METRIC);
        assertThat(preview.items()).extracting(TankList.Item::name).containsExactly("One");
        assertThat(preview.bad())
                .extracting(BadCell::row, BadCell::column)
                .containsExactlyInAnyOrder(
                        tuple(3, "Shelf"),
                        tuple(3, "Length"),
                        tuple(3, "Height"),
                        tuple(3, "Filter"),
                        tuple(4, "Width"),
                        tuple(4, "Water depth"));
        assertThat(preview.bad())
                .filteredOn(cell -> cell.column().equals("Length"))
                .allMatch(cell -> cell.found().contains("'kg' measures a mass"));
    }

    @Test
    void aListOfHeadingsAloneIsNoList() {
        assertThat(TankList.read("Tank,Rack\n")).isEmpty();
        assertThat(TankList.read("")).isEmpty();
    }

    @Test
    void tanksOfARackThatIsThereGoOntoItsShelves() {
        Room room = aRoom().with(aRack("B").at(3, 1).shelf(0.2, aTank("there"))).build();
        Room imported = after(room, TankImport.of(room, preview(LIST, METRIC).items()));
        assertThat(rack(imported, "B").tanks()).extracting(Tank::name).containsExactly("Tank there", "Big");
        assertThat(rack(imported, "B").widthM()).isEqualTo(2);
    }

    @Test
    void tanksOfARackThatIsNotThereGetOne() {
        Room imported = after(
                Rooms.empty(),
                TankImport.of(Rooms.empty(), preview(LIST, METRIC).items()));
        Rack left = rack(imported, "A");
        assertThat(left.name()).isEqualTo("Left");
        // one tank of 0.4 m on each shelf and two gaps of 0.02 m; 0.25 m of tank and 0.25 m for a hand
        assertThat(left.widthM()).isEqualTo(0.44);
        assertThat(left.shelves()).extracting(Shelf::heightM).containsExactly(0.15, 0.65);
        assertThat(left.tanks()).extracting(Tank::name).containsExactly("Fry 1", "Fry 2");
        assertThat(imported.racks()).extracting(Rack::name).containsExactly("Left", "B");
    }

    @Test
    void newRacksStandApartAndClearOfTheDoor() {
        Room door = after(Rooms.empty(), RoomEdits.addDoor(Rooms.empty(), 0.45, 0, 0.9)); // sweeps 0 to 0.9 m
        Room imported = after(door, TankImport.of(door, preview(LIST, METRIC).items()));
        List<Box> boxes = imported.racks().stream().map(Box::of).toList();
        assertThat(boxes.get(0).fromXM()).isEqualTo(0.9);
        assertThat(boxes.get(0).overlaps(boxes.get(1), 1e-6)).isFalse();
    }

    @Test
    void aFullShelfIsRefusedWithItsRow() {
        Room room = aRoom().with(aRack("Left")
                        .sized(0.5, 0.5)
                        .shelf(0.2, aTank("there").sized(0.3, 0.3, 0.3).waterDepthM(0.2)))
                .build();
        assertThat(sentence(TankImport.of(room, preview(LIST, METRIC).items())))
                .startsWith("Row 2: No gap on that shelf of rack Left is 40 cm long.");
    }

    @Test
    void aRoomWithoutFreeFloorIsRefused() {
        Room tiny = after(Rooms.empty(), RoomEdits.resize(Rooms.empty(), 0.4, 0.4, 2));
        assertThat(sentence(TankImport.of(tiny, preview(LIST, METRIC).items())))
                .startsWith("There is no free floor for a rack of 44 cm by 30 cm.");
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(TankImport.of(Rooms.empty(), preview(LIST, METRIC).items()))
                        .done())
                .isEqualTo("Import 3 tanks");
    }
}
