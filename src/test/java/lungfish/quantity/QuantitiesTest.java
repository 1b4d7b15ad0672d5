package lungfish.quantity;

import static lungfish.quantity.DisplayUnits.METRIC;
import static lungfish.quantity.DisplayUnits.US;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers are shown. Expected texts are worked out by hand from the factors of NIST SP 811. */
final class QuantitiesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
        # si; dimension; shown
        6620; PRESSURE; 6.62 kPa
        12040; PRESSURE; 12.0 kPa
        57; PRESSURE; 57.0 Pa
        3; PRESSURE; 3.0 Pa
        0; PRESSURE; 0 kPa
        -200; PRESSURE; -0.20 kPa
        0.0002; AIR_FLOW; 12.0 L/min
        0.00002; AIR_FLOW; 1.20 L/min
        0.00000085; AIR_FLOW; 0.051 L/min
        0.005; AIR_FLOW; 300 L/min
        0.0206; AIR_FLOW; 1240 L/min
        3.2; LENGTH; 3.2 m
        12.44; LENGTH; 12.4 m
        0.45; DEPTH; 45 cm
        0.385; DEPTH; 38.5 cm
        0.004; BORE; 4 mm
        0.0351; BORE; 35.1 mm
        1609; ALTITUDE; 1610 m
        298.15; TEMPERATURE; 25 °C
        78; POWER; 78.0 W
        1250; POWER; 1.25 kW
        1000000; ENERGY; 278 Wh
        3600000000; ENERGY; 1000 kWh
        46.4; SOUND_LEVEL; 46 dB(A)
        0.284; VOLUME; 284 L
        0.0125; MASS; 12.5 g
        0.123; SHARE; 12 %
        0.042; SHARE; 4.2 %
        0.08; SHARE; 8 %
        1234; COUNT; 1234
        0.0011; TURNOVER; 4.0 turns/h
        0.0064; CONCENTRATION; 6.4 mg/L
        230; VOLTAGE; 230 V
        360000; CHARGE; 100 Ah
        2000; FLOOR_LOAD; 2.00 kN/m²""")
    void metricReadsLikeThis(double si, Dimension dimension, String shown) {
        assertThat(Quantities.show(si, dimension, METRIC)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
        # si; dimension; shown
        6620; PRESSURE; 0.960 psi
        57; PRESSURE; 0.00827 psi
        0.0002; AIR_FLOW; 12.0 L/min
        0.00004; WATER_FLOW; 38.0 gph
        6.096; LENGTH; 20 ft
        1.9177; LENGTH; 6 ft 3 1/2 in
        0.4572; LENGTH; 1 ft 6 in
        0.2032; LENGTH; 8 in
        5.0; LENGTH; 16 ft 5 in
        40; LENGTH; 131 ft
        0.38; DEPTH; 15 in
        0.3874; DEPTH; 15 1/4 in
        0.00635; DEPTH; 1/4 in
        3.1; DEPTH; 10 ft 2 in
        0.035052; BORE; 1.38 in
        0.004; BORE; 0.157 in
        298.15; TEMPERATURE; 77 °F
        0.2839; VOLUME; 75 gal
        0.000473; VOLUME; 1 pt
        0.0125; MASS; 0.44 oz
        0.9; MASS; 2 lb
        2000; FLOOR_LOAD; 41.8 lb/ft²
        78; POWER; 78.0 W""")
    void usReadsLikeThis(double si, Dimension dimension, String shown) {
        assertThat(Quantities.show(si, dimension, US)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
        0; 0 s
        8.44; 8.4 s
        95; 95 s
        119.6; 2 min
        200; 3 min 20 s
        596; 10 min
        2700; 45 min
        3597; 1 h
        26400; 7 h 20 min
        26500; 7 h 20 min
        35900; 10 h
        111600; 31 h
        432000; 5.0 days
        78840000; 2.5 years""")
    void timesReadAsOneSaysThem(double seconds, String shown) {
        assertThat(Quantities.show(seconds, Dimension.DURATION, METRIC)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
        118.4; $; $118
        -118.4; $; -$118
        1249; EUR; 1249 EUR
        12.5; EUR; 12.5 EUR
        0.31; kr; 0.31 kr""")
    void moneyCarriesTheCurrencyOfTheRoom(double amount, String currency, String shown) {
        assertThat(new Quantities(METRIC, currency).show(amount, Dimension.MONEY))
                .isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            textBlock = """
        118.4; $; 118
        -118.4; €; -118
        1249; EUR; 1249""")
    void theNumberAloneCarriesNoCurrency(double amount, String currency, String shown) {
        assertThat(new Quantities(METRIC, currency).number(amount, Dimension.MONEY))
                .isEqualTo(shown);
    }

    /** 1 m³/s is 60 000 L/min. */
    @Test
    void theNumberAloneCarriesNoUnit() {
        Quantities metric = new Quantities(METRIC, "EUR");
        assertThat(metric.number(1.5 / 60_000, Dimension.AIR_FLOW)).isEqualTo("1.50");
        assertThat(metric.number(Double.NaN, Dimension.AIR_FLOW)).isEqualTo("unknown");
        assertThat(metric.number(Double.POSITIVE_INFINITY, Dimension.AIR_FLOW)).isEqualTo("without end");
    }

    @Test
    void thePriceOfEnergyIsThatOfAKilowattHour() {
        // 0.36 for 3.6 MJ
        assertThat(new Quantities(METRIC, "EUR").show(1e-7, Dimension.ENERGY_PRICE))
                .isEqualTo("0.36 EUR per kWh");
        assertThat(new Quantities(US, "$").show(1e-7, Dimension.ENERGY_PRICE)).isEqualTo("$0.36 per kWh");
        // 8.5e-8 · 3.6e6 = 0.306: rounded to cents, a keeper who multiplies would not find our cost
        assertThat(new Quantities(METRIC, "EUR").show(8.5e-8, Dimension.ENERGY_PRICE))
                .isEqualTo("0.306 EUR per kWh");
    }

    @Test
    void whatIsNoNumberSaysSo() {
        assertThat(Quantities.show(Double.NaN, Dimension.PRESSURE, US)).isEqualTo("unknown");
        assertThat(Quantities.show(Double.POSITIVE_INFINITY, Dimension.DURATION, US))
                .isEqualTo("without end");
    }

    @Test
    void theDecimalPointIsAPointInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Quantities.show(6620, Dimension.PRESSURE, METRIC)).isEqualTo("6.62 kPa");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property
    void noFigureIsLongerThanThreeAndItsZeros(@ForAll @DoubleRange(min = 0.01, max = 1e6) double si) {
        String digits = Quantities.show(si, Dimension.POWER, METRIC).replaceAll("[^0-9]", "");
        assertThat(digits.replaceAll("^0+", "").replaceAll("0+$", "").length()).isLessThanOrEqualTo(3);
    }

    @Property
    void aLiveFigureKeepsItsWidth(@ForAll @DoubleRange(min = 10.0, max = 99.9) double litres) {
        assertThat(Quantities.show(litres / 60_000, Dimension.AIR_FLOW, METRIC)).hasSize("12.0 L/min".length());
    }
}
