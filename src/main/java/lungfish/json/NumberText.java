package lungfish.json;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;

/**
 * A double as the shortest decimal text that reads back as the same double, in the form of RFC 8785 §3.2.2.3 (that of
 * ECMAScript): plain from 1e-6 up to 1e21, with an exponent outside; no sign on zero. Among the subnormal numbers, near
 * 1e-323, it may take two digits where one would do.
 */
public final class NumberText {
    private static final double PLAIN_FROM = 1e-6;
    private static final double PLAIN_BELOW = 1e21;

    private NumberText() {}

    /**
     * The text of a finite number.
     *
     * @throws IllegalArgumentException for NaN and infinities, which JSON cannot hold
     */
    public static String of(double x) {
        if (!Double.isFinite(x)) {
            throw new IllegalArgumentException("JSON cannot hold " + x);
        }
        if (x == 0) {
            return "0";
        }
        BigDecimal shortest = new BigDecimal(NumberOutput.toString(x, true)).stripTrailingZeros();
        boolean plain = Math.abs(x) >= PLAIN_FROM && Math.abs(x) < PLAIN_BELOW;
        return plain ? shortest.toPlainString() : withExponent(shortest);
    }

    private static String withExponent(BigDecimal x) {
        String digits = x.unscaledValue().abs().toString();
        int exponent = digits.length() - 1 - x.scale();
        String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
        String sign = x.signum() < 0 ? "-" : "";
        return sign + digits.charAt(0) + fraction + (exponent < 0 ? "e" : "e+") + exponent;
    }
}
