package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** What holds for every network, whatever its figures. */
final class LawsTest {
    /** Two solves of one network: each within 1e-12 of the total flow by its own figures; small falls multiply that. */
    private static final double TWO_SOLVES = 1e-8;

    /** Promised with every answer. */
    private static final double MASS = 1e-9;

    private static final double RESIDUAL_PA = 1e-6;

    private static AsSet solved(Network network) {
        Answer answer = Solver.of(network).asSet();
        Assume.that(answer instanceof AsSet);
        return (AsSet) answer;
    }

    private static void same(AsSet first, AsSet second) {
        double total = first.totalFreeM3PerS();
        for (int i = 0; i < first.network().drops().size(); i++) {
            assertThat(second.drop(i).freeM3PerS()).isCloseTo(first.drop(i).freeM3PerS(), within(TWO_SOLVES * total));
        }
        for (int i = 0; i < first.network().nodes().size(); i++) {
            assertThat(second.nodeGaugePa(i)).isCloseTo(first.nodeGaugePa(i), within(1e-6));
        }
    }

    @Property
    void massIsBalancedAndEveryLawIsMet(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Quality quality = solved(RandomNetworks.roomLike(seed)).quality();
        assertThat(quality.massImbalanceOverTotal()).isLessThan(MASS);
        assertThat(quality.residualPa()).isLessThan(RESIDUAL_PA);
    }

    @Property
    void tunedMassIsBalancedAndEveryLawIsMet(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Answer answer = Solver.of(RandomNetworks.roomLike(seed)).tuned();
        Assume.that(answer instanceof Tuned);
        Quality quality = ((Tuned) answer).quality();
        assertThat(quality.massImbalanceOverTotal()).isLessThan(MASS);
        assertThat(quality.residualPa()).isLessThan(RESIDUAL_PA);
    }

    /** The second start is the answer of the same pipes with every valve and every curve changed. */
    @Property
    void twoStartsComeToOneAnswer(
            @ForAll @LongRange(min = 0, max = 10_000_000) long seed,
            @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
        Network network = RandomNetworks.roomLike(seed);
        List<Drop> turned = network.drops().stream()
                .map(drop -> drop.withValveK(drop.valveK() * factor).withDepth(drop.depthM() * 0.5))
                .toList();
        Solver solver = Solver.of(network.withDrops(turned));
        Assume.that(solver.asSet() instanceof AsSet);
        solver.use(network);
        same(solved(network), (AsSet) solver.asSet());
    }

    @Property
    void moreBlowerNeverGivesLessAir(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network network = RandomNetworks.roomLike(seed);
        List<Source> stronger =
                network.sources().stream().map(LawsTest::doubled).toList();
        AsSet before = solved(network);
        AsSet after = solved(network.withSources(stronger));
        double slack = TWO_SOLVES * after.totalFreeM3PerS();
        for (int i = 0; i < network.drops().size(); i++) {
            assertThat(after.drop(i).freeM3PerS())
                    .isGreaterThanOrEqualTo(before.drop(i).freeM3PerS() - slack);
        }
    }

    private static Source doubled(Source source) {
        if (source instanceof Source.Blower blower) {
            return new Source.Blower(blower.id(), blower.node(), blower.curve(), 2 * blower.count());
        }
        return source;
    }

    @Property
    void closingOneValveNeverTakesAirFromAnotherDrop(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network network = RandomNetworks.roomLike(seed);
        Assume.that(network.drops().size() > 1);
        int closed = new Random(seed).nextInt(network.drops().size());
        List<Drop> drops = new ArrayList<>(network.drops());
        drops.set(closed, drops.get(closed).withValveK(Drop.SHUT_K));
        AsSet before = solved(network);
        AsSet after = solved(network.withDrops(drops));
        double slack = TWO_SOLVES * before.totalFreeM3PerS();
        for (int i = 0; i < drops.size(); i++) {
            double least = i == closed ? 0.0 : before.drop(i).freeM3PerS() - slack;
            assertThat(after.drop(i).freeM3PerS()).isGreaterThanOrEqualTo(least);
        }
        assertThat(after.drop(closed).freeM3PerS()).isZero();
    }

    @Property
    void theOrderOfThePartsChangesNothing(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network network = RandomNetworks.roomLike(seed);
        List<String> nodes = shuffled(network.nodes(), seed);
        List<Drop> drops = shuffled(network.drops(), seed + 1);
        Network other = new Network(
                network.conditions(),
                nodes,
                shuffled(network.pipes(), seed + 2),
                drops,
                shuffled(network.sources(), seed + 3),
                network.title());
        AsSet first = solved(network);
        AsSet second = solved(other);
        for (int i = 0; i < drops.size(); i++) {
            double before = first.drop(network.drops().indexOf(drops.get(i))).freeM3PerS();
            assertThat(second.drop(i).freeM3PerS()).isCloseTo(before, within(TWO_SOLVES * first.totalFreeM3PerS()));
        }
    }

    private static <T> List<T> shuffled(List<T> list, long seed) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, new Random(seed));
        return copy;
    }

    @Property
    void turningAPipeAroundTurnsOnlyTheSignOfItsFlow(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network network = RandomNetworks.roomLike(seed);
        List<Pipe> around = network.pipes().stream()
                .map(p -> new Pipe(p.id(), p.to(), p.from(), p.lengthM(), p.boreM(), p.roughnessM(), p.kSum()))
                .toList();
        AsSet first = solved(network);
        AsSet second = solved(network.withPipes(around));
        for (int i = 0; i < around.size(); i++) {
            assertThat(second.pipe(i).freeM3PerS())
                    .isCloseTo(-first.pipe(i).freeM3PerS(), within(TWO_SOLVES * first.totalFreeM3PerS()));
        }
    }

    @Property
    void noTapStandsAboveTheHighestSource(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        AsSet answer = solved(RandomNetworks.roomLike(seed));
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < answer.network().sources().size(); i++) {
            highest = Math.max(highest, answer.source(i).gaugePa());
        }
        for (int i = 0; i < answer.network().nodes().size(); i++) {
            assertThat(answer.nodeGaugePa(i)).isLessThanOrEqualTo(highest + RESIDUAL_PA);
        }
    }

    @Property
    void anotherTapNeverRaisesAnyPressure(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network network = RandomNetworks.roomLike(seed);
        List<Drop> more = new ArrayList<>(network.drops());
        String node =
                network.nodes().get(new Random(seed).nextInt(network.nodes().size()));
        more.add(Small.drop("another", node, 1e11));
        AsSet before = solved(network);
        AsSet after = solved(network.withDrops(more));
        for (int i = 0; i < network.nodes().size(); i++) {
            assertThat(after.nodeGaugePa(i)).isLessThanOrEqualTo(before.nodeGaugePa(i) + RESIDUAL_PA);
        }
    }

    @Property
    void tunedTheLeastSpareIsZeroAndEveryOtherIsMore(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Answer answer = Solver.of(RandomNetworks.roomLike(seed)).tuned();
        Assume.that(answer instanceof Tuned);
        Tuned tuned = (Tuned) answer;
        for (int i = 0; i < tuned.network().drops().size(); i++) {
            double least = i == tuned.indexDrop()
                    ? -RESIDUAL_PA
                    : tuned.tunedDrop(tuned.indexDrop()).sparePa().orElseThrow();
            assertThat(tuned.tunedDrop(i).sparePa().orElseThrow()).isGreaterThanOrEqualTo(least);
        }
        assertThat(tuned.tunedDrop(tuned.indexDrop()).sparePa().orElseThrow()).isCloseTo(0.0, within(RESIDUAL_PA));
    }

    @Property
    void theAccelerationTermChangesLittleInARoom(@ForAll @LongRange(min = 0, max = 10_000_000) long seed) {
        Network plain = RandomNetworks.roomLike(seed);
        Conditions c = plain.conditions();
        Conditions log = new Conditions(
                c.ambientPa(),
                c.roomTemperatureK(),
                c.pipeTemperatureK(),
                c.waterDensityKgPerM3(),
                c.gravityMPerS2(),
                true,
                c.servedBand());
        AsSet without = solved(plain);
        AsSet with =
                solved(new Network(log, plain.nodes(), plain.pipes(), plain.drops(), plain.sources(), plain.title()));
        assertThat(with.quality().residualPa()).isLessThan(RESIDUAL_PA);
        // 0.75 % on a deliberately fast network, found when the model was chosen; these are faster still
        assertThat(with.totalFreeM3PerS())
                .isBetween(0.98 * without.totalFreeM3PerS(), 1.02 * without.totalFreeM3PerS());
    }
}
