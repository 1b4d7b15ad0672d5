package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Laws of scale and of symmetry: what two networks that are like each other have in common. */
final class LikenessTest {
    private static final double TWO_SOLVES = 1e-8;
    private static final double HELD_PA = 12_000;

    private static AsSet solved(Network network) {
        Answer answer = Solver.of(network).asSet();
        Assume.that(answer instanceof AsSet);
        return (AsSet) answer;
    }

    /** Only squares resist: fittings and valves, no pipe wall, no device. */
    private static Network squares(Network like, double times) {
        List<Pipe> pipes = like.pipes().stream()
                .map(pipe -> new Pipe(
                        pipe.id(),
                        pipe.from(),
                        pipe.to(),
                        0,
                        pipe.boreM(),
                        pipe.roughnessM(),
                        times * (1 + pipe.kSum())))
                .toList();
        List<Drop> drops = like.drops().stream()
                .map(drop -> new Drop(
                        drop.id(),
                        drop.node(),
                        times * (1e9 + drop.valveK()),
                        drop.valveKOpen(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        drop.depthM(),
                        drop.targetM3PerS()))
                .toList();
        Source held = new Source.FixedPressure("held", like.sources().get(0).node(), HELD_PA);
        return new Network(like.conditions(), like.nodes(), pipes, drops, List.of(held), like.title());
    }

    /** Δ(p²) = K ṁ²: with four times every K half the air leaves every pressure where it was. */
    @Property
    void whereOnlySquaresResistFourTimesTheResistanceIsHalfTheAir(
            @ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network like = RandomNetworks.roomLike(seed);
        AsSet once = solved(squares(like, 1));
        AsSet fourfold = solved(squares(like, 4));
        double total = once.totalFreeM3PerS();
        for (int i = 0; i < like.drops().size(); i++) {
            assertThat(2 * fourfold.drop(i).freeM3PerS())
                    .isCloseTo(once.drop(i).freeM3PerS(), within(TWO_SOLVES * total));
        }
        for (int i = 0; i < like.nodes().size(); i++) {
            assertThat(fourfold.nodeGaugePa(i)).isCloseTo(once.nodeGaugePa(i), within(1e-5));
        }
    }

    /** A ring that is fed at one knot and the same on both of its ways: what hangs at one way gets what hangs at the other. */
    @Property
    void onARingTheTwoSidesOfWhichAreAlikeBothSidesGetTheSame(
            @ForAll @LongRange(min = 0, max = 10_000_000) long seed, @ForAll @IntRange(min = 2, max = 9) int half) {
        Network like = RandomNetworks.roomLike(seed);
        Assume.that(!like.pipes().isEmpty() && !like.drops().isEmpty());
        int around = 2 * half;
        List<String> nodes =
                IntStream.range(0, around).mapToObj(i -> "ring" + i).toList();
        List<Pipe> pipes = new ArrayList<>();
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < around; i++) {
            Pipe pipe =
                    like.pipes().get(Math.min(i, around - 1 - i) % like.pipes().size());
            pipes.add(new Pipe(
                    "p" + i,
                    nodes.get(i),
                    nodes.get((i + 1) % around),
                    0.1 + pipe.lengthM(),
                    pipe.boreM(),
                    pipe.roughnessM(),
                    pipe.kSum()));
            Drop drop = like.drops().get(Math.min(i, around - i) % like.drops().size());
            drops.add(new Drop(
                    "d" + i,
                    nodes.get(i),
                    drop.valveK(),
                    drop.valveKOpen(),
                    drop.airline(),
                    drop.check(),
                    drop.device(),
                    drop.depthM(),
                    drop.targetM3PerS()));
        }
        AsSet answer = solved(new Network(
                like.conditions(),
                nodes,
                pipes,
                drops,
                List.of(new Source.FixedPressure("held", nodes.get(0), HELD_PA)),
                like.title()));
        double total = answer.totalFreeM3PerS();
        for (int i = 1; i < half; i++) {
            assertThat(answer.drop(i).freeM3PerS())
                    .isCloseTo(answer.drop(around - i).freeM3PerS(), within(TWO_SOLVES * total));
            assertThat(answer.nodeGaugePa(i)).isCloseTo(answer.nodeGaugePa(around - i), within(1e-5));
        }
    }
}
