package lungfish.measured;

import java.util.List;
import java.util.stream.DoubleStream;
import lungfish.air.JarFill;
import lungfish.room.OutletId;
import lungfish.room.Reading;

/** What jars tell of the air of outlets. */
record Jars(Ground ground) {
    /** Free air of an outlet by each of its jars that was read while nothing else stood shut, m³/s. */
    double[] flows(List<Reading> readings, OutletId outlet) {
        return readings.stream()
                .filter(reading -> reading.shut().equals(Reading.Shut.NOTHING))
                .flatMapToDouble(reading -> reading.measured() instanceof Reading.Jar jar
                                && jar.outlet().equals(outlet)
                        ? DoubleStream.of(flow(jar))
                        : DoubleStream.empty())
                .toArray();
    }

    /** Free air, m³/s: its mouth is held just below the surface. */
    double flow(Reading.Jar jar) {
        int i = ground.outlet(jar.outlet());
        var tank = ground.needs().get(i).seat().tank();
        return JarFill.freeAirM3PerS(
                jar.jarM3().orElse(ground.jarM3()),
                0,
                ground.around().water(tank),
                ground.around().freeAir(),
                jar.s());
    }
}
