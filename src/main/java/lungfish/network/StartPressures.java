package lungfish.network;

import java.util.Arrays;

/**
 * A pressure for each piece to start from: the highest that is held in it, or else the one at which its blowers would
 * give what its drops would take if no pipe lay between them (a few halvings on cheap bounds of the drops' flows).
 */
final class StartPressures {
    private static final int HALVINGS = 12;

    private final Knots knots;
    private final DropWork drops;
    private final BlowerWork blowers;
    private final double[] balance;

    StartPressures(Knots knots, DropWork drops, BlowerWork blowers) {
        this.knots = knots;
        this.drops = drops;
        this.blowers = blowers;
        balance = new double[knots.pieces];
    }

    /** ψ for each piece. */
    double[] of(Pieces pieces) {
        double[] low = new double[balance.length];
        double[] high = new double[balance.length];
        boolean search = bracket(pieces, low, high);
        double[] middle = high.clone();
        for (int i = 0; search && i < HALVINGS; i++) {
            for (int piece = 0; piece < middle.length; piece++) {
                middle[piece] = 0.5 * (low[piece] + high[piece]);
            }
            weigh(middle);
            for (int piece = 0; piece < middle.length; piece++) {
                low[piece] = balance[piece] > 0.0 ? middle[piece] : low[piece];
                high[piece] = balance[piece] > 0.0 ? high[piece] : middle[piece];
            }
        }
        return high;
    }

    private boolean bracket(Pieces pieces, double[] low, double[] high) {
        boolean search = false;
        for (int piece = 0; piece < low.length; piece++) {
            if (pieces.holds(piece)) {
                low[piece] = pieces.heldMost(piece);
                high[piece] = low[piece];
            } else if (pieces.isStill(piece)) {
                low[piece] = pieces.stillPsi(piece);
                high[piece] = low[piece];
            } else {
                search = true;
                low[piece] = Math.min(pieces.opens(piece), 0.0);
                high[piece] = Math.min(pieces.shut(piece), MOST_OVER_OPENING * (pieces.opens(piece) + LEAST_PSI));
            }
        }
        return search;
    }

    private static final double MOST_OVER_OPENING = 16.0;
    private static final double LEAST_PSI = 2e8;

    /** What comes in less what goes out at one pressure a piece. */
    private void weigh(double[] psi) {
        Arrays.fill(balance, 0.0);
        for (int i = 0; i < drops.count(); i++) {
            int piece = knots.piece[drops.knot(i)];
            balance[piece] -= drops.laws().mostFlow(i, psi[piece]);
        }
        for (int i = 0; i < blowers.laws().count(); i++) {
            int piece = knots.piece[blowers.knot(i)];
            blowers.laws().at(i, psi[piece]);
            balance[piece] += blowers.laws().flow;
        }
    }
}
