package lungfish.network;

import java.util.OptionalDouble;

/**
 * A source that holds the tuned network's pressure, bled at its own outlet.
 *
 * @param gaugePa the common pressure
 * @param askedM3PerS free air that the network draws here
 * @param givesM3PerS what it gives at that pressure; absent for a fixed pressure, which gives any flow
 * @param headroomM3PerS gives less asked: what is bled, or lacking if negative
 * @param pressureAtAskedFlowPa where its curve gives just what is asked; absent where it never does
 * @param insideCurve whether that rests on the points of its curve
 * @param shut whether the pressure is above all that it reaches
 */
public record TunedSource(
        double gaugePa,
        double askedM3PerS,
        OptionalDouble givesM3PerS,
        OptionalDouble headroomM3PerS,
        OptionalDouble pressureAtAskedFlowPa,
        boolean insideCurve,
        boolean shut) {}
