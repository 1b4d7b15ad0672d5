package lungfish.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.DisplayUnits;

/** Rooms for tests: small ones built by hand, each part with plain values until told otherwise. */
public final class Rooms {
    private Rooms() {}

    /** A room of 6 by 4 by 2.4 m with nothing in it. */
    public static Room empty() {
        return new Room(
                "Test room",
                Optional.empty(),
                DisplayUnits.METRIC,
                new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(), List.of()),
                Climate.UNKNOWN,
                Supply.UNKNOWN,
                Wishes.NONE,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Backup.NONE,
                List.of(),
                OwnClasses.NONE,
                Spreads.UNKNOWN);
    }

    /** The empty room, to be filled. */
    public static RoomBuilder aRoom() {
        return new RoomBuilder();
    }

    /** A rack of 2 by 0.5 m in the first corner. */
    public static RackBuilder aRack(String id) {
        return new RackBuilder(id);
    }

    /** A tank of 0.6 by 0.3 by 0.36 m with 0.3 m of water, at the left end of its shelf. */
    public static TankBuilder aTank(String id) {
        return new TankBuilder(id);
    }

    /** A medium sponge filter 0.25 m deep on a needle valve, always on, hung on the nearest pipe. */
    public static OutletBuilder anOutlet(String id) {
        return new OutletBuilder(id);
    }

    /** An open or closed main through these corners, of PVC-U 32 mm. */
    public static Run aMain(String id, boolean closed, Point... corners) {
        return new Run(new RunId(id), id, Run.Role.MAIN, "pvc-u-32-pn10", closed, List.of(corners), List.of());
    }

    /** A planned blower in the room, to be recommended. */
    public static BlowerBuilder aBlower(String id) {
        return new BlowerBuilder(id);
    }

    /** One rack with one tank and one outlet under a short main with a planned blower. */
    public static Room small() {
        return aRoom().with(aRack("A").shelf(0.9, aTank("A-1").with(anOutlet("A-1-a"))))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").at(0.2, 0.2, 2.1))
                .build();
    }
}
