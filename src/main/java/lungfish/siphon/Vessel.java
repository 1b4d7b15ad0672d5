package lungfish.siphon;

import lungfish.room.Tank;

/** How much water leaves a vessel, and how much more it takes. Glass is not taken off, as in {@link Tank#waterM3()}. */
final class Vessel {
    private Vessel() {}

    /**
     * What runs out when the water line sinks, m³. A cone or tumbler is taken to stand on its point: {@code V ∝ h³}.
     *
     * @param sinksM 0 to the depth of the water; more is as much as there is
     */
    static double runsOutM3(Tank tank, double sinksM) {
        double deep = tank.waterDepthM();
        double left = deep > 0 ? Math.max(0, deep - sinksM) / deep : 0;
        double stays = tank.kind() == Tank.Kind.TANK ? left : left * left * left;
        return tank.waterM3() * (1 - stays);
    }

    /** What fits between the water line and the rim, m³: the sides taken as upright. */
    static double freeM3(Tank tank) {
        double free = Math.max(0, tank.outside().heightM() - tank.waterDepthM());
        return tank.outside().lengthM() * tank.outside().widthM() * free;
    }
}
