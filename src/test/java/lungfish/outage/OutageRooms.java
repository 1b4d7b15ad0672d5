package lungfish.outage;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.Blower;
import lungfish.room.BlowerBuilder;
import lungfish.room.CircuitId;
import lungfish.room.OutletBuilder;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;

/** A small room whose air stops in tests: four outlets in three tanks on an open main, the first two essential. */
final class OutageRooms {
    static final double HOUR_S = 3600;
    static final double TARGET_M3_PER_S = 0.8 / 60_000;

    private OutageRooms() {}

    /** Tank t1 with o1 and o2 (essential), t2 with o3, t3 with o4; fish in all of them. */
    static RoomBuilder aFishRoom(BlowerBuilder... blowers) {
        RoomBuilder room = aRoom().with(aRack("r")
                        .at(0.5, 0.5)
                        .shelf(
                                0.5,
                                aTank("t1")
                                        .fish(10, 0.001)
                                        .with(outlet("o1").essential())
                                        .with(outlet("o2").essential()),
                                aTank("t2").at(0.65).fish(10, 0.001).with(outlet("o3")),
                                aTank("t3").at(1.3).fish(5, 0.001).with(outlet("o4"))))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)));
        for (BlowerBuilder blower : blowers) {
            room.with(blower);
        }
        return room;
    }

    static OutletBuilder outlet(String id) {
        return anOutlet(id).device("sponge-small").depthM(0.2).targetM3PerS(TARGET_M3_PER_S);
    }

    /** A blower at the start of the main, of which nothing is bled. */
    static BlowerBuilder unbled(String id) {
        return aBlower(id)
                .machine("linear-diaphragm-15")
                .bleed(new Blower.Unbled())
                .at(0.3, 0.2, 2.2);
    }

    /** Lithium iron phosphate of 12.8 V, new and at 25 °C, behind an inverter of 90 % that draws 5 W. */
    static Backup battery(double ampereHours) {
        return Backup.NONE
                .withBatteries(List.of(new Backup.Battery(
                        new BatteryId("battery"),
                        "lifepo4",
                        1,
                        12.8,
                        ampereHours * 3600,
                        OptionalDouble.of(298.15),
                        OptionalDouble.of(1),
                        Optional.of(new CircuitId("blower circuit")))))
                .withInverter(Optional.of(new Backup.Inverter(
                        OptionalDouble.of(0.9),
                        OptionalDouble.of(5),
                        OptionalDouble.of(300),
                        OptionalDouble.of(600),
                        Optional.empty())));
    }

    /** What may be drawn of such a battery, J: 80 % of its rated energy. */
    static double usableJ(double ampereHours) {
        return 0.8 * 12.8 * ampereHours * 3600;
    }

    /** What such an inverter draws for a load, W. */
    static double batteryW(double watts) {
        return watts / 0.9 + 5;
    }

    static Plan plan(Room room) {
        return new Planner(DemoPlans.CATALOGUE).plan(room);
    }

    static Drill play(Room room, Scene scene) {
        return play(plan(room), scene);
    }

    static Drill play(Plan plan, Scene scene) {
        return Drills.of(plan, DemoPlans.CATALOGUE).orElseThrow().play(scene);
    }

    /** What happens in the next hours, mended as the room's habits are. */
    static Scene scene(Failing what, double hours) {
        return new Scene(what, OptionalDouble.empty(), hours * HOUR_S);
    }

    /** The air of an outlet in a stretch, m³/s. */
    static double air(Drill drill, Stretch stretch, String outlet) {
        for (int i = 0; i < drill.needs().size(); i++) {
            if (drill.needs().get(i).id().equals(new OutletId(outlet))) {
                return stretch.airM3PerS().get(i);
            }
        }
        throw new IllegalArgumentException("no outlet " + outlet);
    }

    static TankDrill tank(Drill drill, String id) {
        return drill.tanks().stream()
                .filter(tank -> tank.tank().id().text().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
