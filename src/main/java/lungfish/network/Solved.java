package lungfish.network;

/** What every solved network tells; indices follow the lists of {@link #network()}. */
public sealed interface Solved extends Answer permits AsSet, Tuned {
    /** The network that was solved. */
    Network network();

    /** Linear solves that it took, the start among them; 0 when the last answer still holds. */
    int iterations();

    /** Free air through all drops together, m³/s. */
    double totalFreeM3PerS();

    /** Static gauge pressure of a node, Pa. */
    double nodeGaugePa(int node);

    /** Flow and loss of a pipe. */
    PipeFlow pipe(int pipe);

    /** Flow of a drop, against its target. */
    DropFlow drop(int drop);

    /** How well the laws are met, judged apart from the solver. */
    Quality quality();
}
