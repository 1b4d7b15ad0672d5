package lungfish.network;

import lungfish.air.Gas;
import lungfish.air.PipeLaw;
import lungfish.air.Tube;

/**
 * The airline of a drop.
 *
 * @param lengthM 0 or more
 * @param boreM inside diameter, above 0
 * @param roughnessM height of the wall's roughness, 0 or more, below half the bore
 * @param kSum sum of the loss factors of its fittings, on its own bore
 */
public record Tubing(double lengthM, double boreM, double roughnessM, double kSum) {
    /** Checks the numbers. */
    public Tubing {
        check(lengthM, boreM, roughnessM, kSum);
    }

    static void check(double lengthM, double boreM, double roughnessM, double kSum) {
        Part.from0("lengthM", lengthM);
        Part.above0("boreM", boreM);
        Part.from0("roughnessM", roughnessM);
        Part.from0("kSum", kSum);
        if (roughnessM >= boreM / 2) {
            throw new IllegalArgumentException("roughnessM must be below half the bore, not " + roughnessM);
        }
    }

    /** What it takes from the air of a network. */
    PipeLaw law(Conditions conditions) {
        double temperature = conditions.pipeTemperatureK();
        return PipeLaw.of(new Tube(lengthM, boreM, roughnessM, kSum), Gas.airAt(temperature), temperature);
    }
}
