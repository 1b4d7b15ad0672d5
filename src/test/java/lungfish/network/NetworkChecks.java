package lungfish.network;

import lungfish.air.Tube;
import lungfish.air.Water;
import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;

/** How this package computes the published rows about networks, all of them of water: see {@link WaterAnalogue}. */
public final class NetworkChecks {
    private static final double SECONDS_PER_H = 3600.0;
    private static final double ANY_VISCOSITY = 0.001;
    private static final double WATER = 1000.0;
    private static final int OUTLETS = 1000;

    private NetworkChecks() {}

    /** Pipes in parallel, reservoirs, loops and draw-off. */
    public static CheckGroup networks() {
        return CheckGroup.of(
                        "Networks",
                        "Books publish networks of water. The solver for air solves them exactly: pressure of water stands"
                                + " for the square of the pressure of air, with flows in the ratio of the viscosities."
                                + " Where a book has a Hazen-Williams or a given friction factor, each pipe is a loss"
                                + " factor, set anew from its flow until it stands.",
                        "networks.json")
                .by("parallel-kg-s", in -> parallel(in, in.number("density_kg_m3")) * in.number("density_kg_m3"))
                .by("parallel-m3-h", in -> parallel(in, WATER) * SECONDS_PER_H)
                .by("junction-head", in -> reservoirs(in).headM("j", "r1") + in.numbers("surface_elevations_m")[0])
                .by("reservoir-flow", NetworkChecks::reservoirFlow)
                .by("quadratic-junction", NetworkChecks::quadraticJunction)
                .by("draw-off-fall", NetworkChecks::drawOffFallPa)
                .by("two-loop-head", HazenWilliams::twoLoopHeadM)
                .by("looped-main-gain", HazenWilliams::loopedMainGainPercent);
    }

    private static double viscosity(Inputs in, double density) {
        double kinematic = in.number("kinematic_viscosity_m2_s", 0.0);
        return kinematic > 0.0 ? kinematic * density : in.number("viscosity_Pa_s");
    }

    private static Tube tube(Inputs in, int i) {
        double[] roughness = in.numbers("roughnesses_mm");
        double height = roughness.length > 0 ? roughness[i] / 1000.0 : in.number("roughness_m");
        return new Tube(in.numbers("lengths_m")[i], in.numbers("diameters_m")[i], height, 0.0);
    }

    /** Flow of the asked branch, m³/s. */
    private static double parallel(Inputs in, double density) {
        double fall = in.number("total_head_loss_m", 0.0);
        double head = fall > 0.0 ? fall : in.number("pressure_difference_Pa") / density / Water.GRAVITY_M_PER_S2;
        WaterAnalogue water = new WaterAnalogue(density, viscosity(in, density))
                .node("a")
                .node("b")
                .reservoir("a", head)
                .reservoir("b", 0.0);
        for (int i = 0; i < in.numbers("lengths_m").length; i++) {
            water.pipe("p" + i, "a", "b", tube(in, i));
        }
        return water.solveAsSet().flowM3PerS((int) in.number("branch") - 1);
    }

    private static WaterAnalogue reservoirs(Inputs in) {
        double density = in.number("density_kg_m3");
        WaterAnalogue water = new WaterAnalogue(density, viscosity(in, density)).node("j");
        for (int i = 0; i < in.numbers("lengths_m").length; i++) {
            String name = "r" + (i + 1);
            water.node(name)
                    .reservoir(name, in.numbers("surface_elevations_m")[i])
                    .pipe("p" + i, name, "j", tube(in, i));
        }
        return water.solveAsSet();
    }

    private static double reservoirFlow(Inputs in) {
        return Math.abs(reservoirs(in).flowM3PerS((int) in.number("pipe") - 1)) * SECONDS_PER_H;
    }

    /** {@code h = r Q²} is a loss factor {@code K = 2 g r A²} on any bore. */
    private static double quadraticJunction(Inputs in) {
        double bore = 0.1;
        double area = Tube.areaM2(bore);
        double[] levels = in.numbers("levels_m");
        WaterAnalogue water = new WaterAnalogue(WATER, ANY_VISCOSITY).node("j");
        for (int i = 0; i < levels.length; i++) {
            String name = "r" + i;
            double k = 2.0 * Water.GRAVITY_M_PER_S2 * in.numbers("resistances_s2_m5")[i] * area * area;
            water.node(name).reservoir(name, levels[i]).pipe("p" + i, name, "j", new Tube(0.0, bore, 0.0, k));
        }
        return water.solveAsSet().headM("j", "r0") + levels[0];
    }

    /** Outlets in the middles of equal sections, so that the first pipe is half a section. */
    private static double drawOffFallPa(Inputs in) {
        double bore = in.number("diameter_m");
        double density = in.number("density_kg_m3");
        double k = in.number("darcy_f") * in.number("length_m") / bore / OUTLETS;
        WaterAnalogue water =
                new WaterAnalogue(density, ANY_VISCOSITY).node("n0").reservoir("n0", 0.0);
        for (int i = 1; i <= OUTLETS; i++) {
            water.node("n" + i)
                    .pipe("p" + i, "n" + (i - 1), "n" + i, new Tube(0.0, bore, 0.0, i == 1 ? k / 2.0 : k))
                    .draw("n" + i, in.number("flow_in_m3_s") / OUTLETS);
        }
        return water.solveTuned().headM("n0", "n" + OUTLETS) * density * Water.GRAVITY_M_PER_S2;
    }
}
