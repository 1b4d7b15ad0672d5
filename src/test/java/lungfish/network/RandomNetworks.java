package lungfish.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Networks by the throw of dice, the same for the same seed: {@link #roomLike} as a keeper builds, {@link #nasty} as none does. */
final class RandomNetworks {
    /** Neighbouring seeds give this generator nearly the same first draw. */
    private static final long SCATTERED = 0x9E3779B97F4A7C15L;

    private final Random dice;
    private final boolean nasty;

    private RandomNetworks(long seed, boolean nasty) {
        this.dice = new Random(seed * SCATTERED);
        this.nasty = nasty;
    }

    /** A connected main with rings, one or two blowers or a fixed pressure, a drop at most taps. */
    static Network roomLike(long seed) {
        return new RandomNetworks(seed, false).network();
    }

    /** Bores of half a millimetre beside bores of a metre, ties, dead branches, loose pieces, shut and free valves. */
    static Network nasty(long seed) {
        return new RandomNetworks(seed, true).network();
    }

    /** A curve with flat and steep pieces. */
    static Curve curve(long seed) {
        return new RandomNetworks(seed, true).curve();
    }

    private Network network() {
        int count = 1 + dice.nextInt(nasty && chance(0.05) ? 300 : 30);
        List<String> nodes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            nodes.add("n" + i);
        }
        List<Pipe> pipes = pipes(count);
        List<Drop> drops = new ArrayList<>();
        double density = nasty ? dice.nextDouble() * 1.5 : 0.9;
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < 3 && chance(density / (k + 1)); k++) {
                drops.add(drop("d" + i + "-" + k, "n" + i));
            }
        }
        Network network = new Network(conditions(), nodes, pipes, drops, sources(count), Optional.empty());
        return nasty && chance(0.03) ? shut(network) : network;
    }

    private static Network shut(Network network) {
        return network.withDrops(network.drops().stream()
                .map(drop -> drop.withValveK(Drop.SHUT_K))
                .toList());
    }

    private Conditions conditions() {
        Conditions usual = Conditions.usual();
        return new Conditions(
                between(70_000, 103_000),
                between(285, 305),
                between(285, 330),
                usual.waterDensityKgPerM3(),
                usual.gravityMPerS2(),
                false,
                usual.servedBand());
    }

    private List<Pipe> pipes(int count) {
        List<Pipe> pipes = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            boolean loose = nasty && chance(0.03);
            if (!loose) {
                int back = chance(0.7) ? i - 1 : dice.nextInt(i);
                pipes.add(pipe("p" + i, back, i));
            }
        }
        int loops = dice.nextInt(nasty ? count + 1 : 3);
        for (int i = 0; i < loops; i++) {
            int from = dice.nextInt(count);
            int to = dice.nextInt(count);
            if (nasty || from != to) {
                pipes.add(pipe("q" + i, from, to));
            }
        }
        return pipes;
    }

    private Pipe pipe(String id, int from, int to) {
        if (!nasty) {
            return new Pipe(id, "n" + from, "n" + to, between(0.3, 6), between(0.012, 0.06), 1.5e-6, between(0, 2));
        }
        double length = chance(0.15) ? 0.0 : logBetween(1e-3, 100);
        double k = chance(0.5) ? 0.0 : chance(0.1) ? logBetween(1e6, 1e20) : logBetween(0.1, 1e3);
        double bore = logBetween(0.0005, 1.0);
        return new Pipe(id, "n" + from, "n" + to, length, bore, chance(0.5) ? 0.0 : bore * 0.02, k);
    }

    private Drop drop(String id, String node) {
        if (!nasty) {
            double valve = logBetween(1e10, 3e12);
            Tubing airline = new Tubing(between(0.5, 3), 0.004, 0.0, 1.5);
            Optional<Check> check = chance(0.3) ? Optional.of(new Check(300, 5e6)) : Optional.empty();
            Device device = new Device(chance(0.3) ? 1200 : 0, 8e6, 4e10);
            OptionalDouble target = OptionalDouble.of(between(1e-5, 8e-5));
            double depth = between(0.1, 0.6);
            return new Drop(id, node, valve, 5e9, Optional.of(airline), check, Optional.of(device), depth, target);
        }
        double valve = chance(0.1) ? 0.0 : chance(0.05) ? Drop.SHUT_K : logBetween(1e3, 1e16);
        Optional<Tubing> airline = chance(0.7)
                ? Optional.of(new Tubing(
                        chance(0.1) ? 0.0 : logBetween(0.01, 30), logBetween(0.0005, 0.05), 0.0, between(0, 3)))
                : Optional.empty();
        Optional<Check> check = chance(0.3)
                ? Optional.of(new Check(chance(0.5) ? 0 : logBetween(10, 1e4), chance(0.5) ? 0 : 1e7))
                : Optional.empty();
        Optional<Device> device = chance(0.7)
                ? Optional.of(new Device(
                        chance(0.5) ? 0 : 2000, chance(0.5) ? 0 : logBetween(1e3, 1e9), chance(0.5) ? 0 : 4e10))
                : Optional.empty();
        OptionalDouble target = chance(0.8) ? OptionalDouble.of(logBetween(1e-8, 1e-3)) : OptionalDouble.empty();
        double depth = chance(0.1) ? 0.0 : between(0, 2);
        return new Drop(id, node, valve, valve / 2, airline, check, device, depth, target);
    }

    private List<Source> sources(int count) {
        List<Source> sources = new ArrayList<>();
        int wanted = nasty ? dice.nextInt(5) : 1 + dice.nextInt(2);
        for (int i = 0; i < wanted; i++) {
            String node = "n" + dice.nextInt(count);
            boolean fixed = chance(0.3);
            if (fixed) {
                double most = nasty && chance(0.1) ? 1e6 : 20_000;
                sources.add(
                        new Source.FixedPressure("s" + i, node, nasty ? between(-2000, most) : between(4000, 20_000)));
            } else {
                sources.add(new Source.Blower("s" + i, node, curve(), 1 + dice.nextInt(3)));
            }
        }
        return sources;
    }

    private Curve curve() {
        int points = 2 + dice.nextInt(5);
        double pressure = nasty ? logBetween(10, 60_000) : between(8000, 30_000);
        double flow = nasty ? logBetween(1e-7, 1) : between(1e-4, 5e-3);
        List<Curve.Point> all = new ArrayList<>();
        boolean downToZero = !nasty || chance(0.7);
        for (int i = 0; i < points; i++) {
            double part = (double) i / (points - 1);
            double left = downToZero ? 1 - Math.pow(part, between(0.5, 3)) : 1 - 0.5 * part;
            boolean flat = nasty && i > 0 && chance(0.2);
            double at = flat ? all.get(i - 1).freeM3PerS() : flow * left;
            double before = i == 0 ? flow : all.get(i - 1).freeM3PerS();
            all.add(new Curve.Point(pressure * part, Math.min(before, at)));
        }
        return Curve.of(all);
    }

    private boolean chance(double odds) {
        return dice.nextDouble() < odds;
    }

    private double between(double least, double most) {
        return least + dice.nextDouble() * (most - least);
    }

    private double logBetween(double least, double most) {
        return Math.exp(between(Math.log(least), Math.log(most)));
    }
}
