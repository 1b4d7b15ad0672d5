package lungfish.quantity;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/** Whatever is typed, reading it does not throw. */
final class QuantityFuzz {
    @FuzzTest(maxDuration = "60s")
    void noTextMakesTheReaderThrow(FuzzedDataProvider data) {
        Dimension dimension = data.pickValue(Dimension.values());
        DisplayUnits units = data.pickValue(DisplayUnits.values());
        Quantities.parse(data.consumeRemainingAsString(), dimension, units);
    }
}
