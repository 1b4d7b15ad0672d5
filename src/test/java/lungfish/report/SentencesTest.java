package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.reason.Amount;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Origin;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class SentencesTest {
    private static final PartId TANK = new PartId(PartId.Kind.TANK, "c4");
    private static final Sentences METRIC = new Sentences(Quantities.in(DisplayUnits.METRIC), new Names());
    private static final Sentences US = new Sentences(Quantities.in(DisplayUnits.US), new Names());

    private static Finding tooDeep() {
        return Finding.of(
                Code.DEEPER_THAN_WATER,
                new PartId(PartId.Kind.OUTLET, "c4-2"),
                new Amount("found", 0.4572, Dimension.DEPTH),
                new Amount("allowed", 0.381, Dimension.DEPTH));
    }

    @Test
    void aFindingIsSaidInTheUnitsOfTheReader() {
        assertThat(METRIC.says(tooDeep()))
                .isEqualTo("The air release of outlet c4-2 is 45.7 cm deep in 38.1 cm of water.");
        assertThat(US.says(tooDeep())).isEqualTo("The air release of outlet c4-2 is 18 in deep in 15 in of water.");
    }

    @Test
    void theMendIsSaidToo() {
        assertThat(METRIC.mend(tooDeep())).isEqualTo("Measure from the water line to the air release.");
    }

    @Test
    void wordsFillPlaces() {
        Finding finding = Finding.of(Code.NO_BLOWER_FITS, PartId.ROOM).with("limit", "pressure");
        assertThat(METRIC.says(finding)).isEqualTo("No blower class in the catalogue serves this room: pressure.");
    }

    @Test
    void aSentenceBeginsWithACapital() {
        Finding finding = Finding.of(Code.DISCONNECTED, TANK);
        assertThat(METRIC.says(finding)).startsWith("Tank c4 is not joined");
    }

    @Test
    void aDollarInAWordIsJustADollar() {
        Finding finding = Finding.of(Code.CANNOT_SOLVE, PartId.ROOM).with("reason", "$1 \\ {found}");
        assertThat(METRIC.says(finding)).endsWith("$1 \\ {found}.");
    }

    @ParameterizedTest
    @EnumSource
    void everyKindOfFindingEndsItsSentences(Code code) {
        assertThat(code.says()).matches(".*([.:?]|\\{reason})$");
        assertThat(code.mend()).endsWith(".");
    }

    @Test
    void aTermNamesItsAmounts() {
        Why.Term term = new Why.Term(
                "water over c4-2, {deep} at {warm}",
                java.util.List.of(
                        new Amount("deep", 0.381, Dimension.DEPTH), new Amount("warm", 298.15, Dimension.TEMPERATURE)),
                3700,
                Origin.computed(""));
        assertThat(US.says(term)).isEqualTo("water over c4-2, 15 in at 77 °F");
    }

    @Test
    void anAssumptionSaysItsReason() {
        Assumption assumption = new Assumption(
                Assumable.ROOM_TEMPERATURE,
                PartId.ROOM,
                "room temperature",
                295.15,
                Dimension.TEMPERATURE,
                "common practice, no source");
        assertThat(METRIC.says(assumption)).isEqualTo("room temperature: 22 °C (common practice, no source)");
        Assumption ofTank = new Assumption(
                Assumable.BATTERY_TEMPERATURE, TANK, "temperature", 298.15, Dimension.TEMPERATURE, "tropical");
        assertThat(METRIC.says(ofTank)).isEqualTo("temperature (tank c4): 25 °C (tropical)");
    }

    @Test
    void anOriginIsAWordAndItsDetail() {
        assertThat(Sentences.says(Origin.typed(""))).isEqualTo("typed");
        assertThat(Sentences.says(Origin.catalogue("sponge-small"))).isEqualTo("catalogue: sponge-small");
    }
}
