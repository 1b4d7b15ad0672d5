package lungfish.network;

/**
 * How well an answer meets the laws. Judged from the answer alone, every law evaluated anew.
 *
 * @param massImbalanceOverTotal the largest sum of flows at any node, over the total flow (0 when nothing flows)
 * @param residualPa the largest miss of any pipe's, drop's or source's law, as pressure
 */
public record Quality(double massImbalanceOverTotal, double residualPa) {}
