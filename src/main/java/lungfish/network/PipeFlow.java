package lungfish.network;

import java.util.OptionalDouble;

/**
 * What happens in one pipe.
 *
 * @param freeM3PerS free air from its first end to its second; negative the other way
 * @param re Reynolds number, 0 or more
 * @param darcy Darcy friction factor; absent when the air stands still
 * @param regime of the flow
 * @param dropPa pressure at the first end less that at the second
 */
public record PipeFlow(double freeM3PerS, double re, OptionalDouble darcy, Regime regime, double dropPa) {}
