package lungfish.air;

import java.util.OptionalDouble;

/**
 * An uplift tube that bubbles drive: how much water it moves.
 *
 * <p>Momentum balance of A. H. Stenning and C. B. Martin, "An analytical and experimental study of air-lift pump
 * performance", Journal of Engineering for Power 90 (1968), pp. 106–110, with a lumped loss at the foot and slip by
 * drift flux. With water at superficial speed V and air at speed j in a riser of length L and bore D, of which S L is
 * under water:
 *
 * <pre>S − 1/(1 + j/(s V)) = V²/(2 g L) [(K + 1 + Ke) + (K + 2) j/V]
 * s V = 1.2 V + 0.237 j + U,  U = 0.352 √(g D) (1 − 3.18 Σ − 14.77 Σ²),  Σ = σ/(ρ g D²),  K = 0.41 f L/D</pre>
 *
 * <p>The slip constants and Ke = 14.5 were fitted to 144 published points of 19 to 28 mm bore and 0.8 to 7.5 m length,
 * which they meet within 8 % of each curve's maximum on average. The left side falls and the right side rises with V, so
 * there is one V for an air flow; seen from V there are two air flows, of which the smaller is meant.
 *
 * @param boreM of the riser, above 0
 * @param riserM length from the air inlet to where the water leaves, above 0
 * @param immersedM how much of that is under water, above 0 to {@code riserM}
 * @param addedLoss loss factor of a sponge, box or bend on the riser's bore, beyond the plain foot; 0 or above
 */
public record Airlift(double boreM, double riserM, double immersedM, double addedLoss) {
    /** Widest bore and least immersion for which the published points speak. */
    public static final double WIDEST_BORE_M = 0.040;

    public static final double LEAST_IMMERSION = 0.45;

    private static final double FOOT_LOSS = 14.5;
    private static final double SLIP_WATER = 1.2;
    private static final double SLIP_AIR = 0.237;
    private static final double FRICTION_SHARE = 0.41;
    private static final double FASTEST_WATER_M_PER_S = 20.0;
    private static final int HALVINGS = 100;

    public Airlift {
        Checks.positive(boreM, "riser bore");
        Checks.positive(riserM, "riser length");
        Checks.positive(immersedM, "immersed length");
        Checks.notNegative(addedLoss, "added loss");
        if (immersedM > riserM) {
            throw new IllegalArgumentException("immersed length " + immersedM + " is more than the riser's " + riserM);
        }
    }

    /** Whether the published points reach as far as this tube; outside, a figure is a guess and must be said to be. */
    public boolean insideItsRange() {
        return boreM <= WIDEST_BORE_M && immersedM / riserM >= LEAST_IMMERSION;
    }

    /**
     * Water moved by an air flow.
     *
     * @param freeAirM3PerS 0 or above
     * @return m³/s; 0 when the air is too little to lift the water to the outlet
     */
    public double waterM3PerS(double freeAirM3PerS, Water water, FreeAir room) {
        double air = freeAirM3PerS * thinning(water, room) / Tube.areaM2(boreM);
        double low = 0.0;
        double high = FASTEST_WATER_M_PER_S;
        if (excess(0.0, air, water) <= 0.0) {
            return 0.0;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean faster = excess(middle, air, water) > 0.0;
            low = faster ? middle : low;
            high = faster ? high : middle;
        }
        return low * Tube.areaM2(boreM);
    }

    /**
     * The least air that moves a water flow.
     *
     * @param waterM3PerS above 0
     * @return free air, m³/s; empty when no air flow moves so much through this tube
     */
    public OptionalDouble freeAirM3PerS(double waterM3PerS, Water water, FreeAir room) {
        double speed = waterM3PerS / Tube.areaM2(boreM);
        double low = 0.0;
        double high = bestAir(speed, water);
        if (high <= 0.0 || excess(speed, high, water) < 0.0) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean enough = excess(speed, middle, water) >= 0.0;
            high = enough ? middle : high;
            low = enough ? low : middle;
        }
        return OptionalDouble.of(high * Tube.areaM2(boreM) / thinning(water, room));
    }

    /** Volume of the air at the middle of its rise over its volume as free air. */
    private double thinning(Water water, FreeAir room) {
        return room.pressurePa() / (room.pressurePa() + water.columnPa(0.5 * immersedM));
    }

    /** What lifts less what resists, as a share of the riser's column. */
    private double excess(double waterMPerS, double airMPerS, Water water) {
        double slip = SLIP_WATER * waterMPerS + SLIP_AIR * airMPerS + driftMPerS(water);
        double lift = airMPerS / (airMPerS + slip) - (1.0 - immersedM / riserM);
        double friction = wallLoss(waterMPerS, water);
        double heads = (friction + 1.0 + FOOT_LOSS + addedLoss) * waterMPerS * waterMPerS
                + (friction + 2.0) * waterMPerS * airMPerS;
        return lift - heads / (2.0 * Water.GRAVITY_M_PER_S2 * riserM);
    }

    /** The air speed of the greatest excess: where the gain in lift equals the gain in resistance. */
    private double bestAir(double waterMPerS, Water water) {
        double still = SLIP_WATER * waterMPerS + driftMPerS(water);
        double resisting = (wallLoss(waterMPerS, water) + 2.0) * waterMPerS;
        double balance = Math.sqrt(still * 2.0 * Water.GRAVITY_M_PER_S2 * riserM / resisting);
        return (balance - still) / (1.0 + SLIP_AIR);
    }

    /** Rise speed of a long bubble in still water; a bore too narrow for one to rise has none. */
    private double driftMPerS(Water water) {
        double weight = water.densityKgPerM3() * Water.GRAVITY_M_PER_S2 * boreM * boreM;
        double tension = water.surfaceTensionNPerM() / weight;
        double held = 1.0 - 3.18 * tension - 14.77 * tension * tension;
        return 0.352 * Math.sqrt(Water.GRAVITY_M_PER_S2 * boreM) * Math.max(held, 0.0);
    }

    private double wallLoss(double waterMPerS, Water water) {
        double re = water.densityKgPerM3() * waterMPerS * boreM / water.viscosityPaS();
        return re == 0.0 ? 0.0 : FRICTION_SHARE * Friction.darcy(re, 0.0) * riserM / boreM;
    }
}
