package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lungfish.catalogue.DeviceClass.Resistance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class DeviceClassesTest {

    static Stream<DeviceClass> devices() {
        return CatalogueFiles.load().devices().stream();
    }

    @ParameterizedTest
    @EnumSource(DeviceClass.Kind.class)
    void everyKindHasAClass(DeviceClass.Kind kind) {
        Set<DeviceClass.Kind> kinds = devices().map(DeviceClass::kind).collect(Collectors.toSet());
        assertThat(kinds).contains(kind);
    }

    @ParameterizedTest
    @MethodSource("devices")
    void dueForCleaningADeviceTakesMore(DeviceClass device) {
        double flow = device.typicalM3PerS();
        assertThat(pa(device.due(), flow)).isGreaterThan(pa(device.clean(), flow));
    }

    @ParameterizedTest
    @MethodSource("devices")
    void leastTypicalAndMostFlowAreInOrder(DeviceClass device) {
        assertThat(device.leastM3PerS()).isPositive().isLessThan(device.typicalM3PerS());
        assertThat(device.mostM3PerS().orElseThrow()).isGreaterThan(device.typicalM3PerS());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice, no source: pressure that a device takes at its usual flow, new and due, kPa
        sponge-medium,     0.05, 0.3
        sponge-small,      0.05, 0.3
        sponge-large,      0.05, 0.3
        box-filter,        0.05, 0.3
        moving-bed-small,  0.05, 0.3
        stone-ordinary,    1,    20
        stone-fine,        5,    20
        stone-wood,        5,    12
        # membrane: dynamic wet pressure 1.5 to 4 kPa, design notes of low authority
        diffuser-membrane, 1.5,  4
        """)
    void backPressuresAreThoseOfTheTrade(String id, double leastKpa, double mostKpa) {
        DeviceClass device = CatalogueFiles.load().device(id).orElseThrow();
        assertThat(pa(device.clean(), device.typicalM3PerS()) / 1000).isBetween(leastKpa, mostKpa);
        assertThat(pa(device.due(), device.typicalM3PerS()) / 1000).isBetween(leastKpa, mostKpa);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice, no source: usual flow and range, L/min
        sponge-medium,  1,   2,   4
        stone-ordinary, 0.5, 1,   2
        box-filter,     1,   1.5, 3
        """)
    void usualFlowsAreThoseOfTheTrade(String id, double least, double typical, double most) {
        DeviceClass device = CatalogueFiles.load().device(id).orElseThrow();
        assertThat(device.leastM3PerS()).isEqualTo(least / 60e3);
        assertThat(device.typicalM3PerS()).isEqualTo(typical / 60e3);
        assertThat(device.mostM3PerS()).hasValue(most / 60e3);
    }

    /** The airlift's known range: bores up to 40 mm. */
    @Test
    void upliftTubesLieInTheKnownRange() {
        assertThat(devices().flatMap(each -> each.uplift().stream()))
                .isNotEmpty()
                .allMatch(uplift -> uplift.boreM() > 0.01 && uplift.boreM() <= 0.04);
    }

    private static double pa(Resistance resistance, double flow) {
        return resistance.p0Pa() + resistance.aPaSPerM3() * flow + resistance.bPaS2PerM6() * flow * flow;
    }
}
