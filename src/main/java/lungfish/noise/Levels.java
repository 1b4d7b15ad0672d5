package lungfish.noise;

import java.util.stream.DoubleStream;
import lungfish.catalogue.BlowerClass.Level;

/** Arithmetic of sound levels in dB. Levels of machines that run by themselves add by energy, never by number. */
public final class Levels {
    /** 10 lg 2π: from a level on a half sphere of 1 m to the power inside it, dB. ISO 3744, S = 2πr². */
    private static final double HALF_SPHERE_DB = 10 * Math.log10(2 * Math.PI);

    private Levels() {}

    /**
     * Levels together, {@code 10 lg Σ 10^(L/10)}.
     *
     * @return dB; minus infinity for no levels: silence
     */
    public static double sum(DoubleStream levels) {
        return 10 * Math.log10(levels.map(Levels::energy).sum());
    }

    /** A level less a background that was measured with it, {@code 10 lg(10^(L/10) − 10^(B/10))}, dB; L above B. */
    public static double less(double levelDb, double backgroundDb) {
        return 10 * Math.log10(energy(levelDb) - energy(backgroundDb));
    }

    /** What so many equal ones add to the level of one, {@code 10 lg n}, dB. */
    public static double manyDb(int count) {
        return 10 * Math.log10(count);
    }

    /**
     * Sound power level of a machine that stands on a floor and was heard in the open, {@code Lw = Lp + 20 lg r + 8}
     * (ISO 3744).
     *
     * @return dB(A) above 1 pW
     */
    public static double powerDb(Level heard) {
        return heard.dba() + 20 * Math.log10(heard.distanceM()) + HALF_SPHERE_DB;
    }

    /**
     * What a silencer takes off a machine. It works on the air path only: the sound of the casing stays.
     *
     * @param airPathShare share of the sound power that leaves by the air path, 0 to 1
     * @param insertionLossDb 0 or above
     * @return dB, 0 or above; never more than {@code −10 lg(1 − share)}
     */
    public static double silencedDb(double airPathShare, double insertionLossDb) {
        return -10 * Math.log10(1 - airPathShare + airPathShare * energy(-insertionLossDb));
    }

    private static double energy(double levelDb) {
        return Math.pow(10, levelDb / 10);
    }
}
