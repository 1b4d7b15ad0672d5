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
        rePerKgPerS[i] = law.reynoldsSPerKg();
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
        double product = Friction.LAMINAR_DARCY_TIMES_RE;
        double rise = 0.0;
        if (re >= FrictionTable.LAMINAR_TO_RE && friction[i] > 0.0) {
            FrictionTable pieces = table[i];
            if (pieces != null && re < FrictionTable.END_RE) {
                FrictionPiece piece = pieces.piece(re);
                double place = piece.place(re);
                product = piece.value(place);
                rise = piece.slope(place);
            } else {
                Friction.darcyTimesRe(re, relativeRoughness[i], valueAndSlope);
                product = valueAndSlope[0];
                rise = valueAndSlope[1];
            }
        }
        loss = (friction[i] * product + fittings[i] * size) * kgPerS;
        slope = friction[i] * (product + re * rise) + 2.0 * fittings[i] * size;
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
