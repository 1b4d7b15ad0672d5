package lungfish.sure;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Upkeep;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Spread;
import lungfish.room.Spreads;
import lungfish.room.TankBuilder;

/** Small rooms of which something is off. */
final class Doubtful {
    static final Catalogue CATALOGUE = CatalogueFiles.load();
    static final Planner PLANNER = new Planner(CATALOGUE);

    /** Two litres a minute. */
    static final double TARGET_M3_PER_S = 2e-3 / 60;

    private Doubtful() {}

    /** So many sponges in one tank, 0.25 m deep in 0.5 m of water, on a short main. */
    static Room room(int outlets, Spreads spreads) {
        TankBuilder tank = aTank("A-1").sized(1.2, 0.5, 0.55).waterDepthM(0.5);
        for (int i = 0; i < outlets; i++) {
            tank.with(anOutlet("a" + i)
                    .device("sponge-medium")
                    .targetM3PerS(TARGET_M3_PER_S)
                    .depthM(0.25));
        }
        return aRoom().with(aRack("A").shelf(0.9, tank))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").at(0.2, 0.2, 2.1))
                .with(spreads)
                .build();
    }

    /** Nothing is off. */
    static Spreads exact() {
        Spreads spreads = Spreads.UNKNOWN;
        for (Spread spread : Spread.values()) {
            spreads = spreads.with(spread, OptionalDouble.of(0));
        }
        return spreads;
    }

    /** Only this is off. */
    static Spreads only(Spread spread, double width) {
        return exact().with(spread, OptionalDouble.of(width));
    }

    static Sureness sureness(Room room, int samples) {
        return sureness(room, samples, Sampling.USUAL_SEED);
    }

    static Sureness sureness(Room room, int samples, long seed) {
        return Sampling.of(PLANNER, room, samples, seed, Progress.UNHEARD).orElseThrow();
    }

    static Basis basis(Room room) {
        return PLANNER.basis(room).orElseThrow();
    }

    /** The network of a room, as it is said. */
    static Network network(Basis basis) {
        return basis.piped().network(Upkeep.DUE, basis.places().fixedSources(0));
    }

    /** The networks of a room in so many samples. */
    static List<Network> networks(Room room, int samples) {
        Basis basis = basis(room);
        Widths widths = Widths.of(room, CATALOGUE);
        VariedRoom varied = new VariedRoom(network(basis), basis.piped().needs());
        Draws draws = new Draws(Layout.of(List.of(basis.piped().needs())), samples, 5);
        return IntStream.range(0, samples)
                .mapToObj(i -> varied.network(widths, draws, i))
                .toList();
    }

    /** What pressure the room needs in so many samples, Pa. */
    static double[] neededPa(Room room, int samples) {
        Solver solver = Solver.of(network(basis(room)));
        return networks(room, samples).stream()
                .mapToDouble(network -> {
                    solver.use(network);
                    return ((Tuned) solver.tuned()).requiredGaugePa();
                })
                .toArray();
    }
}
