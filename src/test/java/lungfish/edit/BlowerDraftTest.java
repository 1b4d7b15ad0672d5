package lungfish.edit;

import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** A machine of 100 L/min in the open, 60 at 10 kPa, nothing at 20 kPa, that draws 50 W. */
final class BlowerDraftTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final double ROUNDING = 1e-12;

    private final Catalogue catalogue = CatalogueFiles.load();
    private final Room room = aRoom().build();
    private final Quantities metric = new Quantities(DisplayUnits.METRIC, "EUR");

    private static BlowerDraft whole() {
        return BlowerDraft.empty()
                .named("Blue one")
                .with(0, 0, "0 kPa")
                .with(0, 1, "100 L/min")
                .with(1, 0, "10 kPa")
                .with(1, 1, "60")
                .with(2, 0, "200 mbar")
                .with(2, 1, "0")
                .with(BlowerSlot.WATTS, "50")
                .with(BlowerSlot.PRICE, "120")
                .with(BlowerSlot.CONTINUOUS, "15 kPa");
    }

    private DraftLook look(BlowerDraft draft) {
        return draft.look(room, catalogue, metric);
    }

    private List<String> says(BlowerDraft draft) {
        return look(draft).complaints().stream().map(DraftLook.Complaint::says).toList();
    }

    private BlowerClass done(BlowerDraft draft) {
        return look(draft).done().orElseThrow(() -> new AssertionError(says(draft)));
    }

    @Test
    void aWholeSheetIsAClassWhateverItsUnits() {
        BlowerClass own = done(whole());

        assertThat(own.points()).hasSize(3);
        assertThat(own.points().get(1).gaugePa()).isEqualTo(10_000, within(1e-9));
        assertThat(own.points().get(2).gaugePa()).isEqualTo(20_000, within(1e-9));
        assertThat(own.points().get(1).freeM3PerS()).isEqualTo(60 * L_PER_MIN, within(ROUNDING));
        assertThat(own.points()).allMatch(point -> point.watts() == 50);
        assertThat(own.price()).isEqualTo(120);
        assertThat(own.level()).isEmpty();
        assertThat(own.id()).isEqualTo("own-blue-one");
    }

    /** Between 10 and 20 kPa p·q is largest at p(60 − 6(p − 10)) with p = 10: 600; before it (100 − 4p)p is largest at 10: 600. */
    @Test
    void itIsNamedByWhereItDoesMostForItsAir() {
        assertThat(done(whole()).ratedPa()).isEqualTo(10_000, within(1e-6));
        assertThat(done(whole()).ratedM3PerS()).isEqualTo(60 * L_PER_MIN, within(ROUNDING));
    }

    @Test
    void whatNoSheetTellsIsTakenFromTheNearestOfItsKind() {
        BlowerClass like = catalogue.blower("linear-piston-60").orElseThrow();

        assertThat(done(whole()).tiredShare()).isEqualTo(like.tiredShare());
        assertThat(done(whole()).lifeS()).isEqualTo(like.lifeS());
        assertThat(done(whole()).surgeFactor()).isEqualTo(like.surgeFactor());
    }

    @Test
    void flowThatRisesWithThePressureIsWrong() {
        assertThat(says(whole().with(1, 1, "120")))
                .containsExactly("Row 2: the flow rises from 100 L/min to 120 L/min though the pressure rises too."
                        + " Against more pressure a blower gives less: mend one of the two.");
    }

    @Test
    void pressureThatDoesNotRiseIsWrong() {
        assertThat(says(whole().with(2, 0, "8 kPa")))
                .singleElement()
                .asString()
                .startsWith("Row 3: 8.00 kPa is no more than");
    }

    /**
     * By hand: 60 L/min against 10 kPa take 101 325 · 0.001 · ln(111 325 / 101 325) = 9.54 W of isothermal work; 13 W from the
     * mains would be 73 %, 14 W 68 %.
     */
    @Test
    void moreThanSeventyPercentOfTheMainsInTheAirIsImplausible() {
        assertThat(says(whole().with(BlowerSlot.WATTS, "13")))
                .singleElement()
                .asString()
                .contains("takes 9.5 W in the air alone; 13.0 W from the mains cannot do that");
        assertThat(says(whole().with(BlowerSlot.WATTS, "14"))).isEmpty();
    }

    /** A flow in m³/h typed as L/min: 1.7 L/min at 10 kPa are 0.3 W of 50. */
    @Test
    void lessThanAHundredthInTheAirIsImplausible() {
        BlowerDraft draft = whole().with(0, 1, "2").with(1, 1, "1.7");

        assertThat(says(draft)).singleElement().asString().contains("less than a hundredth");
    }

    @Test
    void aContinuousPressureBeyondTheCurveIsWrong() {
        assertThat(look(whole().with(BlowerSlot.CONTINUOUS, "25 kPa")).of(BlowerSlot.CONTINUOUS))
                .hasValueSatisfying(wrong -> assertThat(wrong.says()).contains("its curve ends at 20.0 kPa"));
    }

    @Test
    void whatIsMissingIsAskedForAndTheCurveIsDrawnMeanwhile() {
        DraftLook look = look(whole().with(BlowerSlot.PRICE, ""));

        assertThat(look.done()).isEmpty();
        assertThat(look.curve()).isPresent();
        assertThat(look.of(BlowerSlot.PRICE).orElseThrow().isMissing()).isTrue();
    }

    @Test
    void wattsMayStandAtEachPointInstead() {
        BlowerDraft draft = whole().with(BlowerSlot.WATTS, "")
                .with(0, 2, "40 W")
                .with(1, 2, "50 W")
                .with(2, 2, "60 W");

        assertThat(done(draft).points())
                .extracting(BlowerClass.CurvePoint::watts)
                .containsExactly(40.0, 50.0, 60.0);
    }

    @Test
    void aUnitOfAnotherKindIsToldInItsCell() {
        assertThat(look(whole().with(1, 1, "60 kg")).at(1, 1))
                .hasValueSatisfying(wrong -> assertThat(wrong.says()).startsWith("Row 2:"));
    }

    @Test
    void aBlockOfASpreadsheetFillsThePoints() {
        BlowerDraft draft = whole().pasted(0, 0, "0\t90\n10\t50\n18\t0\n");

        assertThat(done(draft).points())
                .extracting(point -> Math.round(point.freeM3PerS() / L_PER_MIN))
                .containsExactly(90L, 50L, 0L);
    }

    /** 100 mbar are 10 kPa; 6 m³/h are 100 L/min. */
    @Test
    void unitsInTheHeadingsOfABlockCountForItsCells() {
        BlowerDraft draft = whole().pasted(0, 0, "Pressure (mbar)\tFlow (m³/h)\n0\t6\n100\t3.6\n200\t0\n");

        assertThat(done(draft).points().get(0).freeM3PerS()).isEqualTo(100 * L_PER_MIN, within(ROUNDING));
        assertThat(done(draft).points().get(1).gaugePa()).isEqualTo(10_000, within(1e-9));
    }

    @Test
    void aClassThatIsOpenedAndNotTouchedStaysExactlyAsItIs() {
        BlowerClass own = done(whole().with(1, 1, "59.87654321")
                .with(BlowerSlot.LEVEL, "41.23")
                .with(BlowerSlot.DISTANCE, "1.5 m"));

        assertThat(done(BlowerDraft.of(own, metric))).isEqualTo(own);
    }

    @Test
    void aClassIsKeptChangedAndRemovedWithItsPlaces() {
        BlowerClass own = done(whole());
        Room with = OwnBlowerEdits.keep(own, true).of(room);
        Room chosen = BlowerEdits.choose(own).of(with);

        assertThat(with.ownClasses().blowers()).containsExactly(own);
        BlowerClass louder =
                done(BlowerDraft.of(own, metric).with(BlowerSlot.LEVEL, "50").with(BlowerSlot.DISTANCE, "1 m"));
        assertThat(OwnBlowerEdits.keep(louder, false).of(with).ownClasses().blowers())
                .containsExactly(louder);
        Room without = OwnBlowerEdits.remove(own).of(chosen);
        assertThat(without.ownClasses().blowers()).isEmpty();
        assertThat(without.blowers()).allMatch(blower -> blower.machine().isEmpty());
    }

    @Test
    void twoOfOneNameHaveIdsOfTheirOwn() {
        Room with = OwnBlowerEdits.keep(done(whole()), true).of(room);

        assertThat(whole().look(with, catalogue, metric).done().orElseThrow().id())
                .isEqualTo("own-blue-one-2");
    }

    @Test
    void aNameThatIsMissingIsNoFaultOfTheCurve() {
        DraftLook nameless = look(whole().named(""));
        assertThat(nameless.complaints())
                .singleElement()
                .matches(each ->
                        each.where() instanceof DraftLook.Name && !each.where().isOfCurve());

        DraftLook pointless = look(BlowerDraft.empty().named("Blue one"));
        assertThat(pointless.complaints()).anyMatch(each -> each.where().isOfCurve());
    }
}
