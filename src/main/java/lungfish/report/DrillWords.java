package lungfish.report;

import java.util.OptionalDouble;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.Catalogue;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Assumable;
import lungfish.room.Backup;

/** Phrases that several parts of a drill card share. */
final class DrillWords {
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final DrillTimes times;

    DrillWords(Catalogue catalogue, Quantities quantities, DrillTimes times) {
        this.catalogue = catalogue;
        this.quantities = quantities;
        this.times = times;
    }

    /** "7 h 20 min", rounded down; "nobody knows how long" where it is not known. */
    String time(OptionalDouble s) {
        return s.isPresent() ? times.moment(s).said() : "nobody knows how long";
    }

    /** "4 of them, 12 h each." */
    String pumps(Backup.BatteryPumps pumps) {
        String each = catalogue
                .backupGear(pumps.kind())
                .map(BackupClass::runtimeS)
                .map(s -> ", " + time(OptionalDouble.of(s)) + " each")
                .orElse("");
        return pumps.count() + " of them" + each + ".";
    }

    /** "Fuel for 8 h (assumed)." */
    String generator(Backup.Generator generator) {
        double s = generator
                .fuelS()
                .orElse(catalogue.assumed(Assumable.GENERATOR_FUEL).si());
        String assumed = generator.fuelS().isPresent() ? "" : " (assumed)";
        return "Fuel for " + time(OptionalDouble.of(s)) + assumed + ".";
    }

    /** Whether the standby starts by itself. */
    boolean isAutomatic(Backup backup) {
        return backup.standby()
                .filter(each -> each.start() == Backup.Standby.Start.AUTOMATIC)
                .isPresent();
    }

    String watts(double w) {
        return quantities.show(w, Dimension.POWER);
    }

    String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }
}
