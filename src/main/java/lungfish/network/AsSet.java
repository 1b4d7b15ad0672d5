package lungfish.network;

import java.util.function.Function;

/** The network as its valves are set: what every drop takes, and where the blowers run. */
public final class AsSet implements Solved {
    private final Flows flows;

    AsSet(Flows flows) {
        this.flows = flows;
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

    /** What a source gives. */
    public SourceFlow source(int source) {
        return flows.source(source);
    }

    @Override
    public Quality quality() {
        return flows.quality();
    }

    @Override
    public <R> R match(Function<AsSet, R> asSet, Function<Tuned, R> tuned, Function<Refused, R> refused) {
        return asSet.apply(this);
    }
}
