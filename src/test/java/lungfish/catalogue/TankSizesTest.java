package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TankSizesTest {
    /** A trade size is a name, not a measure: a tank sold by its gallons holds about those, brim full. */
    private static final double TRADE_NAME_PERCENT = 16;

    /** Litres in a name are whole: an 8 L tank may hold half a litre more or less. */
    private static final double WHOLE_LITRES_PERCENT = 7;

    /** NIST SP 811: the US gallon is 231 cubic inches of 25.4 mm. */
    private static final double GALLON_M3 = 231 * 0.0254 * 0.0254 * 0.0254;

    private static final List<TankSize> SIZES = CatalogueFiles.load().tankSizes();

    private static double brimM3(TankSize size) {
        return size.lengthM() * size.widthM() * size.heightM();
    }

    /** "2 1/2 gal, 12 × 6 × 8 in": the gallons before the word. */
    private static double gallons(TankSize size) {
        return Arrays.stream(
                        size.name().substring(0, size.name().indexOf(" gal")).split(" "))
                .mapToDouble(each -> each.equals("1/2") ? 0.5 : Double.parseDouble(each))
                .sum();
    }

    @Test
    void bothTradesHaveSmallAndLargeTanks() {
        for (TankSize.Trade trade : TankSize.Trade.values()) {
            List<TankSize> sizes =
                    SIZES.stream().filter(size -> size.trade() == trade).toList();
            assertThat(sizes).anyMatch(size -> brimM3(size) < 0.02);
            assertThat(sizes).anyMatch(size -> brimM3(size) > 0.4);
        }
    }

    @Test
    void gallonsInANameAreAboutWhatTheTankHolds() {
        SIZES.stream().filter(size -> size.trade() == TankSize.Trade.US).forEach(size -> assertThat(brimM3(size))
                .as(size.name())
                .isCloseTo(gallons(size) * GALLON_M3, withinPercentage(TRADE_NAME_PERCENT)));
    }

    @Test
    void litresInANameAreWhatTheTankHoldsBrimFull() {
        SIZES.stream().filter(size -> size.trade() == TankSize.Trade.METRIC).forEach(size -> assertThat(
                        brimM3(size) * 1000)
                .as(size.name())
                .isCloseTo(
                        Double.parseDouble(size.name().replaceAll(".*, | L", "")),
                        withinPercentage(WHOLE_LITRES_PERCENT)));
    }

    @Test
    void theWaterStaysBelowTheRim() {
        assertThat(SIZES)
                .allMatch(size -> size.waterDepthM() < size.heightM() && size.waterDepthM() > 0.5 * size.heightM());
    }
}
