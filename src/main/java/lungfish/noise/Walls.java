package lungfish.noise;

import java.util.List;

/** What walls take off a sound. */
public final class Walls {
    /** ρc of air, kg/(m² s), near 20 °C. */
    private static final double AIR_IMPEDANCE = 415;

    private static final double FIELD_INCIDENCE_DB = 47.3;

    private Walls() {}

    /** A part of a wall: its area, and its reduction in dB. */
    public record Part(double areaM2, double reductionDb) {}

    /** A plate of a wall by its mass and the frequency at which it rings along. */
    public record Plate(double kgPerM2, double coincidenceHz, double lossFactor) {
        /** Glass: coincidence at 12 800 Hz over its thickness in mm; loss factor 0.01, from memory. */
        public static Plate ofGlass(double thicknessM, double kgPerM2) {
            return new Plate(kgPerM2, 12.8 / thicknessM, 0.01);
        }

        /** Plasterboard: coincidence at 38 000 Hz over its thickness in mm; loss factor 0.02, from memory. */
        public static Plate ofPlasterboard(double thicknessM, double kgPerM2) {
            return new Plate(kgPerM2, 38.0 / thicknessM, 0.02);
        }
    }

    /** Reduction of a wall of several parts: {@code −10 lg(Σ S_i 10^(−R_i/10) / Σ S_i)}, dB. A door is the hole in it. */
    public static double togetherDb(List<Part> parts) {
        double area = parts.stream().mapToDouble(Part::areaM2).sum();
        double passed = parts.stream()
                .mapToDouble(part -> part.areaM2() * Math.pow(10, -part.reductionDb() / 10))
                .sum();
        return -10 * Math.log10(passed / area);
    }

    /** Mass law at field incidence, {@code 20 lg(f m) − 47.3}, dB; it holds only well below coincidence. */
    public static double massLawDb(double frequencyHz, double kgPerM2) {
        return 20 * Math.log10(frequencyHz * kgPerM2) - FIELD_INCIDENCE_DB;
    }

    /**
     * Transmission loss of a single plate: the mass law up to half the coincidence frequency, Cremer's law from it on,
     * {@code 20 lg(π f m/ρc) + 10 lg(2 η f/(π f_c))}, never above the mass law; between them a straight line over the
     * logarithm of frequency (Sharp's way; both as in Bies and Hansen, Engineering Noise Control, from memory).
     */
    public static double plateDb(double frequencyHz, Plate plate) {
        double half = plate.coincidenceHz() / 2;
        if (frequencyHz <= half) {
            return massLawDb(frequencyHz, plate.kgPerM2());
        }
        if (frequencyHz >= plate.coincidenceHz()) {
            return Math.min(massLawDb(frequencyHz, plate.kgPerM2()), cremerDb(frequencyHz, plate));
        }
        double share = Math.log(frequencyHz / half) / Math.log(2);
        return (1 - share) * massLawDb(half, plate.kgPerM2()) + share * plateDb(plate.coincidenceHz(), plate);
    }

    private static double cremerDb(double frequencyHz, Plate plate) {
        double normal = 20 * Math.log10(Math.PI * frequencyHz * plate.kgPerM2() / AIR_IMPEDANCE);
        double along = 2 * plate.lossFactor() * frequencyHz / (Math.PI * plate.coincidenceHz());
        return normal + 10 * Math.log10(along);
    }
}
