package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.measured.OutletLaw.Off;
import lungfish.piping.ValveMaker;
import lungfish.room.Outlet;

/**
 * What the room says of its valves, where nobody set them by the jar: at the opening that is typed, each takes what its class
 * takes there. It ties flow and device together, so that a jar tells of the device.
 */
final class Openings {
    private final Start start;
    private final Unknowns unknowns;

    Openings(Start start, Unknowns unknowns) {
        this.start = start;
        this.unknowns = unknowns;
    }

    List<Row> rows(double[] at) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < start.outlets() && !start.rounds().isSetByJar(); i++) {
            Outlet outlet = start.ground().needs().get(i).seat().outlet();
            OptionalDouble opening = outlet.valve().map(Outlet.Valve::opening).orElse(OptionalDouble.empty());
            if (opening.isPresent() && opening.getAsDouble() > 0) {
                double k = ValveMaker.of(outlet, start.ground().catalogue()).kAt(opening.getAsDouble());
                rows.add(row(i, k, unknowns.off(i, at)));
            }
        }
        return rows;
    }

    private Row row(int i, double k, Off off) {
        OutletLaw law = start.laws().get(i);
        double takes = law.valvePa(k, off);
        double[] slope = new double[unknowns.count()];
        for (Unknowns.Felt felt : unknowns.felt(i)) {
            double step = 1e-3;
            Off more = felt.input().nudged(off, step);
            Off less = felt.input().nudged(off, -step);
            slope[felt.unknown()] += (apart(law, k, more) - apart(law, k, less)) / (2 * step);
        }
        double sd = Doubts.OPENING_SHARE * takes;
        return Row.assumed(apart(law, k, off), slope, sd * sd + Doubts.WOBBLE_PA * Doubts.WOBBLE_PA);
    }

    private static double apart(OutletLaw law, double k, Off off) {
        return law.leftForValvePa(off) - law.valvePa(k, off);
    }
}
