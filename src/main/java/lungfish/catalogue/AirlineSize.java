package lungfish.catalogue;

/** A size of flexible tubing. */
public record AirlineSize(
        String id, String name, double boreM, double outsideM, double roughnessM, double pricePerM, String source) {}
