package lungfish.quantity;

import java.util.List;

/**
 * The units of one dimension that a person may type, whatever system is shown.
 *
 * @param kind "an air flow"
 * @param example how to write one in either system
 */
record Family(String kind, String example, List<Unit> units) {
    Family {
        units = List.copyOf(units);
    }

    /** What is expected, as a person is told. */
    String expected() {
        return kind + ", such as " + example;
    }

    static Family of(Dimension dimension) {
        return switch (dimension) {
            case PRESSURE -> pressure();
            case AIR_FLOW -> airFlow();
            case WATER_FLOW -> waterFlow();
            case LENGTH -> length("a length", "2.4 m or 8 ft");
            case DEPTH -> length("a depth or size", "45 cm or 18 in");
            case BORE -> length("a bore or wall", "4 mm or 3/16 in");
            case ALTITUDE -> length("an altitude", "340 m or 1100 ft");
            case TEMPERATURE ->
                family("a temperature", "25 °C or 78 °F", Units.CELSIUS, Units.FAHRENHEIT, Units.KELVIN);
            case TEMPERATURE_RISE ->
                family("a temperature difference", "5 °C or 9 °F", Units.CELSIUS_STEP, Units.FAHRENHEIT_STEP);
            case POWER -> family("a power", "65 W", Units.W, Units.KW, Units.HP);
            case ENERGY -> family("an energy", "1.2 kWh", Units.WH, Units.KWH, Units.J, Units.KJ, Units.MJ);
            case DURATION -> family("a time", "7 h 20 min or 45 s", Units.S, Units.MIN, Units.H, Units.DAY, Units.YEAR);
            case SOUND_LEVEL -> family("a sound level", "46 dB(A)", Units.DBA);
            case VOLUME -> volume();
            case MASS -> family("a mass", "12 g or 1 lb 4 oz", Units.KG, Units.G, Units.MG, Units.LB, Units.OZ);
            case MONEY -> family("an amount of money", "120", Units.ONE);
            case ENERGY_PRICE -> family("a price of energy", "0.25 per kWh", Units.PER_KWH);
            case SHARE -> family("a share", "20 %", Units.PERCENT);
            case COUNT -> family("a whole number", "12", Units.ONE);
            case RATIO -> family("a number", "1.5", Units.ONE);
            case SPEED -> speed();
            case TURNOVER -> family("a turnover", "4 turns/h", Units.TURNS_PER_H);
            case CONCENTRATION -> family("a concentration", "6 mg/L", Units.MG_PER_L, Units.KG_PER_M3);
            case VOLTAGE -> family("a voltage", "230 V", Units.V);
            case CURRENT -> family("a current", "3 A", Units.A, Units.MA);
            case CHARGE -> family("a charge", "100 Ah", Units.AH, Units.MAH);
            case FREQUENCY -> family("a frequency", "60 Hz", Units.HZ);
            case FLOOR_LOAD ->
                family("a floor load", "2 kN/m² or 40 lb/ft²", Units.KN_PER_M2, Units.KG_PER_M2, Units.LB_PER_FT2);
        };
    }

    private static Family family(String kind, String example, Unit... units) {
        return new Family(kind, example, List.of(units));
    }

    private static Family pressure() {
        return family(
                "a pressure",
                "6 kPa or 0.9 psi",
                Units.KPA,
                Units.PA,
                Units.MBAR,
                Units.BAR,
                Units.PSI,
                Units.IN_WATER,
                Units.CM_WATER,
                Units.MM_WATER,
                Units.M_WATER,
                Units.FT_WATER,
                Units.MM_MERCURY,
                Units.IN_MERCURY);
    }

    private static Family airFlow() {
        return family(
                "an air flow",
                "12 L/min or 0.4 cfm",
                Units.L_PER_MIN,
                Units.ML_PER_MIN,
                Units.L_PER_H,
                Units.L_PER_S,
                Units.M3_PER_H,
                Units.M3_PER_MIN,
                Units.M3_PER_S,
                Units.CFM,
                Units.CFH);
    }

    private static Family waterFlow() {
        return family(
                "a water flow",
                "200 L/h or 50 gph",
                Units.L_PER_H,
                Units.L_PER_MIN,
                Units.ML_PER_MIN,
                Units.L_PER_S,
                Units.M3_PER_H,
                Units.M3_PER_S,
                Units.GPH,
                Units.GPM);
    }

    private static Family length(String kind, String example) {
        return family(kind, example, Units.M, Units.CM, Units.MM, Units.KM, Units.FT, Units.IN);
    }

    private static Family volume() {
        return family(
                "a volume",
                "150 L or 40 gal",
                Units.L,
                Units.ML,
                Units.M3,
                Units.GAL,
                Units.BRITISH_GAL,
                Units.QT,
                Units.PT,
                Units.FT3);
    }

    private static Family speed() {
        return family(
                "a speed",
                "8 m/s or 26 ft/s",
                Units.M_PER_S,
                Units.FT_PER_S,
                Units.FT_PER_MIN,
                Units.KM_PER_H,
                Units.MPH);
    }
}
