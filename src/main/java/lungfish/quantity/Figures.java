package lungfish.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How many figures a number shows: three at most, rounded half up, with a decimal point in every locale.
 *
 * <p>A <em>live</em> figure is computed and moves while one draws: it keeps its last zeros, so that 12.0 does not jump
 * to 12 and back, and a small one shows more places so that it does not vanish. A <em>typed</em> figure stands still:
 * 45 cm stays 45 cm.
 */
record Figures(int mostDecimals, boolean isLive) {
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
    private static final int MORE_DECIMALS_WHEN_SMALL = 2;

    static Figures live(int mostDecimals) {
        return new Figures(mostDecimals, true);
    }

    static Figures typed(int mostDecimals) {
        return new Figures(mostDecimals, false);
    }

    String show(double number) {
        BigDecimal exact = BigDecimal.valueOf(number);
        if (exact.signum() == 0) {
            return "0";
        }
        // Rounding may step up in size (0.0095 to 0.010): the places are counted again on what is shown.
        BigDecimal once = exact.setScale(decimals(exact), RoundingMode.HALF_UP);
        if (once.signum() == 0) {
            return "0";
        }
        BigDecimal rounded = exact.setScale(decimals(once), RoundingMode.HALF_UP);
        String digits = rounded.toPlainString();
        return isLive ? digits : withoutLastZeros(digits);
    }

    private int decimals(BigDecimal exact) {
        BigDecimal rounded = exact.round(THREE);
        int leading = rounded.precision() - rounded.scale() - 1;
        int small = isLive ? Math.min(Math.max(-1 - leading, 0), MORE_DECIMALS_WHEN_SMALL) : 0;
        return Math.min(mostDecimals + small, 2 - leading);
    }

    private static String withoutLastZeros(String digits) {
        return digits.contains(".") ? digits.replaceAll("0+$", "").replaceAll("\\.$", "") : digits;
    }
}
