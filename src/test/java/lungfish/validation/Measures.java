package lungfish.validation;

/** Units in which others publish, by definition (NIST SP 811) unless said. */
public final class Measures {
    public static final double INCH_M = 0.0254;
    public static final double FOOT_M = 0.3048;
    public static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
    public static final double POUND_KG = 0.45359237;
    public static final double POUND_FORCE_N = POUND_KG * 9.80665;
    public static final double PSI_PA = POUND_FORCE_N / (INCH_M * INCH_M);

    /** Inch of water, conventional (at 4 °C). */
    public static final double INCH_WATER_PA = 249.08891;

    /** Inch of mercury, conventional (at 0 °C). */
    public static final double INCH_MERCURY_PA = 3386.389;

    /** Universal gas constant, J/(kmol K), CODATA 2018. */
    public static final double UNIVERSAL_J_PER_KMOL_K = 8314.462618;

    private Measures() {}

    /** Absolute temperature of a Fahrenheit one. */
    public static double fahrenheitK(double fahrenheit) {
        return (fahrenheit - 32.0) / 1.8 + 273.15;
    }

    /** m³/s of L/min. */
    public static double litresPerMinuteM3PerS(double litresPerMinute) {
        return litresPerMinute / 60_000.0;
    }
}
