package lungfish.networkfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.Range;
import lungfish.network.Check;
import lungfish.network.Conditions;
import lungfish.network.Curve;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Pipe;
import lungfish.network.Source;
import lungfish.network.Tubing;

/** Reads pipes, drops and sources. A part that has a problem is told and left out. */
final class PartReader {
    /** Bores that a network of air may have, m. */
    private static final Range BORES = Range.between(0.0005, 1.0);

    private static final int MOST_MACHINES = 1_000_000;

    private final Conditions conditions;
    private final Names nodes;

    PartReader(Conditions conditions, Names nodes) {
        this.conditions = conditions;
        this.nodes = nodes;
    }

    Optional<Pipe> pipe(Fields fields, Names ids) {
        String id = ids.add(fields.required("id"));
        String from = nodes.known(fields, "from");
        String to = nodes.known(fields, "to");
        Optional<Tubing> read = tubing(fields);
        if (id.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        return read.map(bore -> new Pipe(id, from, to, bore.lengthM(), bore.boreM(), bore.roughnessM(), bore.kSum()));
    }

    private static Optional<Tubing> tubing(Fields fields) {
        double length = fields.number("length_m", Range.NOT_NEGATIVE);
        double bore = fields.number("bore_m", BORES);
        double roughness = fields.numberOr("roughness_m", Range.NOT_NEGATIVE, 0.0);
        double kSum = fields.numberOr("k_sum", Range.NOT_NEGATIVE, 0.0);
        if (roughness >= bore / 2.0) {
            fields.problem("roughness_m", "found " + roughness, "less than half the bore");
            return Optional.empty();
        }
        return Parts.made(() -> new Tubing(length, bore, roughness, kSum), length, bore, roughness, kSum);
    }

    Optional<Drop> drop(Fields fields, Names ids) {
        String id = ids.add(fields.required("id"));
        String node = nodes.known(fields, "node");
        double valveK = fields.number("valve_k", Range.NOT_NEGATIVE);
        double open = fields.numberOr("valve_k_open", Range.NOT_NEGATIVE, 0.0);
        Optional<Tubing> airline =
                fields.maybeObject("airline", PartReader::tubing).flatMap(read -> read);
        Optional<Check> check =
                fields.optional("check").filter(at -> !at.isNull()).flatMap(at -> at.object(PartReader::check));
        Optional<Device> device =
                fields.maybeObject("device", PartReader::device).flatMap(read -> read);
        double depth = fields.number("depth_m", Range.NOT_NEGATIVE);
        OptionalDouble target = fields.maybeNumber("target_m3s", Range.NOT_NEGATIVE);
        if (id.isEmpty() || node.isEmpty()) {
            return Optional.empty();
        }
        return Parts.made(
                () -> new Drop(id, node, valveK, open, airline, check, device, depth, target),
                valveK,
                open,
                depth,
                target.orElse(0.0));
    }

    private static Optional<Check> check(Fields fields) {
        double open = fields.numberOr("open_pa", Range.NOT_NEGATIVE, 0.0);
        double slope = fields.numberOr("slope_pa_s_m3", Range.NOT_NEGATIVE, 0.0);
        return Parts.made(() -> new Check(open, slope), open, slope);
    }

    private static Optional<Device> device(Fields fields) {
        double p0 = fields.numberOr("p0_pa", Range.NOT_NEGATIVE, 0.0);
        double a = fields.numberOr("a", Range.NOT_NEGATIVE, 0.0);
        double b = fields.numberOr("b", Range.NOT_NEGATIVE, 0.0);
        return Parts.made(() -> new Device(p0, a, b), p0, a, b);
    }

    Optional<Source> source(Fields fields, Names ids) {
        String id = ids.add(fields.required("id"));
        String node = nodes.known(fields, "node");
        return fields.oneOf(
                "type",
                Map.of("fixed", each -> fixed(each, id, node), "blower", each -> blower(each, id, node)),
                Optional.empty());
    }

    private Optional<Source> fixed(Fields fields, String id, String node) {
        double gauge = fields.number("gauge_pa", Range.above(-conditions.ambientPa()));
        boolean named = !id.isEmpty() && !node.isEmpty();
        return named ? Parts.made(() -> new Source.FixedPressure(id, node, gauge), gauge) : Optional.empty();
    }

    private Optional<Source> blower(Fields fields, String id, String node) {
        Optional<Curve> curve = curve(fields.required("curve"));
        int count =
                fields.optional("count").map(at -> at.whole(1, MOST_MACHINES)).orElse(1);
        boolean named = !id.isEmpty() && !node.isEmpty() && count > 0;
        return named ? curve.map(read -> new Source.Blower(id, node, read, count)) : Optional.empty();
    }

    private static Optional<Curve> curve(At at) {
        List<Optional<Curve.Point>> read = at.list(PartReader::point);
        List<Curve.Point> points = Parts.present(read);
        if (points.size() < read.size() || !at.isThere()) {
            return Optional.empty();
        }
        if (points.size() < 2) {
            at.problem("found a curve of " + points.size(), "two points or more");
            return Optional.empty();
        }
        for (int i = 1; i < points.size(); i++) {
            if (!follows(points.get(i - 1), points.get(i))) {
                at.problem("point " + i + " does not follow the one before it", "pressure rising and flow not rising");
                return Optional.empty();
            }
        }
        return Optional.of(Curve.of(points));
    }

    private static boolean follows(Curve.Point before, Curve.Point after) {
        return after.gaugePa() > before.gaugePa() && after.freeM3PerS() <= before.freeM3PerS();
    }

    private static Optional<Curve.Point> point(At at) {
        List<At> pair = at.list(each -> each);
        if (pair.size() != 2) {
            at.problem("found a list of " + pair.size(), "a pair [gauge_pa, free_m3s]");
            return Optional.empty();
        }
        double gauge = pair.get(0).number(Range.ANY);
        double flow = pair.get(1).number(Range.NOT_NEGATIVE);
        return Parts.made(() -> new Curve.Point(gauge, flow), gauge, flow);
    }
}
