package lungfish.catalogue;

/**
 * Something small that is bought to build the pipe and has no other class.
 *
 * @param spares whether it breaks or gets lost, so that some are bought beyond what is counted
 */
public record SupplyClass(String id, String name, Per per, double price, boolean spares, String source) {
    /** What its price is of. */
    public enum Per {
        PIECE,
        METRE
    }
}
