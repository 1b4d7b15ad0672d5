package lungfish.commissioning;

import java.util.Optional;

/**
 * What is read at a step; absent: it is not read.
 *
 * @param gauge at the blower, Pa gauge
 * @param tap at the tap of the step's outlet, where a gauge is held there, Pa gauge
 * @param jar in which the outlet's air fills the keeper's jar, s
 * @param watts of all machines
 */
public record Reads(
        Optional<Expected> gauge, Optional<Expected> tap, Optional<Expected> jar, Optional<Expected> watts) {
    static final Reads NOTHING = new Reads(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    static Reads gauge(Expected gauge) {
        return NOTHING.withGauge(gauge);
    }

    Reads withGauge(Expected that) {
        return new Reads(Optional.of(that), tap, jar, watts);
    }

    Reads withTap(Expected that) {
        return new Reads(gauge, Optional.of(that), jar, watts);
    }

    Reads withJar(Expected that) {
        return new Reads(gauge, tap, Optional.of(that), watts);
    }

    Reads withWatts(Expected that) {
        return new Reads(gauge, tap, jar, Optional.of(that));
    }
}
