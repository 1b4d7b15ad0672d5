package lungfish.everyday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import lungfish.air.Valve;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.sizing.Setting;

/**
 * Shares out air that is less than before, so that everybody gets the same share of what he had. The share is halved in until
 * what the machines give, at the pressure that the outlets need for it, is what the outlets take: the pressure rises with the
 * share, and what the machines give falls.
 */
final class Sharing {
    private static final int HALVINGS = 30;

    private final Network network;
    private final List<Valve> valves;
    private final double[] hadM3PerS;
    private final DoubleUnaryOperator gives;
    private final double shutPa;
    private final Solver solver;

    /**
     * What all can have.
     *
     * @param share of what they had, 0 to 1
     * @param valveK the settings that share it out so, 1/m⁴
     */
    record Shared(double share, List<Double> valveK) {}

    /**
     * A sharing.
     *
     * @param network without bleeds, its sources at one common pressure
     * @param hadM3PerS what each drop had, m³/s
     * @param gives free air of all machines at a common gauge pressure, m³/s
     * @param shutPa the gauge pressure at which they give nothing any more
     */
    Sharing(Network network, List<Valve> valves, double[] hadM3PerS, DoubleUnaryOperator gives, double shutPa) {
        this.network = network;
        this.valves = valves;
        this.shutPa = shutPa;
        this.hadM3PerS = hadM3PerS.clone();
        this.gives = gives;
        this.solver = Solver.of(network);
    }

    /** Empty where the machines give nobody anything. */
    Optional<Shared> shared() {
        double share = share();
        return share <= 0 ? Optional.empty() : tuned(share).map(tuned -> new Shared(share, valveK(tuned)));
    }

    private double share() {
        double low = 0;
        double high = 1;
        if (isEnough(high)) {
            return high;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean isEnough = isEnough(middle);
            low = isEnough ? middle : low;
            high = isEnough ? high : middle;
        }
        return low;
    }

    private boolean isEnough(double share) {
        return tuned(share).filter(this::isEnough).isPresent();
    }

    private boolean isEnough(Tuned tuned) {
        return gives.applyAsDouble(tuned.requiredGaugePa()) >= tuned.totalFreeM3PerS();
    }

    private Optional<Tuned> tuned(double share) {
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < hadM3PerS.length; i++) {
            Drop drop = network.drops().get(i);
            drops.add(hadM3PerS[i] > 0 ? drop.withTarget(share * hadM3PerS[i]) : drop.withoutTarget());
        }
        solver.use(network.withDrops(drops));
        return solver.tuned().match(asSet -> Optional.empty(), Optional::of, refused -> Optional.empty());
    }

    /** Set at the pressure where the machines give just what is taken. Those that had nothing stay as they are. */
    private List<Double> valveK(Tuned tuned) {
        List<Setting> settings = Setting.all(tuned, runningPa(tuned), valves);
        return IntStream.range(0, hadM3PerS.length)
                .mapToObj(i -> hadM3PerS[i] > 0
                        ? settings.get(i).valveK()
                        : network.drops().get(i).valveK())
                .toList();
    }

    private double runningPa(Tuned tuned) {
        double low = tuned.requiredGaugePa();
        double high = shutPa;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean isEnough = gives.applyAsDouble(middle) >= tuned.totalFreeM3PerS();
            low = isEnough ? middle : low;
            high = isEnough ? high : middle;
        }
        return low;
    }
}
