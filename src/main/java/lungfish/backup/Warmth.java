package lungfish.backup;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import lungfish.catalogue.BatteryClass.Chemistry;

/** How much of its charge a battery gives at a temperature. */
public final class Warmth {
    /**
     * Cell size correction of lead-acid over the electrolyte's temperature in °F, 77 °F being 1: IEEE Std 485, Table 1.
     * The rows at 40, 50, 68, 77, 90 and 100 were seen again in a reproduction; the others are from memory.
     */
    private static final NavigableMap<Double, Double> LEAD_ACID = new TreeMap<>(Map.ofEntries(
            Map.entry(25.0, 1.52),
            Map.entry(30.0, 1.43),
            Map.entry(35.0, 1.35),
            Map.entry(40.0, 1.30),
            Map.entry(45.0, 1.25),
            Map.entry(50.0, 1.19),
            Map.entry(55.0, 1.15),
            Map.entry(60.0, 1.11),
            Map.entry(65.0, 1.08),
            Map.entry(68.0, 1.056),
            Map.entry(70.0, 1.04),
            Map.entry(77.0, 1.0),
            Map.entry(80.0, 0.98),
            Map.entry(85.0, 0.96),
            Map.entry(90.0, 0.94),
            Map.entry(95.0, 0.93),
            Map.entry(100.0, 0.91),
            Map.entry(110.0, 0.88),
            Map.entry(120.0, 0.86)));

    /** Share of its charge that lithium iron phosphate gives, over °C: typical of cell tests, from memory. */
    private static final NavigableMap<Double, Double> IRON_PHOSPHATE =
            new TreeMap<>(Map.of(-20.0, 0.6, 0.0, 0.85, 25.0, 1.0));

    private static final double ZERO_CELSIUS_K = 273.15;

    private Warmth() {}

    /**
     * How much larger a lead-acid cell must be than at 25 °C. IEEE Std 485, Table 1; a straight line between its rows,
     * its end rows beyond them.
     */
    public static double leadAcidSizeFactor(double temperatureK) {
        return between(LEAD_ACID, (temperatureK - ZERO_CELSIUS_K) * 1.8 + 32);
    }

    /** Share of its charge that lithium iron phosphate gives, 1 at 25 °C and above; from memory. */
    public static double ironPhosphateShare(double temperatureK) {
        return between(IRON_PHOSPHATE, temperatureK - ZERO_CELSIUS_K);
    }

    /** Share of the rated charge, 0 to 1. What a warm battery gives beyond its rating is not counted. */
    static double share(Chemistry chemistry, double temperatureK) {
        return switch (chemistry) {
            case LEAD_ACID_FLOODED, LEAD_ACID_SEALED -> Math.min(1, 1 / leadAcidSizeFactor(temperatureK));
            case LITHIUM_IRON_PHOSPHATE -> ironPhosphateShare(temperatureK);
        };
    }

    private static double between(NavigableMap<Double, Double> table, double at) {
        Map.Entry<Double, Double> below = table.floorEntry(at);
        Map.Entry<Double, Double> above = table.ceilingEntry(at);
        if (below == null) {
            return table.firstEntry().getValue();
        }
        if (above == null) {
            return table.lastEntry().getValue();
        }
        double span = above.getKey() - below.getKey();
        double share = span == 0 ? 0 : (at - below.getKey()) / span;
        return below.getValue() + share * (above.getValue() - below.getValue());
    }
}
