package lungfish.network;

import lungfish.air.Air;
import lungfish.air.Friction;
import lungfish.air.PipeLaw;
import lungfish.air.Tube;
import org.jspecify.annotations.Nullable;

/**
 * The law of many lengths of pipe or tubing, as arrays: the four numbers of {@link PipeLaw} for each, side by side.
 *
 * <p>One call of {@link #at} gives the loss and its slope in fields, so that the loop above it allocates nothing. What
 * solves asks {@link FrictionTable}s, what judges asks the law itself ({@link Laws}).
 */
final class Ducts {
    private final double[] rePerKgPerS;
    private final double[] relativeRoughness;
    private final double[] friction;
    private final double[] fittings;
    private final double[] squarePerBracket;
    private final @Nullable FrictionTable[] table;
    private final Laws laws;
    private final double[] valueAndSlope = new double[2];

    /** Loss at the last {@link #at}, Pa²; has the sign of the flow. */
    double loss;

    /** Slope of the loss at the last {@link #at}, Pa² s/kg; 0 or more. */
    double slope;

    /** How fast the slope of its size grows at the last {@link #at}, Pa² s²/kg²; infinite where that is not known. */
    double bend;

    Ducts(int count, Laws laws) {
        this.laws = laws;
        table = new FrictionTable[count];
        rePerKgPerS = new double[count];
        relativeRoughness = new double[count];
        friction = new double[count];
        fittings = new double[count];
        squarePerBracket = new double[count];
    }

    /** Sets one of them. */
    void set(int i, Tubing tubing, Conditions conditions) {
        double temperature = conditions.pipeTemperatureK();
        PipeLaw law = tubing.law(conditions);
        double area = Tube.areaM2(tubing.boreM());
        rePerKgPerS[i] = law.frictionPa2SPerKg() > 0.0 ? law.reynoldsSPerKg() : 0.0;
        relativeRoughness[i] = law.relativeRoughness();
        friction[i] = law.frictionPa2SPerKg();
        fittings[i] = law.lossPa2S2PerKg2();
        boolean rubs = law.frictionPa2SPerKg() > 0.0;
        table[i] = rubs && laws == Laws.TABLED ? FrictionTable.of(law.relativeRoughness()) : null;
        squarePerBracket[i] = Air.GAS_CONSTANT_J_PER_KG_K * temperature / (area * area);
    }

    /** Loss and slope at a flow, without the acceleration term. */
    void at(int i, double kgPerS) {
        double size = Math.abs(kgPerS);
        double re = size * rePerKgPerS[i];
        FrictionTable pieces = table[i];
        if (pieces != null && re < FrictionTable.END_RE) {
            FrictionPiece piece = pieces.piece(re);
            double place = piece.place(re);
            set(i, kgPerS, re, piece.value(place), piece.slope(place));
            bend = friction[i] * rePerKgPerS[i] * (2.0 * piece.slope(place) + re * piece.bend(place))
                    + 2.0 * fittings[i];
        } else {
            written(i, kgPerS, re);
        }
    }

    /**
     * The same for a range of them, into arrays: what a solver asks all the time.
     *
     * @param curves takes half of what {@link #bend} says
     */
    void at(int from, int to, double[] flows, double[] losses, double[] slopes, double[] curves) {
        FrictionTable[] tables = table;
        double[] rubbing = friction;
        double[] fitted = fittings;
        double[] rePerFlow = rePerKgPerS;
        for (int i = from; i < to; i++) {
            double size = Math.abs(flows[i]);
            double re = size * rePerFlow[i];
            FrictionTable pieces = tables[i];
            if (pieces != null && re < FrictionTable.END_RE) {
                FrictionPiece piece = pieces.piece(re);
                double place = piece.place(re);
                double product = piece.value(place);
                double rise = piece.slope(place);
                double half = fitted[i];
                losses[i] = (rubbing[i] * product + half * size) * flows[i];
                slopes[i] = rubbing[i] * (product + re * rise) + 2.0 * half * size;
                curves[i] = rubbing[i] * rePerFlow[i] * (rise + 0.5 * re * piece.bend(place)) + half;
            } else {
                at(i, flows[i]);
                losses[i] = loss;
                slopes[i] = slope;
                curves[i] = 0.5 * bend;
            }
        }
    }

    private void set(int i, double kgPerS, double re, double product, double rise) {
        double size = Math.abs(kgPerS);
        loss = (friction[i] * product + fittings[i] * size) * kgPerS;
        slope = friction[i] * (product + re * rise) + 2.0 * fittings[i] * size;
    }

    private void written(int i, double kgPerS, double re) {
        if (friction[i] == 0.0) {
            set(i, kgPerS, re, 0.0, 0.0);
            bend = 2.0 * fittings[i];
        } else {
            Friction.darcyTimesRe(re, relativeRoughness[i], valueAndSlope);
            set(i, kgPerS, re, valueAndSlope[0], valueAndSlope[1]);
            bend = re < FrictionTable.LAMINAR_TO_RE ? 2.0 * fittings[i] : Double.POSITIVE_INFINITY;
        }
    }

    /** Adds what {@code logRatio} more in the bracket costs to the last {@link #at}. */
    void addToBracket(int i, double kgPerS, double logRatio) {
        double factor = squarePerBracket[i] * logRatio * Math.abs(kgPerS);
        loss += factor * kgPerS;
        slope += 2.0 * factor;
    }

    /** Loss of one unit in the bracket at a flow, Pa². */
    double bracketUnit(int i, double kgPerS) {
        return squarePerBracket[i] * kgPerS * kgPerS;
    }

    /** Slope of the loss at rest; the least there is, since f Re is never below its laminar 64. */
    double slopeAtRest(int i) {
        return Friction.LAMINAR_DARCY_TIMES_RE * friction[i];
    }

    /** Whether friction is a straight line up to a flow; without friction it always is. */
    boolean isLaminar(int i, double kgPerS) {
        return kgPerS * rePerKgPerS[i] <= FrictionTable.LAMINAR_TO_RE;
    }

    /** Factor of the square of the flow, of the fittings alone. */
    double square(int i) {
        return fittings[i];
    }

    /** The flow that loses {@code lossPa2} with {@code logRatio} more in its bracket: {@link PipeLaw} inverted. */
    double flowAt(int i, double lossPa2, double logRatio) {
        double squares = fittings[i] + logRatio * squarePerBracket[i];
        return new PipeLaw(friction[i], squares, rePerKgPerS[i], relativeRoughness[i]).flowKgPerS(lossPa2);
    }
}
