package lungfish.choice;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.plan.DemoPlans;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.Blower;
import lungfish.room.BlowerBuilder;
import lungfish.room.Listener;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Supply;
import lungfish.room.TankBuilder;
import lungfish.room.Wishes;

/**
 * Random small rooms, and a catalogue of few and narrow pipes, so narrow that they are felt, and few blowers: every wish and
 * limit stands in some room's way.
 */
final class SmallRooms {
    private static final List<String> BLOWERS =
            List.of("linear-diaphragm-30", "linear-piston-40", "linear-piston-40-120v", "rotary-vane-60");
    static final Catalogue CATALOGUE = few(DemoPlans.CATALOGUE);

    private static final double Z_M = 2.2;
    private static final double L_PER_MIN = 1e-3 / 60;

    private final Random random;

    SmallRooms(long seed) {
        this.random = new Random(seed);
    }

    private static Catalogue few(Catalogue all) {
        return new Catalogue(
                all.devices(),
                all.airlines(),
                all.valves(),
                all.checkValves(),
                List.of(pipe("wide", 0.014, 3), pipe("middle", 0.007, 1.8), pipe("narrow", 0.004, 1.2)),
                all.fittings(),
                all.blowers().stream()
                        .filter(each -> BLOWERS.contains(each.id()))
                        .toList(),
                all.batteries(),
                all.accessories(),
                all.tankSizes(),
                all.backupGear(),
                all.building(),
                all.services(),
                all.assumed());
    }

    private static PipeSize pipe(String id, double boreM, double pricePerM) {
        return new PipeSize(
                id,
                id,
                "test",
                PipeSize.Material.PVC,
                boreM + 0.004,
                boreM,
                0.002,
                1.5e-6,
                313,
                333,
                pricePerM,
                "test");
    }

    Room next() {
        RoomBuilder room = aRoom().with(main()).with(supply()).with(wishes());
        int racks = 1 + random.nextInt(2);
        for (int i = 0; i < racks; i++) {
            room.with(
                    aRack("r" + i).at(0.4 + random.nextDouble(), 0.5 + 1.2 * i).shelf(0.4, tanks("r" + i)));
        }
        if (random.nextInt(4) > 0) {
            room.with(blower());
        }
        if (random.nextBoolean()) {
            room.with(new Listener("chair", new Point(5, 3, 1.2), Optional.empty()));
        }
        if (random.nextBoolean()) {
            room.with(battery());
        }
        return room.build();
    }

    private Run main() {
        List<Point> rectangle = List.of(at(0.2, 0.2), at(4, 0.2), at(4, 3), at(0.2, 3));
        boolean closed = random.nextBoolean();
        List<Point> points = closed ? rectangle : rectangle.subList(0, 2 + random.nextInt(3));
        return new Run(
                new RunId("main"),
                "main",
                Run.Role.MAIN,
                random.nextBoolean() ? "wide" : "narrow",
                closed,
                points,
                List.of());
    }

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, Z_M);
    }

    private TankBuilder[] tanks(String rack) {
        TankBuilder[] tanks = new TankBuilder[1 + random.nextInt(3)];
        for (int i = 0; i < tanks.length; i++) {
            tanks[i] = aTank(rack + "t" + i)
                    .at(0.65 * i)
                    .with(anOutlet(rack + "o" + i)
                            .device(random.nextInt(3) == 0 ? "box-filter" : "sponge-medium")
                            .depthM(0.05 + 0.24 * random.nextDouble())
                            .targetM3PerS((1 + 4 * random.nextDouble()) * L_PER_MIN));
        }
        return tanks;
    }

    private BlowerBuilder blower() {
        Blower.Bleed bleed = List.of(
                        new Blower.Unbled(),
                        new Blower.Unsaid(),
                        new Blower.BledTo(OptionalDouble.of(7000 + 7000 * random.nextDouble())))
                .get(random.nextInt(3));
        BlowerBuilder blower =
                aBlower("central").at(random.nextBoolean() ? 0.2 : 2, 0.2, 2.3).bleed(bleed);
        return random.nextBoolean() ? blower.machine("linear-piston-40") : blower;
    }

    private Supply supply() {
        return Supply.UNKNOWN.withVoltageV(
                random.nextInt(3) == 0 ? OptionalDouble.of(random.nextBoolean() ? 120 : 230) : OptionalDouble.empty());
    }

    private Wishes wishes() {
        return Wishes.NONE
                .withGrowthReserve(maybe(0, 1))
                .withIndexSparePa(maybe(0, 1500))
                .withLoudestDba(maybe(36, 56))
                .withRuntimeS(maybe(5 * 3600, 40 * 3600));
    }

    private OptionalDouble maybe(double least, double most) {
        return random.nextBoolean()
                ? OptionalDouble.of(least + (most - least) * random.nextDouble())
                : OptionalDouble.empty();
    }

    private static Backup battery() {
        return new Backup(
                List.of(new Backup.Battery(
                        new BatteryId("battery"),
                        "lifepo4",
                        1,
                        12.8,
                        200 * 3600,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Stream<Room> rooms(int count) {
        SmallRooms rooms = new SmallRooms(20_251_125);
        return Stream.generate(rooms::next).limit(count);
    }
}
