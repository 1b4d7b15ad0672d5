package lungfish.backup;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Batteries behind one inverter. Each gives power in proportion to its rated energy, so all are drawn at one rate:
 * different kinds side by side only add their energies.
 */
record Bank(List<Store> stores, Inverting inverting) {
    private static final int BISECTIONS = 80;

    Bank {
        stores = List.copyOf(stores);
    }

    double ratedJ() {
        return sum(Store::ratedJ);
    }

    double sum(ToDoubleFunction<Store> energy) {
        return stores.stream().mapToDouble(energy).sum();
    }

    /** How long it carries a load, s. */
    double runtimeS(double loadW) {
        return runtimeS(loadW, 1);
    }

    /** The same for a bank so many times as large. */
    private double runtimeS(double loadW, double size) {
        double batteryW = inverting.batteryW(loadW);
        double wholeS = size * ratedJ() / batteryW;
        return size * sum(store -> store.drawnJ(wholeS)) / batteryW;
    }

    /** How many times as large a bank of the same make carries a load for a time. */
    double sizeFor(double loadW, double wantedS) {
        double high = 1;
        while (runtimeS(loadW, high) < wantedS) {
            high *= 2;
        }
        double low = 0;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (runtimeS(loadW, middle) < wantedS) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
