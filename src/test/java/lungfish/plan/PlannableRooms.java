package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;

import java.util.List;
import java.util.Random;
import lungfish.room.Blower;
import lungfish.room.BlowerBuilder;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.RackBuilder;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.TankBuilder;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Random rooms whose pipe reaches every outlet: a loop or an open main, often a branch, one blower or two. */
public final class PlannableRooms {
    private static final List<String> DEVICES = List.of("sponge-small", "sponge-medium", "stone-fine", "box-filter");
    private static final List<String> MACHINES = List.of("linear-piston-80", "linear-diaphragm-60", "side-channel-250");
    private static final double PIPE_M = 2.2;

    private final Random random;
    private final Blower.Bleed bleed;

    private PlannableRooms(Random random, Blower.Bleed bleed) {
        this.random = random;
        this.bleed = bleed;
    }

    /** Rooms whose blowers treat their surplus so. */
    public static Arbitrary<Room> bleeding(Blower.Bleed bleed) {
        return Arbitraries.randomValue(random -> new PlannableRooms(random, bleed).room());
    }

    private Room room() {
        boolean loop = random.nextBoolean();
        RoomBuilder room = aRoom().with(aMain("main", loop, at(0.2, 0.2), at(4, 0.2), at(4, 3), at(0.2, 3)));
        if (random.nextBoolean()) {
            room.with(aMain("branch", false, at(4, 1 + random.nextDouble()), at(5.5, 2)));
        }
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            room.with(rack("r" + i, i));
        }
        room.with(blower("first").at(0.2, 0.2, 2.3));
        if (random.nextInt(3) == 0) {
            room.with(blower("second").at(4, 3, 2.3));
        }
        return room.build();
    }

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, PIPE_M);
    }

    private BlowerBuilder blower(String id) {
        BlowerBuilder blower = aBlower(id).bleed(bleed).count(1 + random.nextInt(2));
        return random.nextBoolean() ? blower.machine(one(MACHINES)) : blower;
    }

    private RackBuilder rack(String id, int place) {
        TankBuilder[] tanks = new TankBuilder[1 + random.nextInt(3)];
        for (int i = 0; i < tanks.length; i++) {
            tanks[i] = aTank(id + "t" + i).at(0.65 * i).with(outlet(id + "o" + i));
        }
        return aRack(id).at(0.5 + random.nextDouble(), 0.5 + 0.8 * place).shelf(0.3 + random.nextDouble(), tanks);
    }

    private OutletBuilder outlet(String id) {
        OutletBuilder outlet = anOutlet(id)
                .device(one(DEVICES))
                .depthM(0.05 + 0.24 * random.nextDouble())
                .targetM3PerS((1 + 3 * random.nextDouble()) / 60_000)
                .valve("needle-brass", random.nextDouble());
        return random.nextBoolean() ? outlet.essential() : outlet;
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
