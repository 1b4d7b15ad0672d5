package lungfish.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The benchmark network: rooms of a hundred taps on a ring, the rings on a trunk ring, one source. Fixed figures, so that
 * every solver has the same; the same to the last digit on every machine.
 */
final class BenchNetwork {
    private static final int TAPS = 100;
    private static final double ROUGHNESS_M = 1.5e-6;
    private static final double SOURCE_PA = 9000.0;

    private BenchNetwork() {}

    /** With a number of rooms of a hundred taps. */
    static Network of(int rooms) {
        return of(rooms, TAPS);
    }

    /** With a number of rooms of some taps. */
    static Network of(int rooms, int taps) {
        double scale = Math.sqrt(rooms / 10.0);
        List<String> nodes = new ArrayList<>();
        List<Pipe> pipes = new ArrayList<>();
        List<Drop> drops = new ArrayList<>();
        nodes.add("source");
        for (int r = 0; r < rooms; r++) {
            nodes.add("trunk" + r);
            for (int t = 0; t < taps; t++) {
                nodes.add(tap(r, t));
                pipes.add(pipe("ring" + r + "-" + t, tap(r, t), tap(r, (t + 1) % taps), 0.5, 0.0261, 0.0));
                drops.add(drop(r, t));
            }
            if (rooms > 1) {
                pipes.add(pipe("trunk" + r, "trunk" + r, "trunk" + (r + 1) % rooms, 6.0, 0.06 * scale, 0.5));
            }
            pipes.add(pipe("feed" + r, "trunk" + r, tap(r, 0), 3.0, 0.0408, 2.5));
        }
        pipes.add(pipe("supply", "source", "trunk0", 5.0, 0.085 * scale, 1.0));
        List<Source> sources = List.of(new Source.FixedPressure("s", "source", SOURCE_PA));
        return new Network(Conditions.usual(), nodes, pipes, drops, sources, Optional.empty());
    }

    private static String tap(int room, int tap) {
        return "t" + room + "-" + tap;
    }

    private static Pipe pipe(String id, String from, String to, double lengthM, double boreM, double kSum) {
        return new Pipe(id, from, to, lengthM, boreM, ROUGHNESS_M, kSum);
    }

    private static Drop drop(int r, int t) {
        double valveK = 2e11 * (2 + (53 * t + 29 * r) % 9);
        double depthM = (20 + (37 * t + 101 * r) % 41) / 100.0;
        Tubing airline = new Tubing(1.5, 0.004, ROUGHNESS_M, 1.5);
        Device device = new Device(0.0, 8e6, 4e10);
        return new Drop(
                "d" + r + "-" + t,
                tap(r, t),
                valveK,
                0.0,
                Optional.of(airline),
                Optional.empty(),
                Optional.of(device),
                depthM,
                OptionalDouble.empty());
    }
}
