package lungfish.rescue;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.Catalogue;
import lungfish.plan.DemoPlans;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.TankBuilder;
import lungfish.room.Wishes;

/** Random small rooms whose tanks live from a quarter of an hour to days without air, and a catalogue of few means. */
final class RescueRooms {
    /** Two kinds of battery and one kind of battery pump. */
    static final Catalogue FEW = few(DemoPlans.CATALOGUE);

    private static final double HOUR_S = 3600;
    private static final double L_PER_MIN = 1e-3 / 60;

    private final Random random;

    private RescueRooms(long seed) {
        this.random = new Random(seed);
    }

    static Stream<Room> rooms(int count) {
        RescueRooms rooms = new RescueRooms(20_261_126);
        return Stream.generate(rooms::next).limit(count);
    }

    private static Catalogue few(Catalogue all) {
        return new Catalogue(
                all.devices(),
                all.airlines(),
                all.valves(),
                all.checkValves(),
                all.pipes(),
                all.fittings(),
                all.blowers(),
                all.batteries().subList(1, 3),
                all.accessories(),
                all.tankSizes(),
                all.backupGear().stream()
                        .filter(each -> each.kind() != BackupClass.Kind.BATTERY_PUMP
                                || each.id().equals("battery-pump-small"))
                        .toList(),
                all.building(),
                all.services(),
                all.assumed());
    }

    private Room next() {
        RoomBuilder room = aRoom().with(
                        aMain("main", random.nextBoolean(), at(0.2, 0.2), at(4, 0.2), at(4, 3), at(0.2, 3)))
                .with(aBlower("one").machine("linear-diaphragm-30").at(0.2, 0.2, 2.3))
                .with(Wishes.NONE.withRuntimeS(OptionalDouble.of(hours(2, 20))))
                .with(backup());
        if (random.nextInt(3) == 0) {
            room.with(aBlower("two").machine("linear-diaphragm-30").at(4, 3, 2.3));
        }
        if (random.nextInt(4) == 0) {
            room.with(aBlower("spare").standby().machine("linear-diaphragm-30").at(0.5, 0.2, 2.3));
        }
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            room.with(aRack("r" + i).at(0.4, 0.5 + 1.2 * i).shelf(0.4, tanks("r" + i)));
        }
        return room.build();
    }

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, 2.2);
    }

    private TankBuilder[] tanks(String rack) {
        TankBuilder[] tanks = new TankBuilder[1 + random.nextInt(3)];
        for (int i = 0; i < tanks.length; i++) {
            OutletBuilder outlet = anOutlet(rack + "o" + i)
                    .device("sponge-medium")
                    .depthM(0.05 + 0.2 * random.nextDouble())
                    .targetM3PerS((1 + 2 * random.nextDouble()) * L_PER_MIN);
            tanks[i] = lives(aTank(rack + "t" + i).at(0.65 * i))
                    .with(random.nextInt(3) == 0 ? outlet.essential() : outlet);
        }
        return tanks;
    }

    /** Now and then more fish than any air keeps. */
    private TankBuilder lives(TankBuilder tank) {
        if (random.nextInt(15) == 0) {
            return tank.fish(20, 0.1);
        }
        return random.nextInt(4) == 0
                ? tank.survivalS(hours(0.25, 30))
                : tank.fish(1 + random.nextInt(6), 0.002 + 0.01 * random.nextDouble());
    }

    private Backup backup() {
        Backup backup = Backup.NONE;
        if (random.nextInt(3) == 0) {
            backup = backup.withNoticeS(OptionalDouble.of(hours(0.2, 4)));
        }
        if (random.nextInt(3) == 0) {
            backup = backup.withMendS(OptionalDouble.of(hours(1, 30)));
        }
        if (random.nextInt(3) == 0) {
            backup = backup.withBatteries(List.of(battery()));
        }
        if (random.nextInt(3) == 0) {
            backup = backup.withShedding(Optional.of(new Backup.Shedding("valve", "who")));
        }
        return backup;
    }

    private static Backup.Battery battery() {
        return new Backup.Battery(
                new BatteryId("battery"),
                "lifepo4",
                1,
                12.8,
                40 * 3600,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private double hours(double least, double most) {
        return HOUR_S * (least + (most - least) * random.nextDouble());
    }
}
