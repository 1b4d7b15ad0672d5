package lungfish.network;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The network with every drop throttled to its target, at the least pressure that serves the index drop: the drop with
 * the least spare pressure, whose valve stands fully open.
 */
public final class Tuned implements Solved {
    private final Flows flows;
    private final Tuning tuning;

    Tuned(Flows flows, Tuning tuning) {
        this.flows = flows;
        this.tuning = tuning;
    }

    @Override
    public Network network() {
        return flows.network();
    }

    @Override
    public int iterations() {
        return flows.iterations();
    }

    @Override
    public double totalFreeM3PerS() {
        return flows.totalFreeM3PerS();
    }

    @Override
    public double nodeGaugePa(int node) {
        return flows.nodeGaugePa(node);
    }

    @Override
    public PipeFlow pipe(int pipe) {
        return flows.pipe(pipe);
    }

    @Override
    public DropFlow drop(int drop) {
        return flows.drop(drop);
    }

    /** A drop with its spare pressure and the setting that burns it. */
    public TunedDrop tunedDrop(int drop) {
        return tuning.drop(flows, drop);
    }

    /** What a source is asked for, gives, and has left. */
    public TunedSource source(int source) {
        return tuning.source(flows, source);
    }

    /** The common gauge pressure of all sources at which the index drop's spare is zero, Pa. */
    public double requiredGaugePa() {
        return tuning.requiredGaugePa();
    }

    /** Position of the drop with the least spare. */
    public int indexDrop() {
        return tuning.indexDrop();
    }

    /** What all sources together have left; absent when one of them is a fixed pressure, which has no end. */
    public OptionalDouble headroomM3PerS() {
        return tuning.headroomM3PerS(flows);
    }

    /** Whether every source gives what is asked of it at the required pressure. */
    public boolean feasible() {
        return whyNot().isEmpty();
    }

    /** A sentence for each source that does not; empty when feasible. */
    public List<String> whyNot() {
        return tuning.whyNot(flows);
    }

    @Override
    public Quality quality() {
        return flows.quality();
    }

    @Override
    public <R> R match(Function<AsSet, R> asSet, Function<Tuned, R> tuned, Function<Refused, R> refused) {
        return tuned.apply(this);
    }
}
