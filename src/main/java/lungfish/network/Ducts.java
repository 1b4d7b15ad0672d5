package lungfish.network;

import lungfish.air.Air;
import lungfish.air.Friction;

/**
 * The law of many lengths of pipe or tubing, as arrays: {@code π1 − π2 = (f L/D + ΣK) ṁ|ṁ| R T/A²}, π the square of the
 * absolute pressure (physics of an isothermal ideal gas; Churchill's f, as in {@link Friction}).
 *
 * <p>With {@code Re = |ṁ| c} the friction part is {@code (L/D)(R T/A²)/c · (f Re) · ṁ}, which has no trouble at rest.
 * One call of {@link #at} gives the loss and its slope in fields, so that the loop above it allocates nothing.
 */
final class Ducts {
    private final double[] rePerKgPerS;
    private final double[] relativeRoughness;
    private final double[] friction;
    private final double[] fittings;
    private final double[] squarePerBracket;
    private final double[] valueAndSlope = new double[2];

    /** Loss at the last {@link #at}, Pa²; has the sign of the flow. */
    double loss;

    /** Slope of the loss at the last {@link #at}, Pa² s/kg; 0 or more. */
    double slope;

    Ducts(int count) {
        rePerKgPerS = new double[count];
        relativeRoughness = new double[count];
        friction = new double[count];
        fittings = new double[count];
        squarePerBracket = new double[count];
    }

    /** Sets one of them. */
    void set(int i, Tubing tubing, Conditions conditions) {
        double bore = tubing.boreM();
        double area = Math.PI / 4.0 * bore * bore;
        double temperature = conditions.pipeTemperatureK();
        double perBracket = Air.GAS_CONSTANT_J_PER_KG_K * temperature / (area * area);
        rePerKgPerS[i] = 4.0 / (Math.PI * bore * Air.viscosityPaS(temperature));
        relativeRoughness[i] = tubing.roughnessM() / bore;
        friction[i] = tubing.lengthM() / bore * perBracket / rePerKgPerS[i];
        fittings[i] = tubing.kSum() * perBracket;
        squarePerBracket[i] = perBracket;
    }

    /** Makes one of them cost nothing. */
    void clear(int i) {
        friction[i] = 0.0;
        fittings[i] = 0.0;
        squarePerBracket[i] = 0.0;
    }

    /** Loss and slope at a flow, without the acceleration term. */
    void at(int i, double kgPerS) {
        double size = Math.abs(kgPerS);
        double re = size * rePerKgPerS[i];
        if (friction[i] == 0.0) {
            valueAndSlope[0] = 0.0;
            valueAndSlope[1] = 0.0;
        } else {
            Friction.darcyTimesRe(re, relativeRoughness[i], valueAndSlope);
        }
        loss = (friction[i] * valueAndSlope[0] + fittings[i] * size) * kgPerS;
        slope = friction[i] * (valueAndSlope[0] + re * valueAndSlope[1]) + 2.0 * fittings[i] * size;
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

    double re(int i, double kgPerS) {
        return Math.abs(kgPerS) * rePerKgPerS[i];
    }

    double darcy(int i, double kgPerS) {
        return Friction.darcy(re(i, kgPerS), relativeRoughness[i]);
    }

    /**
     * The flow that loses {@code lossPa2} with {@code logRatio} more in its bracket: Newton from above. The laminar law
     * with the fittings bounds the flow from above, and between the two the loss is convex, so that each step stays
     * above the root; halving stands behind it.
     */
    double flowAt(int i, double lossPa2, double logRatio) {
        double wanted = Math.abs(lossPa2);
        double squares = fittings[i] + logRatio * squarePerBracket[i];
        double high = Quadratic.positiveRoot(squares, slopeAtRest(i), wanted);
        double low = 0.0;
        double flow = high;
        for (int step = 0; step < Quadratic.MOST_STEPS && high > low; step++) {
            at(i, flow);
            addToBracket(i, flow, logRatio);
            double over = loss - wanted;
            if (over > 0.0) {
                high = flow;
            } else {
                low = flow;
            }
            double next = flow - over / slope;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - flow) <= Quadratic.LAST_DIGITS * flow) {
                return Math.copySign(next, lossPa2);
            }
            flow = next;
        }
        return Math.copySign(flow, lossPa2);
    }
}
