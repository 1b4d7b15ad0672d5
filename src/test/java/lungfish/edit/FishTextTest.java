package lungfish.edit;

import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fish as they are written on one line. */
final class FishTextTest {
    private static final Quantities METRIC = Quantities.in(DisplayUnits.METRIC);
    private static final Quantities US = Quantities.in(DisplayUnits.US);
    private static final List<TankId> TANK = List.of(new TankId("t"));
    private static final Room EMPTY =
            aRoom().with(aRack("A").shelf(0.5, aTank("t"))).build();

    private static Attempt typed(Room room, String text, Quantities quantities) {
        return ContentEdits.fish(room, TANK, text, quantities);
    }

    private static List<Tank.Fish> fish(Room room) {
        return room.racks().get(0).tanks().findFirst().orElseThrow().fish();
    }

    private static List<Tank.Fish> read(String text, Quantities quantities) {
        return fish(typed(EMPTY, text, quantities).edit().orElseThrow().of(EMPTY));
    }

    @Test
    void howManyWhatTheyAreAndWhatOneWeighs() {
        assertThat(read("20 Boesemani rainbows, 8 g; 4 loaches, 12 g", METRIC))
                .containsExactly(new Tank.Fish("Boesemani rainbows", 20, 0.008), new Tank.Fish("loaches", 4, 0.012));
        assertThat(read(" ", METRIC)).isEmpty();
    }

    /** 0.5 oz are 0.45359237/32 kg. A name may hold a comma and a number: the last comma comes before the mass. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        3 x fry, first week, 2 mg | fry, first week | 3  | 0.000002
        12× Loach 2 ,0.5 oz       | Loach 2         | 12 | 0.0141747615625
        1 carp, 1.2 kg;           | carp            | 1  | 1.2""")
    void itIsReadAsPeopleWriteIt(String text, String name, int count, double massKg) {
        assertThat(read(text, METRIC)).containsExactly(new Tank.Fish(name, count, massKg));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rainbows, 8 g",
                "20 rainbows",
                "20 rainbows, 8",
                "20 rainbows, heavy",
                "20, 8 g",
                "5 tetras, 1 g; some loaches",
                "2.5 loaches, 8 g"
            })
    void whatDoesNotSayAllOfItIsTold(String text) {
        assertThat(typed(EMPTY, text, METRIC).refused().orElseThrow().sentence(METRIC))
                .contains("how many", FishText.EXAMPLE);
    }

    @Test
    void noFishAreNoFishAndHeavyOnesAreToldToo() {
        assertThat(typed(EMPTY, "0 carp, 1 kg", METRIC).refused()).isPresent();
        assertThat(typed(EMPTY, "1 whale, 2000 kg", METRIC).refused()).isPresent();
    }

    /** 0.7 g is shown as 0.02 oz, which read anew would be 0.57 g. */
    @Test
    void aMassThatStandsThereAsItWasShownIsStillTheSame() {
        Room room =
                aRoom().with(aRack("A").shelf(0.5, aTank("t").fish(20, 0.0007))).build();
        assertThat(FishText.of(fish(room), US)).isEqualTo("20 fish, 0.02 oz");
        Room more = typed(room, "25 fish, 0.02 oz", US).edit().orElseThrow().of(room);
        assertThat(fish(more)).containsExactly(new Tank.Fish("fish", 25, 0.0007));
    }
}
