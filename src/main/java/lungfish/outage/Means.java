package lungfish.outage;

/**
 * What there is to go on with when the mains fail.
 *
 * @param charge the batteries that carry the blowers
 * @param generatorS how long the generator's fuel lasts; 0 where there is none that carries the blowers
 * @param batteryPumpsS how long the small pumps with batteries of their own run; 0 where there are none
 */
record Means(Charge charge, double generatorS, double batteryPumpsS) {}
