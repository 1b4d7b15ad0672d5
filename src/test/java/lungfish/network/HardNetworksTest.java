package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bores of half a millimetre beside bores of a metre, ties, dead branches, loose pieces, everything shut. */
final class HardNetworksTest {
    /** {@code -Dlungfish.graphs=100000} tries a hundred thousand, with the outcome printed. */
    private static final int GRAPHS = Integer.getInteger("lungfish.graphs", 2000);

    private static final int EACH = GRAPHS / 8;

    /**
     * About one in two thousand of these ends at the cap of its iterations: a bare wide fitting beside pipes that let
     * next to nothing through carries what doubles cannot resolve. It is refused by name; two in one batch are too many.
     */
    private static final int MOST_CAPPED = Math.max(1, EACH / 500);

    private final Map<String, Integer> outcomes = new TreeMap<>();
    private double worstPa;
    private double worstShare;
    private int capped;

    private static final double MASS = 1e-9;
    private static final double RESIDUAL_PA = 1e-6;

    @ParameterizedTest
    @ValueSource(longs = {0, 100_000, 200_000, 300_000, 400_000, 500_000, 600_000, 700_000})
    void eachIsSolvedToItsResidualOrRefusedForACauseThatIsThere(long first) {
        for (long seed = first; seed < first + EACH; seed++) {
            Network network = RandomNetworks.nasty(seed);
            Solver solver = Solver.of(network);
            judge("as set " + seed, network, solver.asSet());
            judge("tuned " + seed, network, solver.tuned());
        }
        if (GRAPHS > 2000) {
            System.out.println("from " + first + ": " + outcomes + ", worst residual " + worstPa
                    + " Pa, worst imbalance " + worstShare);
        }
    }

    /** A hundred thousand found these; each is kept, so that it stays mended. */
    @ParameterizedTest
    @ValueSource(longs = 204_325) // a bound stopped one end of a chain that followed where the system had sent it
    void whatWasOnceMissedIsMet(long seed) {
        Network network = RandomNetworks.nasty(seed);
        Solver solver = Solver.of(network);
        assertThat(solver.asSet()).isInstanceOf(AsSet.class);
        judge("as set " + seed, network, solver.asSet());
        judge("tuned " + seed, network, solver.tuned());
    }

    private void judge(String name, Network network, Answer answer) {
        if (answer instanceof Solved solved) {
            assertThat(solved.quality().massImbalanceOverTotal()).as(name).isLessThan(MASS);
            assertThat(solved.quality().residualPa()).as(name).isLessThan(RESIDUAL_PA);
            outcomes.merge("solved", 1, Integer::sum);
            worstPa = Math.max(worstPa, solved.quality().residualPa());
            worstShare = Math.max(worstShare, solved.quality().massImbalanceOverTotal());
        } else if (answer instanceof Refused refused) {
            assertThat(cause(network, refused)).as(name + ": " + refused).isTrue();
            outcomes.merge(refused.why().name(), 1, Integer::sum);
        }
    }

    /** Looks for the cause in the network itself, by other means than the solver's. */
    private boolean cause(Network network, Refused refused) {
        return switch (refused.why()) {
            case NO_SOURCE -> !reached(network).contains(drop(network, refused).node());
            case NO_TARGET ->
                network.drops().stream().allMatch(drop -> drop.targetM3PerS().isEmpty());
            case TWO_PRESSURES -> fixedPressures(network) > 1;
            case NO_RESISTANCE -> isFree(drop(network, refused));
            case NO_OUTLET -> neverShuts(source(network, refused));
            case BEYOND_MODEL -> true;
            case ITERATION_CAP -> ++capped <= MOST_CAPPED;
        };
    }

    private static Drop drop(Network network, Refused refused) {
        return network.drops().stream()
                .filter(drop -> drop.id().equals(refused.partId()))
                .findFirst()
                .orElseThrow();
    }

    private static Source source(Network network, Refused refused) {
        return network.sources().stream()
                .filter(source -> source.id().equals(refused.partId()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean neverShuts(Source source) {
        return source instanceof Source.Blower blower && blower.curve().flowAt(1e9) > 0.0;
    }

    private static long fixedPressures(Network network) {
        return network.sources().stream()
                .filter(Source.FixedPressure.class::isInstance)
                .count();
    }

    private static boolean isFree(Drop drop) {
        boolean airline = drop.airline().map(a -> a.lengthM() + a.kSum() > 0.0).orElse(false);
        boolean device =
                drop.device().map(d -> d.aPaSPerM3() + d.bPaS2PerM6() > 0.0).orElse(false);
        boolean check = drop.check().map(c -> c.slopePaSPerM3() > 0.0).orElse(false);
        return drop.valveK() == 0.0 && !airline && !device && !check;
    }

    private static Set<String> reached(Network network) {
        Set<String> reached = new HashSet<>();
        network.sources().forEach(source -> reached.add(source.node()));
        int before = -1;
        while (before < reached.size()) {
            before = reached.size();
            for (Pipe pipe : network.pipes()) {
                if (reached.contains(pipe.from()) || reached.contains(pipe.to())) {
                    reached.add(pipe.from());
                    reached.add(pipe.to());
                }
            }
        }
        return reached;
    }
}
