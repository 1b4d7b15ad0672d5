package lungfish.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A class of blower or pump, new. Named by its flow at rated pressure; the open flow is the curve's first point.
 *
 * @param ratedM3PerS flow at the rated pressure
 * @param points its curve, pressure rising
 * @param continuousPa largest continuous pressure
 * @param level sound pressure at a stated distance; absent where a data sheet does not say
 * @param portM bore of its outlet
 * @param rebuildS running time between rebuilds (diaphragms, valves, vanes, bearings)
 * @param lifeS running time until it is replaced
 * @param tiredShare share of its flow left when it is due for a rebuild
 * @param leastShare share of its open flow that must always pass; 0 where it may be throttled
 * @param efficiency wire to air at the rated point
 * @param surgeFactor starting power over running power
 */
public record BlowerClass(
        String id,
        String name,
        Kind kind,
        double ratedM3PerS,
        double ratedPa,
        List<CurvePoint> points,
        double continuousPa,
        Optional<Level> level,
        double portM,
        double priceLow,
        double priceHigh,
        double rebuildPrice,
        double rebuildS,
        double lifeS,
        double tiredShare,
        double leastShare,
        double efficiency,
        double surgeFactor,
        OptionalDouble voltageV,
        OptionalDouble frequencyHz,
        String source) {
    /** The kinds of machine. */
    public enum Kind {
        SMALL_DIAPHRAGM(true),
        SMALL_PISTON(true),
        LINEAR_DIAPHRAGM(false),
        LINEAR_PISTON(false),
        SIDE_CHANNEL(false),
        ROTARY_VANE(false);

        private final boolean pump;

        Kind(boolean pump) {
            this.pump = pump;
        }

        /** Whether it is a small pump, made for a few outlets, and no candidate for a whole room. */
        public boolean isPump() {
            return pump;
        }
    }

    /**
     * One point of the curve.
     *
     * @param watts drawn there
     */
    public record CurvePoint(double gaugePa, double freeM3PerS, double watts) {}

    /** A sound pressure level, and where it was heard. */
    public record Level(double dba, double distanceM) {}

    public BlowerClass {
        points = List.copyOf(points);
    }

    public double openM3PerS() {
        return points.get(0).freeM3PerS();
    }

    /**
     * The same class, giving another share of its air at each pressure.
     *
     * @param share of what its data sheet says
     * @param tired share of that left when it is due for a rebuild
     */
    public BlowerClass giving(double share, double tired) {
        List<CurvePoint> given = points.stream()
                .map(point -> new CurvePoint(point.gaugePa(), share * point.freeM3PerS(), point.watts()))
                .toList();
        return with(given, share * ratedM3PerS, ratedPa, tired);
    }

    /** The same class, making another share of its pressure at each flow; what it bears stays. */
    public BlowerClass pressing(double share) {
        List<CurvePoint> pressed = points.stream()
                .map(point -> new CurvePoint(share * point.gaugePa(), point.freeM3PerS(), point.watts()))
                .toList();
        return with(pressed, ratedM3PerS, share * ratedPa, tiredShare);
    }

    /**
     * The same machine as it was measured: another class, with its points.
     *
     * @param tired share of its flow left when it is due for a rebuild, above 0
     */
    public BlowerClass measured(String newId, String newName, List<CurvePoint> curve, double tired) {
        double share = curve.get(0).freeM3PerS() / openM3PerS();
        BlowerClass given = with(curve, share * ratedM3PerS, ratedPa, tired);
        return given.called(newId, newName, "measured in the room");
    }

    private BlowerClass with(List<CurvePoint> curve, double newRatedM3PerS, double newRatedPa, double tired) {
        return new BlowerClass(
                id,
                name,
                kind,
                newRatedM3PerS,
                newRatedPa,
                curve,
                continuousPa,
                level,
                portM,
                priceLow,
                priceHigh,
                rebuildPrice,
                rebuildS,
                lifeS,
                tired,
                leastShare,
                efficiency,
                surgeFactor,
                voltageV,
                frequencyHz,
                source);
    }

    private BlowerClass called(String newId, String newName, String newSource) {
        return new BlowerClass(
                newId,
                newName,
                kind,
                ratedM3PerS,
                ratedPa,
                points,
                continuousPa,
                level,
                portM,
                priceLow,
                priceHigh,
                rebuildPrice,
                rebuildS,
                lifeS,
                tiredShare,
                leastShare,
                efficiency,
                surgeFactor,
                voltageV,
                frequencyHz,
                newSource);
    }

    /** Middle of the price band. */
    public double price() {
        return (priceLow + priceHigh) / 2;
    }

    /** Whether it costs nothing: a machine that the keeper has already. There is one of it. */
    public boolean isAtHand() {
        return priceHigh == 0;
    }
}
