package lungfish.roomfile;

import java.util.List;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.catalogue.DeviceClass;
import lungfish.json.NumberText;
import lungfish.json.Problems;

/** The keeper's own classes are possible: a curve falls, least comes before typical, a price band has two ends. */
final class OwnClassChecks {
    private final Problems problems;

    OwnClassChecks(Problems problems) {
        this.problems = problems;
    }

    void tell(Spots spots) {
        spots.ownDevices().forEach(this::device);
        spots.ownBlowers().forEach(this::blower);
    }

    private void device(Spot<DeviceClass> spot) {
        DeviceClass device = spot.value();
        notAbove(spot, "least_m3_per_s", device.leastM3PerS(), "typical_m3_per_s", device.typicalM3PerS());
        device.mostM3PerS()
                .ifPresent(most -> notAbove(spot, "typical_m3_per_s", device.typicalM3PerS(), "most_m3_per_s", most));
    }

    private void blower(Spot<BlowerClass> spot) {
        notAbove(
                spot,
                "price_low",
                spot.value().priceLow(),
                "price_high",
                spot.value().priceHigh());
        List<Spot<CurvePoint>> points = spot.inside("curve", BlowerClass::points);
        if (points.size() < 2) {
            problems.add(spot.place().key("curve"), "a curve has " + points.size() + " points", "two or more");
        }
        for (int i = 1; i < points.size(); i++) {
            falls(points.get(i - 1).value(), points.get(i));
        }
    }

    private void falls(CurvePoint before, Spot<CurvePoint> point) {
        if (point.value().gaugePa() <= before.gaugePa()) {
            problems.add(
                    point.place().key("gauge_pa"),
                    NumberText.of(point.value().gaugePa()) + " is no more than at the point before",
                    "points in order of rising pressure, above " + NumberText.of(before.gaugePa()));
        }
        if (point.value().freeM3PerS() > before.freeM3PerS()) {
            problems.add(
                    point.place().key("free_m3_per_s"),
                    NumberText.of(point.value().freeM3PerS()) + " is more than at the lower pressure before",
                    "at most " + NumberText.of(before.freeM3PerS()));
        }
    }

    private void notAbove(Spot<?> spot, String key, double value, String otherKey, double other) {
        if (value > other) {
            problems.add(
                    spot.place().key(key),
                    NumberText.of(value) + " is more than " + otherKey + " (" + NumberText.of(other) + ")",
                    "at most " + NumberText.of(other));
        }
    }
}
