package lungfish.quantity;

import java.util.List;

/**
 * The units that are understood, each with its SI value.
 *
 * <p>Factors are built from the exact definitions in NIST SP 811 (2008), appendix B: inch 0.0254 m, pound 0.453 592 37
 * kg, standard gravity 9.806 65 m/s², US gallon 231 in³, British gallon 4.546 09 L, conventional water 1000 kg/m³,
 * conventional mercury 13 595.1 kg/m³ (B.8). Standard and "normal" flows (scfm, slpm) are read as free air: their
 * reference states differ by a few per cent, less than any blower keeps to.
 */
final class Units {
    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 12 * INCH_M;
    private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
    private static final double POUND_KG = 0.453_592_37;
    private static final double GRAVITY_M_PER_S2 = 9.806_65;
    private static final double GALLON_M3 = 231 * INCH_M * INCH_M * INCH_M;
    private static final double BRITISH_GALLON_M3 = 4.546_09e-3;
    private static final double WATER_PA_PER_M = 1000 * GRAVITY_M_PER_S2;
    private static final double MERCURY_PA_PER_M = 13_595.1 * GRAVITY_M_PER_S2;
    private static final double LITRE_M3 = 1e-3;
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final double DAY_S = 24 * HOUR_S;
    private static final double FAHRENHEIT_K = 5.0 / 9.0;

    // Pressure
    static final Unit KPA = Unit.of("kPa", 1000);
    static final Unit PA = Unit.of("Pa", 1);
    static final Unit MBAR = Unit.of("mbar", 100, "hpa", "millibar");
    static final Unit BAR = Unit.of("bar", 100_000);
    static final Unit PSI =
            Unit.of("psi", POUND_KG * GRAVITY_M_PER_S2 / (INCH_M * INCH_M), "psig", "lb/in2", "lbf/in2");
    static final Unit IN_WATER =
            Unit.of("inH2O", INCH_M * WATER_PA_PER_M, "inchh2o", "inchesh2o", "inwc", "inwg", "\"h2o", "\"wc", "\"wg");
    static final Unit CM_WATER = Unit.of("cmH2O", 0.01 * WATER_PA_PER_M, "cmwc", "cmwg");
    static final Unit MM_WATER = Unit.of("mmH2O", 0.001 * WATER_PA_PER_M, "mmwc", "mmwg", "mmaq");
    static final Unit M_WATER = Unit.of("mH2O", WATER_PA_PER_M, "mwc", "mwg");
    static final Unit FT_WATER = Unit.of("ftH2O", FOOT_M * WATER_PA_PER_M, "ftwc", "ftwg");
    static final Unit MM_MERCURY = Unit.of("mmHg", 0.001 * MERCURY_PA_PER_M);
    static final Unit IN_MERCURY = Unit.of("inHg", INCH_M * MERCURY_PA_PER_M, "\"hg");

    // Flow, of air and of water
    static final Unit L_PER_MIN =
            Unit.of("L/min", LITRE_M3 / MINUTE_S, "lpm", "l/m", "slpm", "nl/min", "sl/min", "litres/min", "liters/min");
    static final Unit ML_PER_MIN = Unit.of("mL/min", 1e-3 * LITRE_M3 / MINUTE_S, "cc/min", "ccm", "sccm");
    static final Unit L_PER_H = Unit.of("L/h", LITRE_M3 / HOUR_S, "lph", "l/hr", "l/hour", "litres/h", "liters/h");
    static final Unit L_PER_S = Unit.of("L/s", LITRE_M3, "lps");
    static final Unit M3_PER_H = Unit.of("m³/h", 1 / HOUR_S, "m3/hr", "cmh", "nm3/h");
    static final Unit M3_PER_MIN = Unit.of("m³/min", 1 / MINUTE_S);
    static final Unit M3_PER_S = Unit.of("m³/s", 1);
    static final Unit CFM = Unit.of("cfm", CUBIC_FOOT_M3 / MINUTE_S, "scfm", "ft3/min", "cuft/min");
    static final Unit CFH = Unit.of("cfh", CUBIC_FOOT_M3 / HOUR_S, "scfh", "ft3/h", "ft3/hr", "cuft/h");
    static final Unit GPH = Unit.of("gph", GALLON_M3 / HOUR_S, "gal/h", "gal/hr", "gallons/h", "gallons/hour");
    static final Unit GPM = Unit.of("gpm", GALLON_M3 / MINUTE_S, "gal/min", "gallons/min");

    // Length
    static final Unit M = Unit.of("m", 1, "meter", "meters", "metre", "metres");
    static final Unit CM = Unit.of("cm", 0.01);
    static final Unit MM = Unit.of("mm", 0.001);
    static final Unit KM = Unit.of("km", 1000);
    static final Unit FT = Unit.of("ft", FOOT_M, "'", "foot", "feet");
    static final Unit IN = Unit.of("in", INCH_M, "\"", "''", "inch", "inches");

    // Temperature, and differences of it
    static final Unit CELSIUS = Unit.scale("°C", 1, 273.15, "c", "degc", "celsius");
    static final Unit FAHRENHEIT = Unit.scale("°F", FAHRENHEIT_K, 459.67 * FAHRENHEIT_K, "f", "degf", "fahrenheit");
    static final Unit KELVIN = Unit.of("K", 1, "kelvin");
    static final Unit CELSIUS_STEP = Unit.of("°C", 1, "c", "degc", "k", "kelvin");
    static final Unit FAHRENHEIT_STEP = Unit.of("°F", FAHRENHEIT_K, "f", "degf");

    // Power, energy, electricity
    static final Unit W = Unit.of("W", 1, "watt", "watts");
    static final Unit KW = Unit.of("kW", 1000);
    static final Unit HP = Unit.of("hp", 550 * FOOT_M * POUND_KG * GRAVITY_M_PER_S2, "horsepower");
    static final Unit WH = Unit.of("Wh", HOUR_S);
    static final Unit KWH = Unit.of("kWh", 1000 * HOUR_S);
    static final Unit MJ = Unit.of("MJ", 1e6);
    static final Unit KJ = Unit.of("kJ", 1000);
    static final Unit J = Unit.of("J", 1);
    static final Unit V = Unit.of("V", 1, "volt", "volts", "vac", "vdc");
    static final Unit A = Unit.of("A", 1, "amp", "amps", "ampere", "amperes");
    static final Unit MA = Unit.of("mA", 1e-3);
    static final Unit AH = Unit.of("Ah", HOUR_S, "amphours");
    static final Unit MAH = Unit.of("mAh", 1e-3 * HOUR_S);
    static final Unit HZ = Unit.of("Hz", 1, "hertz");

    // Time
    static final Unit S = Unit.of("s", 1, "sec", "secs", "second", "seconds");
    static final Unit MIN = Unit.of("min", MINUTE_S, "m", "mins", "minute", "minutes");
    static final Unit H = Unit.of("h", HOUR_S, "hr", "hrs", "hour", "hours");
    static final Unit DAY = Unit.of("days", DAY_S, "d", "day");
    static final Unit YEAR = Unit.of("years", 365 * DAY_S, "a", "y", "yr", "yrs", "year");

    // The rest
    static final Unit DBA = Unit.of("dB(A)", 1, "dba", "db");
    static final Unit L = Unit.of("L", LITRE_M3, "litre", "litres", "liter", "liters");
    static final Unit ML = Unit.of("mL", 1e-3 * LITRE_M3, "cc");
    static final Unit M3 = Unit.of("m³", 1);
    static final Unit GAL = Unit.of("gal", GALLON_M3, "usgal", "gallon", "gallons", "gals");
    static final Unit BRITISH_GAL = Unit.of("imp gal", BRITISH_GALLON_M3, "ukgal", "imperialgallons");
    static final Unit QT = Unit.of("qt", GALLON_M3 / 4, "quart", "quarts");
    static final Unit PT = Unit.of("pt", GALLON_M3 / 8, "pint", "pints");
    static final Unit FT3 = Unit.of("ft³", CUBIC_FOOT_M3, "cuft");
    static final Unit KG = Unit.of("kg", 1);
    static final Unit G = Unit.of("g", 1e-3, "gram", "grams");
    static final Unit MG = Unit.of("mg", 1e-6);
    static final Unit LB = Unit.of("lb", POUND_KG, "lbs", "pound", "pounds");
    static final Unit OZ = Unit.of("oz", POUND_KG / 16, "ounce", "ounces");
    static final Unit PER_KWH = Unit.of("per kWh", 1 / (1000 * HOUR_S), "/kwh", "akwh");
    static final Unit PERCENT = Unit.of("%", 0.01, "percent", "pct");
    static final Unit M_PER_S = Unit.of("m/s", 1);
    static final Unit FT_PER_S = Unit.of("ft/s", FOOT_M, "fps");
    static final Unit FT_PER_MIN = Unit.of("ft/min", FOOT_M / MINUTE_S, "fpm");
    static final Unit KM_PER_H = Unit.of("km/h", 1 / 3.6);
    static final Unit MPH = Unit.of("mph", 5280 * FOOT_M / HOUR_S);
    static final Unit TURNS_PER_H = Unit.of("turns/h", 1 / HOUR_S, "/h", "/hr", "x/h", "timesanhour", "perhour");
    static final Unit MG_PER_L = Unit.of("mg/L", 1e-3, "ppm", "g/m3");
    static final Unit KG_PER_M3 = Unit.of("kg/m³", 1);
    static final Unit KN_PER_M2 = Unit.of("kN/m²", 1000, "kpa");
    static final Unit KG_PER_M2 = Unit.of("kg/m²", GRAVITY_M_PER_S2);
    static final Unit LB_PER_FT2 = Unit.of("lb/ft²", POUND_KG * GRAVITY_M_PER_S2 / (FOOT_M * FOOT_M), "psf", "lbf/ft2");
    static final Unit ONE = new Unit("", 1, 0, List.of());

    private Units() {}
}
