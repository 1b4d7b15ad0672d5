package lungfish.sizing;

import lungfish.blower.Discharge;

/**
 * Where the blowers run, on their curves.
 *
 * @param gaugePa at their outlets
 * @param freeM3PerS what they give there
 * @param bledM3PerS what of it the outlets do not take
 * @param watts drawn
 * @param insideCurve whether that rests on the points of the curve
 */
public record Running(
        double gaugePa, double freeM3PerS, double bledM3PerS, double watts, Discharge discharge, boolean insideCurve) {}
