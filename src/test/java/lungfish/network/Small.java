package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds small networks for tests: usual conditions, nodes named on the way, smooth pipes. */
final class Small {
    private final List<String> nodes = new ArrayList<>();
    private final List<Pipe> pipes = new ArrayList<>();
    private final List<Drop> drops = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private Conditions conditions = Conditions.usual();

    static Small network() {
        return new Small();
    }

    /** A drop with an airline of 1.5 m × 4 mm, a device of 8e6 Pa s/m³, 0.3 m of water and a target of 2 L/min. */
    static Drop drop(String id, String node, double valveK) {
        Tubing airline = new Tubing(1.5, 0.004, 0.0, 1.5);
        Device device = new Device(0.0, 8e6, 0.0);
        return new Drop(
                id,
                node,
                valveK,
                1e9,
                Optional.of(airline),
                Optional.empty(),
                Optional.of(device),
                0.3,
                OptionalDouble.of(2.0 / 60_000.0));
    }

    /** A curve straight down from an open flow to where it shuts. */
    static Curve straight(double openM3PerS, double shutPa) {
        return Curve.of(List.of(new Curve.Point(0.0, openM3PerS), new Curve.Point(shutPa, 0.0)));
    }

    Small in(Conditions others) {
        conditions = others;
        return this;
    }

    Small node(String name) {
        nodes.add(name);
        return this;
    }

    Small pipe(String from, String to, double lengthM, double boreM) {
        return add(new Pipe(from + "-" + to, from, to, lengthM, boreM, 0.0, 0.0));
    }

    Small tie(String from, String to) {
        return pipe(from, to, 0.0, 0.02);
    }

    Small add(Pipe pipe) {
        know(pipe.from());
        know(pipe.to());
        pipes.add(pipe);
        return this;
    }

    Small add(Drop drop) {
        know(drop.node());
        drops.add(drop);
        return this;
    }

    Small fixed(String node, double gaugePa) {
        know(node);
        sources.add(new Source.FixedPressure("at-" + node, node, gaugePa));
        return this;
    }

    Small blower(String node, Curve curve) {
        know(node);
        sources.add(new Source.Blower("b-" + node, node, curve, 1));
        return this;
    }

    private void know(String node) {
        if (!nodes.contains(node)) {
            nodes.add(node);
        }
    }

    Network build() {
        return new Network(conditions, nodes, pipes, drops, sources, Optional.empty());
    }

    AsSet asSet() {
        return asSet(build());
    }

    Tuned tuned() {
        return kind(Solver.of(build()).tuned(), Tuned.class);
    }

    static AsSet asSet(Network network) {
        return kind(Solver.of(network).asSet(), AsSet.class);
    }

    static Refused refusal(Answer answer) {
        return kind(answer, Refused.class);
    }

    private static <T extends Answer> T kind(Answer answer, Class<T> type) {
        assertThat(answer).isInstanceOf(type);
        return type.cast(answer);
    }
}
