package lungfish.catalogue;

/**
 * A class of check valve on an airline.
 *
 * @param openPa pressure at which it opens
 * @param slopePaSPerM3 further loss for each unit of flow
 */
public record CheckValveClass(
        String id, String name, double openPa, double slopePaSPerM3, double price, String source) {}
