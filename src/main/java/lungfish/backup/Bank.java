package lungfish.backup;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

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
        return each(energy).sum();
    }

    /** How long it carries a load, s. */
    double runtimeS(double loadW) {
        return runtimeS(loadW, 1);
    }

    /** The energy that a steady load draws from full batteries, J. */
    double usableJ(double loadW) {
        return usableJ(loadW, 1);
    }

    /** A figure of each. */
    DoubleStream each(ToDoubleFunction<Store> figure) {
        return stores.stream().mapToDouble(figure);
    }

    /** The same for a bank so many times as large. */
    private double runtimeS(double loadW, double size) {
        return usableJ(loadW, size) / inverting.batteryW(loadW);
    }

    private double usableJ(double loadW, double size) {
        double wholeS = size * ratedJ() / inverting.batteryW(loadW);
        return size * sum(store -> store.drawnJ(wholeS));
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
