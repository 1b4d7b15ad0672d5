package lungfish.blower;

/** The state of a machine: as delivered, or due for its rebuild. Headline answers take the second. */
public enum Wear {
    NEW,
    TIRED
}
