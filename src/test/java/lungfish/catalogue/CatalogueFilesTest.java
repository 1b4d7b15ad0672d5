package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class CatalogueFilesTest {
    private final Catalogue catalogue = CatalogueFiles.load();

    @ParameterizedTest
    @EnumSource(
            value = Assumable.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"OUTLET_TARGET", "VALVE_KIND", "VALVE_OPENING", "AIRLINE_SIZE"})
    void whatARoomMayLeaveOutHasAnAssumedValue(Assumable key) {
        assertThat(catalogue.assumed(key).source()).isNotBlank();
    }

    /** A price is shown for a kWh, not as money. */
    @Test
    void thePriceOfEnergyIsNoSumOfMoney() {
        assertThat(catalogue.assumed(Assumable.ENERGY_PRICE).dimension()).isEqualTo(Dimension.ENERGY_PRICE);
    }

    @Test
    void practicalUnitsBecomeSi() {
        PipeSize inch = catalogue.pipe("pvc-sch40-1in").orElseThrow();
        assertThat(inch.outsideM()).isEqualTo(0.033401); // 1.315 in of 25.4 mm
        assertThat(catalogue.assumed(Assumable.ENERGY_PRICE).si()).isEqualTo(0.25 / 3.6e6);
        assertThat(catalogue.assumed(Assumable.ROOM_TEMPERATURE).si()).isEqualTo(297.15);
        // 0.12 kPa for each L/min is 120 Pa / (1e-3 / 60 m³/s)
        assertThat(catalogue.checkValve("check-disc").orElseThrow().slopePaSPerM3())
                .isEqualTo(120 * 60e3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        pipes.csv         | 33.401,26.2382 | 33.401,wide    | pipes.csv, row 5, column bore_mm holds 'wide'
        pipes.csv         | 33.401,26.2382 | 33.401,-3      | pipes.csv, row 5, column bore_mm is not above 0
        pipes.csv         | 33.401,26.2382 | 33.401,NaN     | pipes.csv, row 5, column bore_mm holds 'NaN', which is not finite
        pipes.csv         | bore_mm        | bore_cm        | pipes.csv, row 1, column bore_mm is missing
        pipes.csv         | pvc-sch80-1in  | pvc-sch40-1in  | pipes.csv, row 6, column id holds 'pvc-sch40-1in' a second time
        valves.csv        | LINEAR         | CROOKED        | valves.csv, row 2, column characteristic holds 'CROOKED'
        fittings.csv      | ball-valve,Ball valve,0.05,true | ball-valve,Ball valve,0.05,yes | row 15, column valve is neither true nor false
        blower-curves.csv | linear-piston-80,4.95,107.9 | linear-piston-80,4.95,117.9 | column gauge_kpa does not rise
        blower-curves.csv | linear-piston-80,0,116      | linear-piston-81,0,116      | column id holds 'linear-piston-81', which is no blower
        assumed.csv       | HUMIDITY       | ALTITUDE       | assumed.csv, row 3, column key holds ALTITUDE a second time
        """)
    void badDataNamesFileRowAndColumn(String file, String good, String bad, String said) {
        assertThatThrownBy(() -> CatalogueFiles.read(spoilt(file, text -> text.replaceFirst(good, bad))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(said);
    }

    @Test
    void rowsWithoutASourceAreRefused() {
        assertThatThrownBy(() -> CatalogueFiles.read(
                        spoilt("airlines.csv", text -> text.replaceFirst("0.4,nominal[^\n]*", "0.4,"))))
                .hasMessageContaining("airlines.csv, row 1, column source is empty");
    }

    private static Function<String, Reader> spoilt(String file, UnaryOperator<String> spoil) {
        return name -> {
            String text = text(name);
            String changed = name.equals(file) ? spoil.apply(text) : text;
            if (name.equals(file)) {
                assertThat(changed).as("the test spoils something").isNotEqualTo(text);
            }
            return new StringReader(changed);
        };
    }

    private static String text(String name) {
        try (InputStream in = Objects.requireNonNull(CatalogueFiles.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
