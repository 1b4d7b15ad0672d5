package lungfish.network;

import java.util.Arrays;

/**
 * The steps of an as-set solve, taken block by block: a block is a chain of knots with its pipes and drops, or what is
 * left beside all chains.
 *
 * <p>A step solves for the rest at once, but leaves the chains waiting; each takes its step when the next tangents are
 * loaded, and is loaded and eliminated while its numbers are still near. So a large network passes through memory once
 * a step. Chains that a step leaves on their tangents ({@link Quiet}) are not asked again.
 */
final class Sweep implements Walk.Elements {
    /** A share of p² that no pressure changes by. */
    private static final double STANDS = 1e-18;

    private final Frame frame;
    private final PipeWork pipes;
    private final DropWork drops;
    private final BlowerWork blowers;
    private final Quiet quiet;
    private final Moved moved = new Moved();
    private final Misses misses = new Misses();
    private final double[] balance;

    /** ψ of each knot, Pa². */
    final double[] psi;

    private double ambientPi;
    private boolean logTerm;
    private double highestPsi;
    private double lowestPsi;
    private double waitingShare;
    private double startKgPerS;
    private boolean isStarting;

    Sweep(Frame frame, PipeWork pipes, DropWork drops, BlowerWork blowers) {
        this.frame = frame;
        this.pipes = pipes;
        this.drops = drops;
        this.blowers = blowers;
        quiet = new Quiet(frame.chains + 1);
        psi = new double[frame.unknownOfKnot.length];
        balance = new double[psi.length];
    }

    /** Takes the numbers of a network of the same shape. */
    void take(Conditions conditions) {
        ambientPi = conditions.ambientPa() * conditions.ambientPa();
        logTerm = conditions.logTerm();
        stir();
    }

    /** Every element must be asked anew. */
    void stir() {
        quiet.stirAll();
    }

    /** A drop has another law, and stands on its tangent. */
    void touch(int drop) {
        quiet.touch(drops.blockOf(drop));
    }

    /** No ψ is outside of these. */
    void within(double lowest, double highest) {
        lowestPsi = lowest;
        highestPsi = highest;
    }

    /** Takes the first step from rest at the present pressures, every law a chord. */
    void start() {
        quiet.stirAll();
        drops.rest();
        blowers.rest();
        frame.clearRest();
        for (int chain = 0; chain < frame.chains; chain++) {
            frame.clear(chain);
            loadChords(chain);
            frame.eliminate(chain);
        }
        loadChords(frame.chains);
        blowers.load(psi);
        startKgPerS = drops.takenAtOldPsi();
        isStarting = true;
        misses.reset(startKgPerS);
        step(1.0);
    }

    private void loadChords(int block) {
        pipes.rest(block);
        pipes.loadChords(block, psi);
        drops.loadChords(block, psi);
    }

    @Override
    public double load() {
        misses.reset(isStarting ? startKgPerS : Math.max(drops.total(), pipes.largest()));
        isStarting = false;
        pipes.countClipped(misses);
        drops.countClipped(misses);
        frame.clearRest();
        for (int chain = 0; chain < frame.chains; chain++) {
            if (waitingShare > 0.0) {
                takeStep(chain);
            }
            loadChain(chain);
        }
        waitingShare = 0.0;
        pipes.loadTangents(frame.chains, psi, misses);
        drops.loadTangents(frame.chains, psi, misses);
        blowers.loadTangents(psi, misses);
        pipes.countClipped(misses);
        drops.countClipped(misses);
        return misses.figure();
    }

    /** Lets the chains take the step that they wait for. */
    void finishStep() {
        for (int chain = 0; waitingShare > 0.0 && chain < frame.chains; chain++) {
            takeStep(chain);
        }
        waitingShare = 0.0;
    }

    private void takeStep(int chain) {
        if (!quiet.isKept(chain) || frame.endsMoved(chain) > STANDS * ambientPi) {
            frame.back(chain);
            advance(chain, waitingShare);
        }
    }

    private void loadChain(int chain) {
        if (quiet.isQuiet(chain) && !quiet.isTouched(chain)) {
            quiet.keep(chain);
            frame.keep(chain);
            pipes.keep(chain);
        } else if (quiet.isQuiet(chain)) {
            quiet.eliminated(chain);
            frame.clear(chain);
            pipes.loadKept(chain);
            drops.loadKept(chain);
            frame.eliminate(chain);
        } else {
            quiet.renewed(chain);
            frame.clear(chain);
            pipes.loadTangents(chain, psi, misses);
            drops.loadTangents(chain, psi, misses);
            frame.eliminate(chain);
        }
    }

    /** Puts leaves into the system at the flows that the pressures alone ask for: for the {@link Descent}. */
    void loadInverted(double[] anyPsi, Misses counted) {
        quiet.stirAll();
        drops.loadInverted(anyPsi, counted);
        blowers.loadTangents(anyPsi, counted);
    }

    /**
     * A step through wide and narrow pipes together may leave the balance rough; the next one mends it, when nothing
     * that is kept is taken for balanced.
     */
    @Override
    public boolean isBalanced() {
        Arrays.fill(balance, 0.0);
        pipes.addTo(balance);
        drops.addTo(balance);
        blowers.addTo(balance);
        boolean isBalanced = misses.isBalanced(frame.largest(balance));
        if (!isBalanced) {
            quiet.stirAll();
        }
        return isBalanced;
    }

    @Override
    public void step(double share) {
        frame.solveRest();
        blowers.remember(psi);
        advancePsi(frame.chains, share);
        boolean isCut = blowers.stopAtKinks(psi) || moved.isBounded();
        advanceFlows(frame.chains, share);
        blowers.advance(share);
        waitingShare = share;
        if (isCut) {
            quiet.stirAll(); // a chain would follow where the system sent its ends, not where they were stopped
        }
    }

    private void advance(int block, double share) {
        advancePsi(block, share);
        advanceFlows(block, share);
    }

    private void advancePsi(int block, double share) {
        moved.reset();
        for (int k = frame.begin(block); k < frame.begin(block + 1); k++) {
            int knot = frame.knotOfUnknown[k];
            double whole = psi[knot] + share * frame.change[k];
            double next = Math.min(highestPsi, Math.max(lowestPsi, whole));
            moved.bounded(next != whole);
            psi[knot] = next;
        }
    }

    private void advanceFlows(int block, double share) {
        pipes.advance(block, highestPsi - lowestPsi, share, moved);
        drops.advance(block, psi, highestPsi, share, moved);
        moved.bounded(share < 1.0 || logTerm);
        quiet.moved(block, moved, misses, ambientPi);
    }
}
