package lungfish.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Log;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.Service;

/**
 * The log of a room in words.
 *
 * @param names of the room; an outlet that is gone is called by its id
 */
public record LogWords(Quantities quantities, Names names) {
    /** The readings, the newest first; of one day, that which was typed last. */
    public static List<Reading> newestFirst(Log log) {
        List<Reading> all = new ArrayList<>(log.readings());
        Collections.reverse(all);
        all.sort(Comparator.comparing(Reading::on).reversed());
        return List.copyOf(all);
    }

    /** The services, the newest first. */
    public static List<Service> servicesNewestFirst(Log log) {
        List<Service> all = new ArrayList<>(log.services());
        Collections.reverse(all);
        all.sort(Comparator.comparing(Service::on).reversed());
        return List.copyOf(all);
    }

    /** "Jar at outlet A-1-1-a (Blue gularis): 22 s". */
    public String says(Reading reading) {
        String shut = reading.shut().equals(Reading.Shut.NOTHING) ? "" : ", with " + shut(reading.shut()) + " shut";
        return says(reading.measured()) + shut + note(reading.note().orElse(""));
    }

    private String says(Reading.Measured measured) {
        if (measured instanceof Reading.Jar jar) {
            return "Jar at " + names.of(jar.outlet().part()) + ": " + time(jar.s());
        }
        if (measured instanceof Reading.Gauge gauge) {
            return "Gauge" + gauge.at().map(this::where).orElse(" at the blower") + ": " + pressure(gauge.gaugePa());
        }
        if (measured instanceof Reading.Watts watts) {
            return "Watts: " + quantities.show(watts.watts(), Dimension.POWER);
        }
        if (measured instanceof Reading.Level level) {
            return "Level: " + quantities.show(level.dba(), Dimension.SOUND_LEVEL);
        }
        Reading.Fall fall = (Reading.Fall) measured;
        return "Gauge fell from " + pressure(fall.fromPa()) + " to " + pressure(fall.toPa()) + " in " + time(fall.s());
    }

    private String where(Outlet.OnRun at) {
        return " on " + at.run().text() + " at " + quantities.show(at.atM(), Dimension.LENGTH);
    }

    private String shut(Reading.Shut shut) {
        String outlets =
                shut.outlets().isEmpty() ? "" : Sentences.counted(shut.outlets().size(), "outlet");
        String valves =
                shut.valves().isEmpty() ? "" : Sentences.counted(shut.valves().size(), "valve");
        return outlets.isEmpty() || valves.isEmpty() ? outlets + valves : outlets + " and " + valves;
    }

    /** "Devices cleaned, all": what was done, and to what. */
    public String says(Service service) {
        String done = Sentences.capital(LogKinds.done(service.kind()));
        String of = service.outlets().isEmpty()
                ? ""
                : ": " + service.outlets().stream().map(OutletId::text).collect(Collectors.joining(", "));
        return done + of + note(service.note().orElse(""));
    }

    private static String note(String note) {
        return note.isEmpty() ? "" : " (" + note + ")";
    }

    private String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }

    private String time(double s) {
        return quantities.show(s, Dimension.DURATION);
    }
}
