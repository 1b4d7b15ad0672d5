package lungfish.logbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Log;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.ReadingId;
import lungfish.room.Room;
import lungfish.room.Service;
import lungfish.room.ServiceId;

/** A log that a keeper could have written, for tests. */
public final class Logs {
    public static final LocalDate START = LocalDate.of(2025, 2, 1);

    /** A year after the start. */
    public static final LocalDate TODAY = LocalDate.of(2026, 2, 1);

    private Logs() {}

    /** A year in which the gauge falls by 1.2 kPa from this, read every two months, with some services. */
    public static Room aYear(Room room, double fromPa) {
        List<Reading> readings = new ArrayList<>();
        double[] gauges = {0, 100, 350, 500, 800, 950, 1200};
        for (int i = 0; i < gauges.length; i++) {
            LocalDate on = START.plusDays(60L * i);
            readings.add(reading("g" + i, on, new Reading.Gauge(Optional.empty(), fromPa - gauges[i])));
            readings.add(reading("w" + i, on, new Reading.Watts(Optional.empty(), 34 - 0.3 * i)));
        }
        OutletId outlet = room.seats().get(0).outlet().id();
        readings.add(reading("j", START.plusDays(5), new Reading.Jar(outlet, 24, OptionalDouble.of(1e-3))));
        readings.add(reading("f", START, new Reading.Fall(6000, 5000, 60)));
        List<Service> services = List.of(
                service("s1", START, Service.Kind.BLOWER_NEW),
                service("s2", START.plusDays(70), Service.Kind.DEVICE_CLEANED),
                service("s3", START.plusDays(180), Service.Kind.FILTER_CHANGED),
                service("s4", START.plusDays(190), Service.Kind.DEVICE_CLEANED),
                service("s5", START.plusDays(320), Service.Kind.DEVICE_CLEANED));
        return room.withLog(new Log(readings, services, List.of()));
    }

    private static Reading reading(String id, LocalDate on, Reading.Measured measured) {
        return new Reading(new ReadingId(id), on, measured, Reading.Shut.NOTHING, Optional.empty());
    }

    private static Service service(String id, LocalDate on, Service.Kind kind) {
        return new Service(new ServiceId(id), on, kind, List.of(), Optional.empty(), Optional.empty());
    }
}
