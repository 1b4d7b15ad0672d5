package lungfish.quantity;

import static lungfish.quantity.Figures.live;
import static lungfish.quantity.Figures.typed;

import java.util.Optional;
import lungfish.quantity.Face.Steps;

/** Which units each dimension is shown in, and with how many figures. */
final class Faces {
    /** Smaller things are told in pints: the jar that one times. */
    private static final double HALF_A_GALLON_M3 = Units.GAL.toSi(0.5);

    private Faces() {}

    static Face of(Dimension dimension, DisplayUnits units) {
        return switch (units) {
            case METRIC -> metric(dimension);
            case US -> us(dimension);
        };
    }

    /**
     * The unit that a number typed without one is in; none where the same thing is shown in several units of which
     * none is plainly meant.
     */
    static Optional<Unit> unspoken(Dimension dimension, DisplayUnits units) {
        boolean isUs = units == DisplayUnits.US;
        return switch (dimension) {
            case DURATION, MASS, ENERGY -> Optional.empty();
            case LENGTH -> isUs ? Optional.empty() : Optional.of(Units.M);
            case DEPTH -> Optional.of(isUs ? Units.IN : Units.CM);
            case POWER -> Optional.of(Units.W); // what hangs on a plug is told in watts, whatever is shown of a hall
            case MONEY, COUNT -> Optional.of(Units.ONE);
            default -> main(of(dimension, units));
        };
    }

    private static Optional<Unit> main(Face face) {
        return face instanceof Steps steps
                ? Optional.of(steps.steps().get(steps.steps().size() - 1).unit())
                : Optional.empty();
    }

    private static Face us(Dimension dimension) {
        return switch (dimension) {
            case PRESSURE -> Steps.of(Units.PSI, live(3));
            case WATER_FLOW -> Steps.of(Units.GPH, live(1));
            case LENGTH -> Measures::feetAndInches;
            case DEPTH -> Measures::inches;
            case BORE -> Steps.of(Units.IN, typed(3));
            case ALTITUDE -> Steps.of(Units.FT, typed(0));
            case TEMPERATURE -> Steps.of(Units.FAHRENHEIT, typed(0));
            case TEMPERATURE_RISE -> Steps.of(Units.FAHRENHEIT_STEP, typed(1));
            case VOLUME -> Steps.of(Units.PT, typed(2), HALF_A_GALLON_M3, Units.GAL, typed(2));
            case MASS -> Steps.of(Units.OZ, typed(2), Units.LB.siPerUnit(), Units.LB, typed(1));
            case SPEED -> Steps.of(Units.FT_PER_S, live(1));
            case FLOOR_LOAD -> Steps.of(Units.LB_PER_FT2, live(1));
            default -> metric(dimension);
        };
    }

    private static Face metric(Dimension dimension) {
        return switch (dimension) {
            case PRESSURE -> Steps.of(Units.PA, live(1), 100, Units.KPA, live(2));
            case AIR_FLOW -> Steps.of(Units.L_PER_MIN, live(2));
            case WATER_FLOW -> Steps.of(Units.L_PER_H, live(1));
            case LENGTH -> Steps.of(Units.M, typed(2));
            case DEPTH -> Steps.of(Units.CM, typed(1));
            case BORE -> Steps.of(Units.MM, typed(2));
            case ALTITUDE -> Steps.of(Units.M, typed(0));
            case TEMPERATURE -> Steps.of(Units.CELSIUS, typed(1));
            case TEMPERATURE_RISE -> Steps.of(Units.CELSIUS_STEP, typed(1));
            case POWER -> Steps.of(Units.W, live(1), 1000, Units.KW, live(2));
            case ENERGY -> Steps.of(Units.WH, live(2), Units.KWH.siPerUnit(), Units.KWH, live(2));
            case DURATION -> Measures::time;
            case SOUND_LEVEL -> Steps.of(Units.DBA, live(0));
            case VOLUME -> Steps.of(Units.L, typed(2));
            case MASS -> Steps.of(Units.G, typed(2), 1, Units.KG, typed(2));
            case MONEY -> Faces::money;
            case ENERGY_PRICE -> Steps.of(Units.PER_KWH, typed(4));
            case RATIO -> Steps.of(Units.ONE, live(2));
            case SHARE -> Steps.of(Units.PERCENT, typed(1), 0.0995, Units.PERCENT, live(0));
            case COUNT -> si -> Long.toString(Math.round(si));
            case SPEED -> Steps.of(Units.M_PER_S, live(1));
            case TURNOVER -> Steps.of(Units.TURNS_PER_H, live(1));
            case CONCENTRATION -> Steps.of(Units.MG_PER_L, live(1));
            case VOLTAGE -> Steps.of(Units.V, typed(1));
            case CURRENT -> Steps.of(Units.A, typed(2));
            case CHARGE -> Steps.of(Units.AH, typed(1));
            case FREQUENCY -> Steps.of(Units.HZ, typed(1));
            case FLOOR_LOAD -> Steps.of(Units.KN_PER_M2, live(2));
        };
    }

    /** Whole amounts from a hundred on, and never rounded further: a price is read as a price. */
    private static String money(double amount) {
        return Math.abs(amount) < 99.5 ? live(2).show(amount) : Long.toString(Math.round(amount));
    }
}
