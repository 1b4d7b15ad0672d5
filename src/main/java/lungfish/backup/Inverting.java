package lungfish.backup;

import java.util.OptionalDouble;
import lungfish.catalogue.AssumedValue;
import lungfish.reason.Given;

/**
 * What stands between battery and blower. Its efficiency falls off at light loads by what it draws for itself.
 *
 * @param efficiency at about half of its rating and above, without its own draw; where it was measured with it, that draw
 *     counts twice: the cautious side
 * @param idleW its own draw, whatever the load
 */
record Inverting(Given efficiency, Given idleW) {
    /** Its own draw as a share of its rating: 5 to 15 W for each 1000 W, from memory, no source. */
    private static final double IDLE_SHARE = 0.01;

    /** What one of unknown draw is taken to draw: the usual figure, or more where a large rating is known. */
    static AssumedValue idle(AssumedValue usual, OptionalDouble ratedW) {
        double watts = Math.max(usual.si(), IDLE_SHARE * ratedW.orElse(0));
        return new AssumedValue(usual.key(), usual.what(), watts, usual.dimension(), usual.source());
    }

    /** What the battery gives for a load: {@code P/η + P_idle}. */
    double batteryW(double loadW) {
        return loadW / efficiency.si() + idleW.si();
    }
}
