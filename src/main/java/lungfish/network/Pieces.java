package lungfish.network;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What can be said of each connected piece of a network before any step: whether a pressure is held in it, the highest
 * pressure that its blowers reach, the lowest at which a drop opens; hence where nothing moves, and where no answer is.
 */
final class Pieces {
    private final Knots knots;
    private final boolean[] holds;
    private final double[] heldMost;
    private final double[] shut;
    private final double[] opens;
    private final int[] strongest;

    Pieces(Shape shape, Knots knots, double[] heldPsi, DropWork drops, BlowerLaws blowers) {
        this.knots = knots;
        holds = new boolean[knots.pieces];
        heldMost = filled(Double.NEGATIVE_INFINITY);
        shut = filled(Double.NEGATIVE_INFINITY);
        opens = filled(Double.POSITIVE_INFINITY);
        strongest = new int[knots.pieces];
        for (int i = 0; i < shape.sources(); i++) {
            int piece = pieceOf(shape.sourceNode[i]);
            holds[piece] |= shape.fixed[i];
            heldMost[piece] = Math.max(heldMost[piece], heldPsi[i]);
        }
        for (int i = 0; i < blowers.count(); i++) {
            int piece = pieceOf(shape.sourceNode[blowers.source(i)]);
            if (blowers.shutPsi(i) > shut[piece]) {
                shut[piece] = blowers.shutPsi(i);
                strongest[piece] = blowers.source(i);
            }
        }
        for (int i = 0; i < drops.count(); i++) {
            int piece = knots.piece[drops.knot(i)];
            opens[piece] = Math.min(opens[piece], drops.laws().opensAt(i));
        }
    }

    private double[] filled(double value) {
        double[] array = new double[knots.pieces];
        Arrays.fill(array, value);
        return array;
    }

    private int pieceOf(int node) {
        return knots.piece[knots.ofNode[node]];
    }

    /** Whether nothing can move in a piece: its blowers push to where they shut and no drop opens for them. */
    boolean isStill(int piece) {
        return !holds[piece] && opens[piece] >= shut[piece];
    }

    /** Whether a pressure is held in a piece. */
    boolean holds(int piece) {
        return holds[piece];
    }

    /** ψ at which a still piece stands: where the strongest of its blowers shuts; ambient without one. */
    double stillPsi(int piece) {
        return knots.fed[piece] ? shut[piece] : 0.0;
    }

    /** The highest ψ that is held in a piece. */
    double heldMost(int piece) {
        return heldMost[piece];
    }

    /** The highest ψ that any knot can have: no knot stands above all sources. */
    double highest() {
        double highest = 0.0;
        for (int piece = 0; piece < shut.length; piece++) {
            highest = Math.max(highest, Math.max(heldMost[piece], shut[piece]));
        }
        return highest;
    }

    /** The least ψ at which a drop of a piece opens. */
    double opens(int piece) {
        return opens[piece];
    }

    /** Where the strongest blower of a piece shuts. */
    double shut(int piece) {
        return shut[piece];
    }

    /** The reason why a piece has no answer, if one has none. */
    @Nullable
    Refused refusal(Network network, Shape shape) {
        for (int i = 0; i < shape.drops(); i++) {
            if (!knots.fed[pieceOf(shape.dropNode[i])]) {
                return Reasons.noSource(network.drops().get(i));
            }
        }
        for (int piece = 0; piece < knots.pieces; piece++) {
            if (isStill(piece) && stillPsi(piece) == Double.POSITIVE_INFINITY) {
                return Reasons.noOutlet(network.sources().get(strongest[piece]));
            }
        }
        return null;
    }
}
