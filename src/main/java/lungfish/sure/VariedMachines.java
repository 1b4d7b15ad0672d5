package lungfish.sure;

import lungfish.catalogue.BlowerClass;
import lungfish.room.Spread;
import lungfish.sizing.Fleet;
import lungfish.sure.Layout.Common;

/**
 * Machines as they may be instead of as their data sheets say. All classes have the same luck in one sample, so that two
 * candidates are compared under the same circumstances.
 *
 * @param air what a machine gives at each pressure, as a share of its data sheet's
 * @param loss what it has lost when it is tired, as a share of what its class loses
 */
record VariedMachines(double air, double loss) {
    /** Of its air a machine that still runs keeps this at least. */
    private static final double LEAST_LEFT = 0.05;

    static VariedMachines of(Widths widths, Draws draws, int sample) {
        return new VariedMachines(
                Chance.tolerance(widths.of(Spread.CURVE), draws.share(Common.CURVE, sample)),
                Chance.factor(widths.of(Spread.WEAR), draws.deviate(Common.WEAR, sample)));
    }

    Fleet of(Fleet said) {
        return air == 1 && loss == 1 ? said : said.with(this::of);
    }

    private BlowerClass of(BlowerClass said) {
        double left = said.tiredShare() - (loss - 1) * (1 - said.tiredShare());
        return said.giving(air, Math.max(Math.min(LEAST_LEFT, said.tiredShare()), left));
    }
}
