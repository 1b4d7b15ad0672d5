package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lungfish.build.BuildPlan;
import lungfish.build.Tap;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.PipeSize.Material;
import lungfish.document.Part;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Code;
import lungfish.reason.Severity;

/** Where building can hurt someone, and who must be asked. */
final class BuildCautions {
    private static final double HOUR_S = 3600;

    /** A pipe maker's table of joint curing: pipe to 1 1/4 in, 16 °C and above, to 180 psi; half as much again when damp. */
    private static final double CURE_S = 1.5 * HOUR_S;

    /** The same table, 4 to 16 °C. */
    private static final double COLD_CURE_S = 3 * HOUR_S;

    /** By the same table pipe of 1 1/2 in and more cures twice as long. */
    private static final double LARGE_M = 0.045;

    private static final double COLD_K = 273.15 + 16;

    static final String MAINS =
            "Mains power beside water: wiring and sockets are for a licensed electrician, behind residual-current (ground-fault)"
                    + " protection, with a drip loop in every cord.";

    private static final String HEAT =
            "A blower gets hot: keep cloth, cables and small hands off it and its first pipe, and let air reach it from all"
                    + " sides.";

    /** ASTM D1785 and D2466, section 1: for pressurized liquids only; the stored energy of gas is a serious hazard. */
    static final String LIQUIDS_ONLY =
            "The standards of PVC pipe and fittings are for liquids under pressure; some makers and codes forbid compressed gas in"
                    + " them. Use it for blower air only, with the blower's own pressure as the most that can come, and only"
                    + " where your code and the pipe maker allow it.";

    private final Plan plan;
    private final BuildPlan build;
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final Sentences sentences;

    BuildCautions(Plan plan, BuildPlan build, Catalogue catalogue, Quantities quantities, Sentences sentences) {
        this.plan = plan;
        this.build = build;
        this.catalogue = catalogue;
        this.quantities = quantities;
        this.sentences = sentences;
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .forEach(finding -> caution(parts, sentences.says(finding) + " " + sentences.mend(finding)));
        if (has(Material.PVC)) {
            caution(parts, LIQUIDS_ONLY);
            caution(parts, cement());
        }
        if (has(Material.METAL)) {
            caution(
                    parts,
                    "Soldering: an open flame and hot flux. Work where the air moves, keep a fire extinguisher at hand, and"
                            + " solder before plastic pipe is near. Some places want a licensed plumber.");
        }
        if (!build.taps().isEmpty()) {
            caution(parts, drilling());
        }
        if (!isTold(Code.RESIDUAL_CURRENT) && !isTold(Code.NO_RESIDUAL_CURRENT)) {
            caution(parts, MAINS);
        }
        if (!isTold(Code.HOT_DISCHARGE)) {
            caution(parts, HEAT);
        }
        caution(
                parts,
                "This sheet is a plan, not an approval. Local codes, the makers' sheets and licensed practice come first.");
        return parts;
    }

    private static void caution(List<Part> parts, String text) {
        parts.add(new Part.Caution(text));
    }

    private boolean isTold(Code code) {
        return plan.findings().stream().anyMatch(finding -> finding.code() == code);
    }

    private boolean has(Material material) {
        return build.cuts().keySet().stream()
                .flatMap(size -> catalogue.pipe(size).stream())
                .map(PipeSize::material)
                .anyMatch(each -> each == material);
    }

    private String cement() {
        return "Solvent cement and primer: their vapours burn and make ill. No flame, open windows, gloves and glasses, and no"
                + " fish food or open tanks beside it. Let joints cure before any air goes in: "
                + cure(build.cuts().keySet(), catalogue, quantities)
                + "; then blow the pipe through, open, before airlines hang on it.";
    }

    /** How long cemented pipe of these sizes cures before any air goes in. */
    static String cure(Set<String> sizes, Catalogue catalogue, Quantities quantities) {
        boolean large = sizes.stream()
                .flatMap(size -> catalogue.pipe(size).stream())
                .anyMatch(pipe -> pipe.material() == Material.PVC && pipe.outsideM() > LARGE_M);
        int times = large ? 2 : 1;
        return "at least " + quantities.show(times * CURE_S, Dimension.DURATION) + " in a warm damp room, "
                + quantities.show(times * COLD_CURE_S, Dimension.DURATION) + " below "
                + quantities.show(COLD_K, Dimension.TEMPERATURE) + ", longer if the can says so";
    }

    private String drilling() {
        boolean wall = build.taps().stream().anyMatch(tap -> tap.hold() == Tap.Hold.WALL);
        return "Drilling: hold the pipe in a vice, wear glasses, no power tool with wet hands or over open tanks. Drill"
                + (wall ? " and tap" : "")
                + " before the pipe hangs, and blow the swarf out: a chip in a valve stops an outlet.";
    }
}
