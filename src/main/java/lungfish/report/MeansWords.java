package lungfish.report;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import lungfish.catalogue.BackupClass;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.rescue.Means;
import lungfish.rescue.MeansSet;
import lungfish.room.BlowerId;

/** Means that keep tanks alive, in words. */
public final class MeansWords {
    private final Quantities quantities;
    private final Names names;

    public MeansWords(Quantities quantities, Names names) {
        this.quantities = quantities;
        this.names = names;
    }

    /** "3 × Lead-acid 12 V 100 Ah with inverter, sine, 300 W + Pressure switch with a siren". */
    public String says(MeansSet set) {
        return set.means().isEmpty()
                ? "The room as it is"
                : set.means().stream().map(this::says).collect(joining(" + "));
    }

    /** One of them. */
    public String says(Means means) {
        if (means instanceof Means.Alarm alarm) {
            return alarm.kind().name();
        }
        if (means instanceof Means.Battery battery) {
            return battery(battery);
        }
        if (means instanceof Means.Shedding shedding) {
            return counted(shedding.valves(), shedding.kind().name()) + ", turned by whoever notices first";
        }
        if (means instanceof Means.BatteryPumps pumps) {
            return counted(pumps.count(), pumps.kind().name()) + ", on the essential outlets";
        }
        if (means instanceof Means.Generator generator) {
            return generator.buy().map(BackupClass::name).orElse("For the generator") + ", fuel for "
                    + time(generator.fuelS());
        }
        return means instanceof Means.Standby standby ? standby(standby) : "Shed nothing: leave its valves open";
    }

    private String battery(Means.Battery battery) {
        String inverter = battery.inverter().map(BackupClass::name).orElse("");
        if (battery.count() == 0) {
            return inverter;
        }
        String size = " " + quantities.show(battery.voltageV(), Dimension.VOLTAGE) + " "
                + quantities.show(battery.chargeC(), Dimension.CHARGE);
        return counted(battery.count(), battery.kind().name() + size)
                + (inverter.isEmpty() ? "" : ", " + midSentence(inverter));
    }

    private String standby(Means.Standby standby) {
        String start = standby.changeover()
                .map(kind -> "by itself: " + counted(standby.starting(), midSentence(kind.name())))
                .orElse("by hand");
        if (standby.beside().isEmpty()) {
            return "The standby starts " + start;
        }
        List<String> beside =
                standby.beside().stream().map(BlowerId::part).map(names::of).toList();
        return "Standby, " + midSentence(standby.kind().name()) + ", beside " + String.join(" and ", beside)
                + ", started " + start;
    }

    private static String counted(int count, String name) {
        return count == 1 ? name : count + " × " + name;
    }

    private static String midSentence(String name) {
        return name.length() > 1 && Character.isLowerCase(name.charAt(1))
                ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1)
                : name;
    }

    private String time(double seconds) {
        return quantities.show(seconds, Dimension.DURATION);
    }
}
