package lungfish.measured;

/**
 * What the blowers give and what is lost of it before the outlets.
 *
 * @param setPa gauge at the blowers when the valves were set
 * @param share what the blowers gave then, of their data sheet
 * @param left what is left of that today
 * @param steepness how much steeper their curve is, about the point where they ran then
 * @param bledM3PerS free air that the bleed let out then, and would today at the same pressure
 * @param leakM3PerS free air that leaks today at that pressure, seeping included
 */
record Blowing(double setPa, double share, double left, double steepness, double bledM3PerS, double leakM3PerS) {
    static Blowing of(Start start, Unknowns unknowns, Happening happening, double[] at) {
        double setPa = start.gaugePa() + at[unknowns.setGauge];
        double takes = 0;
        for (int i = 0; i < start.outlets(); i++) {
            takes += start.flow()[i] * Math.exp(at[Unknowns.flow(i)]);
        }
        double seeps = Math.max(0, Doubts.SEEP_SHARE + at[unknowns.seep]) * start.takesM3PerS();
        double sheet = start.sheetM3PerS(setPa);
        double share = start.isBled() ? Math.exp(at[unknowns.blower]) : (takes + seeps) / sheet;
        double bled = start.isBled() ? share * sheet - takes - seeps : 0;
        if (bled < 0) {
            share = (takes + seeps) / sheet;
            bled = 0;
        }
        double lost = happening instanceof Happening.Wear wear ? wear.lost() : 0;
        double leaks = happening instanceof Happening.Leak leak ? leak.share() * start.takesM3PerS() : 0;
        return new Blowing(
                setPa,
                share,
                Math.max(0.01, unknowns.leftByAge(at)) * (1 - lost),
                at[unknowns.steepness],
                bled,
                seeps + leaks);
    }

    /**
     * What a machine gives today.
     *
     * @param sheetM3PerS by its data sheet at some pressure
     * @param pivotM3PerS by its data sheet at the pressure when the valves were set
     */
    double gives(double sheetM3PerS, double pivotM3PerS) {
        double turned = pivotM3PerS + (1 + Math.max(-0.9, steepness)) * (sheetM3PerS - pivotM3PerS);
        return Math.max(0, share * left * turned);
    }
}
