package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Spread;
import lungfish.room.Spreads;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class SpreadValuesTest {
    private static final Room ROOM = Rooms.empty();

    private static Room said(Spread spread, OptionalDouble si) {
        return ((Edit) SpreadValues.of(spread).say(ROOM, si)).of(ROOM);
    }

    @ParameterizedTest
    @EnumSource
    void whatIsSaidIsHeldByTheRoomAndByNothingElseInIt(Spread spread) {
        Room after = said(spread, OptionalDouble.of(0.07));

        assertThat(after.spreads().of(spread)).hasValue(0.07);
        assertThat(after.withSpreads(Spreads.UNKNOWN)).isEqualTo(ROOM);
    }

    @ParameterizedTest
    @CsvSource({"DEPTH, 1.01", "RESISTANCE, 1.01", "CURVE, 0.51", "BORE, 0.21", "FLOW, -0.01"})
    void whatNoRoomCanBeOffByIsRefused(Spread spread, double si) {
        assertThat(SpreadValues.of(spread).say(ROOM, OptionalDouble.of(si))).isInstanceOf(Refused.class);
    }

    @ParameterizedTest
    @EnumSource
    void theUsualWidthIsOneThatMayBeSaid(Spread spread) {
        double usual = CatalogueFiles.load().assumed(spread.usual()).si();

        assertThat(said(spread, OptionalDouble.of(usual)).spreads().of(spread)).hasValue(usual);
    }

    @ParameterizedTest
    @EnumSource
    void theUsualWidthIsOfTheKindThatIsTyped(Spread spread) {
        Dimension typed = SpreadValues.of(spread).dimension();

        assertThat(CatalogueFiles.load().assumed(spread.usual()).dimension()).isEqualTo(typed);
    }
}
