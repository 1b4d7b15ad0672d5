package lungfish.quantity;

import static lungfish.quantity.Dimension.AIR_FLOW;
import static lungfish.quantity.Dimension.BORE;
import static lungfish.quantity.Dimension.CONCENTRATION;
import static lungfish.quantity.Dimension.ENERGY;
import static lungfish.quantity.Dimension.FLOOR_LOAD;
import static lungfish.quantity.Dimension.POWER;
import static lungfish.quantity.Dimension.PRESSURE;
import static lungfish.quantity.Dimension.VOLUME;
import static lungfish.quantity.Dimension.WATER_FLOW;
import static lungfish.quantity.DisplayUnits.METRIC;
import static lungfish.quantity.DisplayUnits.US;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class QuantityReaderTest {
    /** NIST SP 811 prints seven figures: half a step of the last is at most 5 in 10 million. */
    private static final Percentage TABLE_ROUNDING = Percentage.withPercentage(5e-5);

    private static final double ROUNDING = 1e-12;

    /** Half a step of the third figure, at its coarsest: 0.5 in 100. */
    private static final double THIRD_FIGURE_PERCENT = 0.5;

    private static double si(String text, Dimension dimension) {
        return si(text, dimension, METRIC);
    }

    private static double si(String text, Dimension dimension, DisplayUnits units) {
        return Quantities.parse(text, dimension, units).match(value -> value, problem -> {
            throw new AssertionError(problem.toString());
        });
    }

    private static Parsed.Problem problem(String text, Dimension dimension) {
        return Quantities.parse(text, dimension, METRIC)
                .match(
                        value -> {
                            throw new AssertionError(text + " was read as " + value);
                        },
                        problem -> problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '|',
            textBlock =
                    """
        # NIST SP 811 (2008), B.8, factors to SI; exact ones have no more figures
        1 in; LENGTH; 0.0254
        1 ft; LENGTH; 0.3048
        1 psi; PRESSURE; 6894.757
        1 inH2O; PRESSURE; 249.0889
        1 cmH2O; PRESSURE; 98.0665
        1 mmH2O; PRESSURE; 9.80665
        1 ftH2O; PRESSURE; 2989.067
        1 mmHg; PRESSURE; 133.3224
        1 inHg; PRESSURE; 3386.389
        1 mbar; PRESSURE; 100
        1 bar; PRESSURE; 100000
        1 cfm; AIR_FLOW; 4.719474e-4
        1 ft³/h; AIR_FLOW; 7.865791e-6
        1 L/min; AIR_FLOW; 1.666667e-5
        1 m³/h; AIR_FLOW; 2.777778e-4
        1 gpm; WATER_FLOW; 6.309020e-5
        1 gal; VOLUME; 3.785412e-3
        1 imp gal; VOLUME; 4.54609e-3
        1 qt; VOLUME; 9.463529e-4
        1 pt; VOLUME; 4.731765e-4
        1 ft³; VOLUME; 2.831685e-2
        1 lb; MASS; 0.4535924
        1 oz; MASS; 2.834952e-2
        1 hp; POWER; 745.6999
        1 kWh; ENERGY; 3.6e6
        1 Ah; CHARGE; 3600
        1 mph; SPEED; 0.44704
        1 ft/min; SPEED; 5.08e-3
        1 lb/ft²; FLOOR_LOAD; 47.88026
        1 kg/m²; FLOOR_LOAD; 9.80665
        1 h; DURATION; 3600
        1 day; DURATION; 86400
        1 year; DURATION; 3.1536e7
        0 °C; TEMPERATURE; 273.15
        32 °F; TEMPERATURE; 273.15
        212 °F; TEMPERATURE; 373.15
        9 °F; TEMPERATURE_RISE; 5""")
    void eachUnitHasItsPublishedFactor(String text, Dimension dimension, double si) {
        assertThat(si(text, dimension)).isCloseTo(si, TABLE_ROUNDING);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '|',
            textBlock =
                    """
        # text; dimension; si by hand: 1 in = 0.0254 m, 1 gal = 3.785411784 L, K = (°F + 459.67) × 5/9
        18 in; DEPTH; 0.4572
        18"; DEPTH; 0.4572
        18''; DEPTH; 0.4572
        18”; DEPTH; 0.4572
        45 cm; DEPTH; 0.45
        45cm; DEPTH; 0.45
        0,45 m; DEPTH; 0.45
        1 1/4 in; BORE; 0.03175
        1-1/4 in; BORE; 0.03175
        1¼ in; BORE; 0.03175
        3/16"; BORE; 0.0047625
        .5 in; BORE; 0.0127
        6' 3"; LENGTH; 1.905
        6'3; LENGTH; 1.905
        6′ 3″; LENGTH; 1.905
        5'-6"; LENGTH; 1.6764
        6 ft 3 1/2 in; LENGTH; 1.9177
        6 FEET 3 INCHES; LENGTH; 1.905
        -20 ft; ALTITUDE; -6.096
        −20 m; ALTITUDE; -20
        75 gal; VOLUME; 0.2839058838
        0.4 psi; PRESSURE; 2757.9029172672
        8 inH2O; PRESSURE; 1992.71128
        8 in H₂O; PRESSURE; 1992.71128
        8 in. wc; PRESSURE; 1992.71128
        1e3 Pa; PRESSURE; 1000
        7 h 20 min; DURATION; 26400
        7 h 20; DURATION; 26400
        7h20m; DURATION; 26400
        1 min 30 s; DURATION; 90
        78 °F; TEMPERATURE; 298.7055555555556
        78F; TEMPERATURE; 298.7055555555556
        78 deg f; TEMPERATURE; 298.7055555555556
        25 ℃; TEMPERATURE; 298.15
        298 K; TEMPERATURE; 298
        12 L/min; AIR_FLOW; 2e-4
        12 lpm; AIR_FLOW; 2e-4
        0.5 cfm; AIR_FLOW; 2.359737216e-4
        0.5 scfm; AIR_FLOW; 2.359737216e-4
        50 gph; WATER_FLOW; 5.2575163667e-5
        1 lb 4 oz; MASS; 0.5669904625
        20 %; SHARE; 0.2
        46 dB; SOUND_LEVEL; 46""")
    void aPersonMayWriteItLikeThis(String text, Dimension dimension, double si) {
        double roundingOfTheHandCalculation = 1e-9;
        assertThat(si(text, dimension)).isCloseTo(si, within(Math.abs(si) * roundingOfTheHandCalculation + ROUNDING));
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, METRIC, 6, 6000",
        "AIR_FLOW, US, 12, 0.0002",
        "DEPTH, US, 10, 0.254",
        "DEPTH, METRIC, 10, 0.1",
        "TEMPERATURE, METRIC, 25, 298.15",
        "SHARE, US, 20, 0.2",
        "MONEY, US, 120, 120"
    })
    void withoutAUnitTheShownOneIsMeant(Dimension dimension, DisplayUnits units, String text, double si) {
        assertThat(si(text, dimension, units)).isCloseTo(si, within(ROUNDING));
    }

    @Test
    void theCurrencyOfTheRoomMayStandBesideTheAmount() {
        Quantities dollars = new Quantities(US, "$");
        assertThat(dollars.parse("$120", Dimension.MONEY)).isEqualTo(new Parsed.Value(120));
        assertThat(dollars.parse("120 EUR", Dimension.MONEY)).isInstanceOf(Parsed.Problem.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '|',
            textBlock =
                    """
        || ; AIR_FLOW; nothing
        twelve; AIR_FLOW; 'twelve': no number in front
        12 foo; AIR_FLOW; '12 foo': 'foo' is not a unit of an air flow
        12 psi; AIR_FLOW; '12 psi': 'psi' measures a pressure
        1,250 L/min; AIR_FLOW; '1,250 L/min': a comma before three digits has two meanings, so leave it out or write a point
        1/0 in; BORE; '1/0 in': a fraction of zero parts
        1e999 in; BORE; '1e999 in': too large a number
        5 kPa 3 Pa; PRESSURE; '5 kPa 3 Pa': more than one quantity
        3 in 6 ft; LENGTH; '3 in 6 ft': more than one quantity
        2.5; COUNT; '2.5'
        45; DURATION; '45', without a unit
        -300 °C; TEMPERATURE; '-300 °C', colder than absolute zero""")
    void whatIsNotUnderstoodIsSaidPlainly(String text, Dimension dimension, String found) {
        assertThat(problem(text, dimension).found()).isEqualTo(found);
    }

    @Test
    void theProblemSaysWhatWouldBeUnderstood() {
        assertThat(problem("lots", Dimension.AIR_FLOW).expected())
                .isEqualTo("an air flow, such as 12 L/min or 0.4 cfm");
    }

    @Test
    void noTextIsTooLongToRefuse() {
        assertThat(problem("9".repeat(10_000), Dimension.BORE).found()).isEqualTo("a text of 10000 characters");
    }

    @Property(tries = 2000)
    void noTextMakesItThrow(@ForAll @StringLength(max = 120) String text, @ForAll Dimension dimension) {
        assertThat(Quantities.parse(text, dimension, US)).isNotNull();
    }

    @Property(tries = 2000)
    void noTextOfItsOwnSignsMakesItThrow(@ForAll("almost") String text, @ForAll Dimension dimension) {
        assertThat(Quantities.parse(text, dimension, METRIC)).isNotNull();
    }

    @Provide
    Arbitrary<String> almost() {
        return Arbitraries.strings()
                .withChars("0123456789 .,/-+'\"°½e infthmskpLlH2OcgaW%")
                .ofMaxLength(20);
    }

    @Property(tries = 2000)
    void whatIsShownIsReadBackToTheSameText(
            @ForAll Dimension dimension,
            @ForAll DisplayUnits units,
            @ForAll @DoubleRange(min = 1.0, max = 999.0) double size) {
        String shown = Quantities.show(size, dimension, units);
        assertThat(Quantities.show(si(shown, dimension, units), dimension, units))
                .isEqualTo(shown);
    }

    @Property
    void whatIsShownIsReadBackWithinItsThreeFigures(
            @ForAll("ofThreeFigures") Dimension dimension,
            @ForAll DisplayUnits units,
            @ForAll @DoubleRange(min = 10_000.0, max = 99_900.0) double size) {
        String shown = Quantities.show(size, dimension, units);
        assertThat(si(shown, dimension, units)).as(shown).isCloseTo(size, withinPercentage(THIRD_FIGURE_PERCENT));
    }

    @Provide
    Arbitrary<Dimension> ofThreeFigures() {
        return Arbitraries.of(PRESSURE, AIR_FLOW, WATER_FLOW, BORE, POWER, ENERGY, VOLUME, CONCENTRATION, FLOOR_LOAD);
    }

    @Property
    void depthsInInchesAreReadBackWithinAnEighth(@ForAll @DoubleRange(min = 0.01, max = 3.0) double depthM) {
        String shown = Quantities.show(depthM, Dimension.DEPTH, US);
        assertThat(si(shown, Dimension.DEPTH, US)).as(shown).isCloseTo(depthM, within(0.0254 / 8 + ROUNDING));
    }

    @Property
    void lengthsInFeetAreReadBackWithinHalfAnInch(@ForAll @DoubleRange(min = 0.01, max = 30.0) double lengthM) {
        String shown = Quantities.show(lengthM, Dimension.LENGTH, US);
        assertThat(si(shown, Dimension.LENGTH, US)).as(shown).isCloseTo(lengthM, within(0.0254 / 2 + ROUNDING));
    }
}
