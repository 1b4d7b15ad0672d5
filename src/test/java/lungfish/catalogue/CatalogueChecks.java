package lungfish.catalogue;

import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;

/** Holds the classes that copy a published table to that table. */
public final class CatalogueChecks {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    private static final double YEAR_S = 365.25 * 24 * 3600;

    private CatalogueChecks() {}

    /** Loss factors of fittings, dimensions of pipe and airline, and the rules of the trade for devices. */
    public static CheckGroup tables() {
        return CheckGroup.of(
                        "Fittings, pipe sizes and devices of the catalogue",
                        "Ours is what the class named `class` says. Walls are least walls, bores average ones.",
                        "catalogue.json")
                .by("loss-factor", in -> fitting(in).lossFactor())
                .by("outside", in -> inUnit(in, pipe(in).outsideM()))
                .by("wall", in -> inUnit(in, pipe(in).wallM()))
                .by("bore", in -> inUnit(in, pipe(in).boreM()))
                .by(
                        "airline-bore",
                        in -> 1000.0
                                * CATALOGUE
                                        .airline(in.text("class"))
                                        .orElseThrow()
                                        .boreM())
                .by("typical-flow", in -> 60_000.0 * device(in).typicalM3PerS())
                .by(
                        "rebuild",
                        in -> CATALOGUE.blower(in.text("class")).orElseThrow().rebuildS() / YEAR_S)
                .by("clean-pressure", in -> cleanPa(device(in)) / 1000.0);
    }

    private static DeviceClass device(Inputs in) {
        return CATALOGUE.device(in.text("class")).orElseThrow();
    }

    /** What a clean device takes at the flow it is usually given. */
    private static double cleanPa(DeviceClass device) {
        double flow = device.typicalM3PerS();
        return device.clean().p0Pa()
                + (device.clean().aPaSPerM3() + device.clean().bPaS2PerM6() * flow) * flow;
    }

    private static FittingClass fitting(Inputs in) {
        return CATALOGUE.fitting(in.text("class")).orElseThrow();
    }

    private static PipeSize pipe(Inputs in) {
        return CATALOGUE.pipe(in.text("class")).orElseThrow();
    }

    /** Inch sizes are published in inches, metric ones in millimetres. */
    private static double inUnit(Inputs in, double metres) {
        return in.node().has("nominal_size_in") ? metres / 0.0254 : metres * 1000.0;
    }
}
