package lungfish.backup;

import lungfish.catalogue.BatteryClass;
import lungfish.reason.Given;
import lungfish.room.Backup.Battery;

/** A battery of the room with its class, its temperature and what is left of its charge. */
record Store(Battery battery, BatteryClass kind, Given temperatureK, Given wear) {
    double ratedJ() {
        return battery.count() * battery.voltageV() * battery.capacityC();
    }

    /** Energy that may be drawn, after the depth of discharge that it bears often. */
    double deepJ() {
        return ratedJ() * kind.usableShare();
    }

    double warmJ() {
        return deepJ() * warmShare();
    }

    double wornJ() {
        return warmJ() * wear.si();
    }

    /**
     * Energy that comes out when the whole bank, full, would be empty in a time at its rated energy. A cold or worn battery
     * is what a warm new one of so much less charge would be (IEEE Std 485 sizes cells so), and so the load is harder on it.
     */
    double drawnJ(double wholeS) {
        return wornJ() * Peukert.share(wholeS * warmShare() * wear.si(), kind.ratedS(), kind.peukert());
    }

    private double warmShare() {
        return Warmth.share(kind.chemistry(), temperatureK.si());
    }
}
