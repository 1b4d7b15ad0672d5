package lungfish.measured;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lungfish.air.JarFill;
import lungfish.blower.Wear;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.piping.PipedRoom;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Log;
import lungfish.room.Reading;
import lungfish.room.ReadingId;
import lungfish.sizing.Fleet;
import org.junit.jupiter.api.Test;

/**
 * A room whose valves stand at the openings that are typed, as nobody set them by the jar, and in which one class of devices takes
 * otherwise than the catalogue says: solved here, read exactly.
 */
final class DevicesTest {
    private static final Plan GARAGE = DemoPlans.plan("garage-killifish");

    private static MeasuredRoom measured(String device, double factor) {
        PipedRoom piped = GARAGE.piped().orElseThrow();
        Fleet fleet = GARAGE.duty().orElseThrow().candidate().fleet();
        Network clean =
                piped.network(Upkeep.CLEAN, fleet.fixedSources(fleet.placed().isEmpty() ? 0 : holdPa()));
        List<Drop> drops = IntStream.range(0, piped.needs().size())
                .mapToObj(i -> scaled(clean.drops().get(i), piped.needs().get(i), device, factor))
                .toList();
        AsSet set = Solver.of(clean.withDrops(drops)).asSet().match(found -> found, tuned -> null, refused -> null);
        assertThat(fleet.freeAt(holdPa(), Wear.NEW)).isGreaterThan(set.totalFreeM3PerS()); // the bleed holds it
        List<Reading> readings = new ArrayList<>();
        readings.add(reading("gauge", new Reading.Gauge(Optional.empty(), holdPa())));
        Surroundings around = Surroundings.of(GARAGE.room(), DemoPlans.CATALOGUE);
        for (int i = 0; i < drops.size(); i++) {
            Need need = piped.needs().get(i);
            double s = JarFill.seconds(
                    1e-3,
                    0,
                    around.water(need.seat().tank()),
                    around.freeAir(),
                    set.drop(i).freeM3PerS());
            readings.add(reading("jar " + i, new Reading.Jar(need.id(), s, OptionalDouble.of(1e-3))));
        }
        Plan read =
                new Planner(DemoPlans.CATALOGUE).plan(GARAGE.room().withLog(new Log(readings, List.of(), List.of())));
        return MeasuredRoom.of(read, DemoPlans.CATALOGUE, Keeper.TODAY).orElseThrow();
    }

    private static double holdPa() {
        return GARAGE.duty().orElseThrow().candidate().fresh().gaugePa();
    }

    private static Drop scaled(Drop drop, Need need, String device, double factor) {
        Resistance clean = need.device().clean();
        double by = need.device().id().equals(device) ? factor : 1;
        return drop.withDevice(new Device(by * clean.p0Pa(), by * clean.aPaSPerM3(), by * clean.bPaS2PerM6()));
    }

    private static Reading reading(String id, Reading.Measured measured) {
        return new Reading(new ReadingId(id), Keeper.TODAY, measured, Reading.Shut.NOTHING, Optional.empty());
    }

    /**
     * An ordinary stone at 0.6 L/min takes 1 + 0.4 · 0.6 + 0.05 · 0.36 = 1.258 kPa by the catalogue; 1.2 times as much on top is
     * 1.510 kPa, beyond every doubt; at least half of that is told, since what is known of the class pulls towards it. A third more would not be: nobody knows what a valve takes to a third.
     */
    @Test
    void aClassThatTakesMoreIsNamedWithItsPressure() {
        MeasuredRoom measured = measured("stone-ordinary", 2.2);
        assertThat(measured.fitted().orElseThrow().devices()).singleElement().satisfies(takes -> {
            assertThat(takes.id()).isEqualTo("stone-ordinary");
            assertThat(takes.morePa()).isBetween(755.0, 1510.0);
        });
    }

    @Test
    void nothingIsCorrectedWhereAllIsAsTheCatalogueSays() {
        MeasuredRoom measured = measured("none", 1);
        assertThat(measured.fitted().orElseThrow().devices()).isEmpty();
    }
}
