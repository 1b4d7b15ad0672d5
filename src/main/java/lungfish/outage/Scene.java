package lungfish.outage;

import java.util.OptionalDouble;

/**
 * An outage as asked.
 *
 * @param backS when all is well again, s after it failed; absent: when it is mended by the room's habits, or, where the mains
 *     fail, not in the time looked at
 * @param untilS how far is looked, s, above 0
 */
public record Scene(Failing what, OptionalDouble backS, double untilS) {
    private static final double HOUR_S = 3600;

    public Scene {
        if (!(untilS > 0) || backS.orElse(0) < 0) {
            throw new IllegalArgumentException("an outage lasts some time");
        }
    }

    /** The mains fail, and stay away for as long as is looked. */
    public static Scene mains(double hours) {
        return new Scene(new Failing.Mains(), OptionalDouble.empty(), hours * HOUR_S);
    }
}
