package lungfish.network;

/**
 * What one source gives.
 *
 * @param gaugePa at its node
 * @param freeM3PerS free air of all its machines together; negative when a fixed pressure takes air back
 * @param insideCurve whether the answer rests on the points of its curve; always for a fixed pressure
 * @param shut whether its check valve stays closed against the pressure; never for a fixed pressure
 */
public record SourceFlow(double gaugePa, double freeM3PerS, boolean insideCurve, boolean shut) {}
