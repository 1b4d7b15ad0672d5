package lungfish.edit;

import static lungfish.edit.Tried.METRIC;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Optional;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list of tanks on its way into a room. */
final class TankDraftTest {
    private static final String SIX_HEADINGS = "Tank;Rack;Shelf;Length (cm);Width (cm);Height (cm)\n";

    private static TankDraft draft(String text) {
        return TankDraft.of(text).orElseThrow();
    }

    private static TankDraft.Look look(TankDraft draft) {
        return draft.look(Rooms.empty(), METRIC);
    }

    private static double lengthM(TankDraft draft) {
        return look(draft).preview().items().get(0).outside().lengthM();
    }

    @Test
    void semicolonsAndADecimalCommaAreFoundOut() {
        TankDraft draft = draft(SIX_HEADINGS + "One;A;1;40,5;30;30\n");
        assertThat(draft.separator()).isEqualTo(Sheet.Separator.SEMICOLON);
        assertThat(draft.decimals()).isEqualTo(DecimalMark.COMMA);
        assertThat(lengthM(draft)).isEqualTo(0.405);
    }

    /** A comma before three digits is a thousand to one and a decimal to another. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    # mark | typed | mm
                    POINT  | 1,200 | 1200
                    COMMA  | 1,200 | 1.2
                    COMMA  | 1.200 | 1200
                    POINT  | 1.200 | 1.2
                    """)
    void theMarkSettlesWhatACommaBeforeThreeDigitsMeans(DecimalMark mark, String typed, double mm) {
        assertThat(mark.plain(typed))
                .satisfies(plain -> assertThat(Double.parseDouble(plain)).isEqualTo(mm));
    }

    @Test
    void aListWithoutHeadingsLosesNoRow() {
        TankDraft draft = draft("One,40 cm,30 cm,30 cm\nTwo,50 cm,30 cm,30 cm\n");
        assertThat(draft.headed()).isFalse();
        assertThat(draft.list().headings()).containsExactly("Column 1", "Column 2", "Column 3", "Column 4");
        TankDraft meant = draft.meaning(0, Optional.of(TankProperty.NAME))
                .meaning(1, Optional.of(TankProperty.LENGTH))
                .meaning(2, Optional.of(TankProperty.WIDTH))
                .meaning(3, Optional.of(TankProperty.HEIGHT));
        assertThat(look(meant).preview().items())
                .extracting(TankList.Item::row, TankList.Item::name)
                .containsExactly(tuple(1, "One"), tuple(2, "Two"));
    }

    @Test
    void noTwoColumnsMeanTheSame() {
        TankDraft draft = draft(SIX_HEADINGS + "One;A;1;40;30;30\n").meaning(4, Optional.of(TankProperty.LENGTH));
        assertThat(draft.meaning()).contains(entry(4, TankProperty.LENGTH)).doesNotContainKey(3);
    }

    @Test
    void aMendedCellBringsItsRowIn() {
        TankDraft draft = draft(SIX_HEADINGS + "One;A;1;40;30;30\nTwo;A;1;wide;30;30\n");
        assertThat(look(draft).fit().tanks()).isEqualTo(1);
        assertThat(look(draft).bad())
                .extracting(BadCell::row, BadCell::column)
                .containsExactly(tuple(3, "Length (cm)"));
        TankDraft mended = draft.mended(3, 3, "40");
        assertThat(look(mended).bad()).isEmpty();
        assertThat(look(mended).fit().tanks()).isEqualTo(2);
    }

    @Test
    void aCellBeyondTheEndOfAShortRowIsMendedToo() {
        TankDraft draft = draft(SIX_HEADINGS + "One;A;1;40;30\n").mended(2, 5, "30");
        assertThat(look(draft).bad()).isEmpty();
    }

    /** The shelf is 0.5 m long and holds a tank of 0.3 m: 0.2 m are free, for one of 0.15 m and none of 0.4 m. */
    @Test
    void tanksForWhichThereIsNoPlaceAreToldAndTheOthersComeIn() {
        Room room = aRoom().with(aRack("A")
                        .sized(0.5, 0.5)
                        .shelf(0.2, aTank("there").sized(0.3, 0.3, 0.3).waterDepthM(0.2)))
                .build();
        TankDraft.Look look =
                draft(SIX_HEADINGS + "Long;A;1;40;30;30\nShort;A;1;15;30;30\n").look(room, METRIC);
        assertThat(look.bad()).extracting(BadCell::row).containsExactly(2);
        assertThat(look.bad().get(0).sentence()).startsWith("Row 2, Place: no place for Long: No gap on that shelf");
        Room after = look.fit().edit().orElseThrow().of(room);
        assertThat(Find.tanks(after).map(lungfish.room.Tank::name))
                .contains("Short")
                .doesNotContain("Long");
    }

    @Test
    void onlyHeadingsThatSpeakOfTanksMakeATextAListOfTanks() {
        assertThat(draft(SIX_HEADINGS + "One;A;1;40;30;30\n").speaksOfTanks()).isTrue();
        assertThat(draft("Milk\nBread\n").speaksOfTanks()).isFalse();
        assertThat(TankDraft.of("")).isEmpty();
    }
}
