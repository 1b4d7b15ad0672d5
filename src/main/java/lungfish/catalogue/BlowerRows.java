package lungfish.catalogue;

import static lungfish.catalogue.Practical.DBA;
import static lungfish.catalogue.Practical.HZ;
import static lungfish.catalogue.Practical.KPA;
import static lungfish.catalogue.Practical.L_MIN;
import static lungfish.catalogue.Practical.M;
import static lungfish.catalogue.Practical.MM;
import static lungfish.catalogue.Practical.PERCENT;
import static lungfish.catalogue.Practical.V;
import static lungfish.catalogue.Practical.W;
import static lungfish.catalogue.Practical.YEARS;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lungfish.catalogue.BlowerClass.CurvePoint;

/** Makes blowers of their rows and the rows of their curves. */
final class BlowerRows {
    private BlowerRows() {}

    static List<BlowerClass> blowers(List<Row> machines, List<Row> points) {
        Map<String, List<CurvePoint>> curves = curves(points);
        Set<String> left = new HashSet<>(curves.keySet());
        List<BlowerClass> blowers = new ArrayList<>();
        for (Row row : machines) {
            left.remove(row.text("id"));
            blowers.add(blower(row, curves.getOrDefault(row.text("id"), List.of())));
        }
        for (Row point : points) {
            if (left.contains(point.text("id"))) {
                throw point.bad("id", "holds '" + point.text("id") + "', which is no blower");
            }
        }
        return blowers;
    }

    private static Map<String, List<CurvePoint>> curves(List<Row> points) {
        Map<String, List<CurvePoint>> curves = new LinkedHashMap<>();
        for (Row row : points) {
            List<CurvePoint> curve = curves.computeIfAbsent(row.text("id"), id -> new ArrayList<>());
            CurvePoint point = new CurvePoint(
                    row.atLeastZero("gauge", KPA), row.atLeastZero("free", L_MIN), row.aboveZero("drawn", W));
            if (!curve.isEmpty() && !follows(point, curve.get(curve.size() - 1))) {
                throw row.bad("gauge_kpa", "does not rise, or its flow rises with it");
            }
            curve.add(point);
        }
        return curves;
    }

    private static boolean follows(CurvePoint point, CurvePoint before) {
        return point.gaugePa() > before.gaugePa() && point.freeM3PerS() <= before.freeM3PerS();
    }

    private static BlowerClass blower(Row row, List<CurvePoint> curve) {
        if (curve.size() < 2) {
            throw row.bad("id", "holds '" + row.text("id") + "', which has no curve");
        }
        return new BlowerClass(
                row.text("id"),
                row.text("name"),
                row.one("kind", BlowerClass.Kind.class),
                row.aboveZero("rated", L_MIN),
                row.aboveZero("rated", KPA),
                curve,
                row.aboveZero("continuous", KPA),
                Optional.of(new BlowerClass.Level(row.si("level", DBA), row.aboveZero("level_distance", M))),
                row.aboveZero("port", MM),
                row.number("price_low"),
                row.number("price_high"),
                row.number("rebuild_price"),
                row.aboveZero("rebuild", YEARS),
                row.aboveZero("life", YEARS),
                row.aboveZero("tired", PERCENT),
                row.atLeastZero("least", PERCENT),
                row.aboveZero("efficiency", PERCENT),
                row.number("surge_factor"),
                row.ifGiven("voltage", V),
                row.ifGiven("frequency", HZ),
                row.text("source"));
    }
}
