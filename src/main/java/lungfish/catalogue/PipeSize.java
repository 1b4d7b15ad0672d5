package lungfish.catalogue;

/**
 * A size of rigid pipe.
 *
 * @param standard such as "ASTM D1785 Schedule 40"
 * @param boreM average bore
 * @param wallM least wall
 * @param warmestK temperature above which it is not to be used
 * @param deratedAboveK temperature above which it loses strength
 * @param pricePerM typical, in units of money
 */
public record PipeSize(
        String id,
        String name,
        String standard,
        Material material,
        double outsideM,
        double boreM,
        double wallM,
        double roughnessM,
        double deratedAboveK,
        double warmestK,
        double pricePerM,
        String source) {
    /** What it is made of. */
    public enum Material {
        PVC,
        METAL
    }
}
