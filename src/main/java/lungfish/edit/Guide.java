package lungfish.edit;

/**
 * A line that explains why something snapped: from one end to the other, m, and what it is.
 *
 * @param words fit for a label: "wall", "rack B's left edge", "grid", "the main"
 */
public record Guide(Reason reason, double fromXM, double fromYM, double toXM, double toYM, String words) {
    /** What draws things to it; of two equally near, the earlier wins. */
    public enum Reason {
        START,
        PIPE,
        WALL,
        RACK,
        LINE,
        GRID
    }
}
