package lungfish.network;

import static lungfish.validation.Measures.INCH_M;

import java.util.Arrays;
import lungfish.air.Tube;
import lungfish.air.Water;
import lungfish.validation.Inputs;

/**
 * Networks whose book law is a power of the flow: {@code h = r Q^n}. Each pipe is a loss factor with the same head at
 * the flow that it had last, solved again until flows stand; the step shrinks by 1 − n/2 each time.
 */
final class HazenWilliams {
    private static final int ROUNDS = 30;
    private static final double BORE_M = 0.3;
    private static final double WATER = 1000.0;
    private static final double ANY_VISCOSITY = 0.001;

    private HazenWilliams() {}

    private static Tube tube(double resistance, double exponent, double flowM3PerS) {
        double area = Tube.areaM2(BORE_M);
        double perSquare = resistance * Math.pow(Math.abs(flowM3PerS), exponent - 2.0);
        return new Tube(0.0, BORE_M, 0.0, 2.0 * Water.GRAVITY_M_PER_S2 * perSquare * area * area);
    }

    static double twoLoopHeadM(Inputs in) {
        double[] from = in.numbers("from");
        double[] flow = new double[from.length];
        Arrays.fill(flow, 0.05);
        WaterAnalogue water = twoLoop(in, flow);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < flow.length; i++) {
                flow[i] = water.flowM3PerS(i);
            }
            water = twoLoop(in, flow);
        }
        int node = (int) in.number("node");
        double head = in.number("source_head_m_node_1") - water.headM("n1", "n" + node);
        return head - in.numbers("elevation_m_nodes_2_to_7")[node - 2];
    }

    private static WaterAnalogue twoLoop(Inputs in, double[] flow) {
        WaterAnalogue water =
                new WaterAnalogue(WATER, ANY_VISCOSITY).node("n1").reservoir("n1", in.number("source_head_m_node_1"));
        double[] demand = in.numbers("demand_m3_h_nodes_2_to_7");
        for (int i = 0; i < demand.length; i++) {
            water.node("n" + (i + 2)).draw("n" + (i + 2), demand[i] / 3600.0);
        }
        for (int i = 0; i < flow.length; i++) {
            double bore = in.numbers("diameters_in")[i] * INCH_M;
            double exponent = in.number("flow_exponent");
            double resistance = in.number("hazen_williams_constant_SI")
                    * in.number("length_each_m")
                    / Math.pow(in.number("hazen_williams_C"), exponent)
                    / Math.pow(bore, in.number("diameter_exponent"));
            String from = "n" + (int) in.numbers("from")[i];
            water.pipe("p" + i, from, "n" + (int) in.numbers("to")[i], tube(resistance, exponent, flow[i]));
        }
        return water.solveTuned();
    }

    /** A main of one resistance a foot, its first part doubled; the same head before and after. */
    static double loopedMainGainPercent(Inputs in) {
        double before = in.number("flow_before_ft3_s");
        double exponent = in.number("flow_exponent");
        double length = in.number("length_ft");
        double looped = in.number("looped_length_ft");
        double perLength = in.number("head_available_ft") / length / Math.pow(before, exponent);
        double[] flow = {before / 2.0, before / 2.0, before};
        double[] resistance = {perLength * looped, perLength * looped, perLength * (length - looped)};
        for (int round = 0; round < ROUNDS; round++) {
            WaterAnalogue water = new WaterAnalogue(WATER, ANY_VISCOSITY)
                    .node("a")
                    .node("m")
                    .node("b")
                    .reservoir("a", in.number("head_available_ft"))
                    .reservoir("b", 0.0)
                    .pipe("p0", "a", "m", tube(resistance[0], exponent, flow[0]))
                    .pipe("p1", "a", "m", tube(resistance[1], exponent, flow[1]))
                    .pipe("p2", "m", "b", tube(resistance[2], exponent, flow[2]))
                    .solveAsSet();
            for (int i = 0; i < flow.length; i++) {
                flow[i] = water.flowM3PerS(i);
            }
        }
        return 100.0 * (flow[2] / before - 1.0);
    }
}
