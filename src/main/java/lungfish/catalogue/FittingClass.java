package lungfish.catalogue;

/**
 * A class of fitting.
 *
 * @param lossFactor K on the pipe's bore, fully open where it is a valve
 * @param valve whether it can be shut
 */
public record FittingClass(String id, String name, double lossFactor, boolean valve, double price, String source) {}
