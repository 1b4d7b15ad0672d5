package lungfish.plan;

/**
 * How well the network was solved.
 *
 * @param massImbalance the largest sum of flows at any node over the total flow
 * @param residualPa the largest miss of any law
 * @param iterations Newton steps of the trial as filed
 */
public record Solution(double massImbalance, double residualPa, int iterations) {}
