package lungfish.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.air.Atmosphere;
import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;

/** How this package computes published operating points: where the curve of a fan crosses what its duct asks for. */
public final class FanChecks {
    private static final double CFM = 0.0004719474432; // 0.3048³ / 60
    private static final double INCH_OF_WATER_PA = 249.08891; // conventional, at 4 °C
    private static final String FAN = "fan";
    private static final String OPEN = "open";

    private FanChecks() {}

    /** A fan on a duct. */
    public static CheckGroup operatingPoint() {
        return CheckGroup.of(
                        "Operating point",
                        "A fan blows through a duct with fittings into the open. The falling part of its published curve is a"
                                + " machine's, the duct a pipe, and the network is solved as set.",
                        "operating-point.json")
                .by("fan-flow", in -> solved(in).freeM3PerS() / CFM)
                .by("fan-pressure", in -> solved(in).gaugePa() / INCH_OF_WATER_PA);
    }

    private static SourceFlow solved(Inputs in) {
        double kelvin = in.number("temperature_K");
        Conditions conditions = new Conditions(
                Atmosphere.SEA_LEVEL_PA, kelvin, kelvin, Conditions.WATER_AT_20_C_KG_PER_M3, 9.80665, false, 0.05);
        Pipe duct = new Pipe(
                "duct",
                FAN,
                OPEN,
                in.number("length_m"),
                in.number("diameter_m"),
                in.number("roughness_m"),
                in.number("loss_factors") + in.number("kinetic_energy_factor_at_the_end"));
        Network network = new Network(
                conditions,
                List.of(FAN, OPEN),
                List.of(duct),
                List.of(),
                List.of(new Source.Blower("machine", FAN, curve(in), 1), new Source.FixedPressure("air", OPEN, 0)),
                Optional.empty());
        return Solver.of(network)
                .asSet()
                .match(
                        asSet -> asSet.source(0),
                        tuned -> {
                            throw new AssertionError("solved as set");
                        },
                        refused -> {
                            throw new AssertionError(refused.reason());
                        });
    }

    private static Curve curve(Inputs in) {
        double[] inches = in.numbers("curve_inches_of_water");
        double[] cfm = in.numbers("curve_cfm");
        List<Curve.Point> points = new ArrayList<>();
        for (int i = 0; i < inches.length; i++) {
            points.add(new Curve.Point(inches[i] * INCH_OF_WATER_PA, cfm[i] * CFM));
        }
        return Curve.of(points);
    }
}
