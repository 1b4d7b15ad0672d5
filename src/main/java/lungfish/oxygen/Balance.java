package lungfish.oxygen;

import java.util.OptionalDouble;
import lungfish.air.StillSurface;

/**
 * The oxygen balance of one tank in one case:
 * {@code dC/dt = (k A/V)(C_s − C) + (b/V)(β C_s − C) − R f(C)/V}, {@code f = min(1, C/C_crit)}. First-order balance of Streeter
 * and Phelps 1925, with bubbles by ASCE/EWRI 2-06; below a critical level fish take up less (Verberk et al. 2022).
 *
 * @param volumeM3 of the water
 * @param surfaceM2 of the water
 * @param saturationGPerM3 against the room's air
 * @param bubbleSaturationGPerM3 the same for bubbles, β C_s
 * @param restGPerS what fish and bacteria take up, as long as there is enough
 * @param mealGPerS what fish take up beyond that after a large meal
 * @param criticalGPerM3 below which they take up less, in proportion; above 0
 * @param stillMPerS transfer velocity of the surface at rest
 * @param stirredMPerS the same when it is moved
 */
public record Balance(
        double volumeM3,
        double surfaceM2,
        double saturationGPerM3,
        double bubbleSaturationGPerM3,
        double restGPerS,
        double mealGPerS,
        double criticalGPerM3,
        double stillMPerS,
        double stirredMPerS) {
    public Balance {
        if (!(volumeM3 > 0 && surfaceM2 >= 0 && restGPerS >= 0 && mealGPerS >= 0 && criticalGPerM3 > 0)) {
            throw new IllegalArgumentException("a tank has water, and uses 0 or more");
        }
    }

    /** What is taken up as long as there is enough, g/s. */
    public double useGPerS() {
        return restGPerS + mealGPerS;
    }

    /** The same tank without the meal. */
    public Balance atRest() {
        return new Balance(
                volumeM3,
                surfaceM2,
                saturationGPerM3,
                bubbleSaturationGPerM3,
                restGPerS,
                0,
                criticalGPerM3,
                stillMPerS,
                stirredMPerS);
    }

    /** What comes through the surface, g/s; below 0 where the water is above saturation. */
    public double surfaceGPerS(double oxygenGPerM3, Breath breath) {
        return surfaceM3PerS(breath) * (saturationGPerM3 - oxygenGPerM3);
    }

    /** What the bubbles bring, g/s. */
    public double bubblesGPerS(double oxygenGPerM3, Breath breath) {
        return breath.bubblesM3PerS() * (bubbleSaturationGPerM3 - oxygenGPerM3);
    }

    /** What is used up at this level, g/s. */
    public double usedGPerS(double oxygenGPerM3) {
        return useGPerS() * Math.min(1, Math.max(0, oxygenGPerM3) / criticalGPerM3);
    }

    /** How fast the level changes, g/(m³ s). */
    public double rate(double oxygenGPerM3, Breath breath) {
        return (surfaceGPerS(oxygenGPerM3, breath) + bubblesGPerS(oxygenGPerM3, breath) - usedGPerS(oxygenGPerM3))
                / volumeM3;
    }

    /** The level at which nothing changes any more, g/m³; 0 where nothing comes and something is used. */
    public double steadyGPerM3(Breath breath) {
        double surface = surfaceM3PerS(breath);
        double exchange = surface + breath.bubblesM3PerS();
        double brings = surface * saturationGPerM3 + breath.bubblesM3PerS() * bubbleSaturationGPerM3;
        if (exchange == 0) {
            return useGPerS() > 0 ? 0 : saturationGPerM3;
        }
        double above = (brings - useGPerS()) / exchange;
        return above >= criticalGPerM3 ? above : brings / (exchange + useGPerS() / criticalGPerM3);
    }

    /**
     * When the level comes down to a limit while nothing else changes, in closed form; the same as a {@link Course} tells.
     *
     * @return s; 0 where it begins there; empty where it never does
     */
    public OptionalDouble downToS(double startGPerM3, double limitGPerM3, Breath breath) {
        double surface = surfaceM3PerS(breath);
        double exchange = surface + breath.bubblesM3PerS();
        double brings = surface * saturationGPerM3 + breath.bubblesM3PerS() * bubbleSaturationGPerM3;
        double turn = Math.min(startGPerM3, Math.max(limitGPerM3, criticalGPerM3));
        OptionalDouble toTurn = until(exchange, brings, useGPerS(), startGPerM3, turn);
        OptionalDouble fromTurn =
                until(exchange + useGPerS() / criticalGPerM3, brings, 0, turn, Math.min(turn, limitGPerM3));
        return toTurn.isPresent() && fromTurn.isPresent()
                ? OptionalDouble.of(toTurn.getAsDouble() + fromTurn.getAsDouble())
                : OptionalDouble.empty();
    }

    private OptionalDouble until(double exchange, double brings, double uses, double start, double limit) {
        double towards = exchange > 0 ? brings / exchange : 0;
        return StillSurface.secondsUntil(exchange, volumeM3, uses, towards, start, limit);
    }

    private double surfaceM3PerS(Breath breath) {
        return surfaceM2 * (breath.stirred() ? stirredMPerS : stillMPerS);
    }
}
