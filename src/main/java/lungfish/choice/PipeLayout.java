package lungfish.choice;

/**
 * How the main is laid: whether it closes to a loop, and at how many places the blower's air comes onto it.
 *
 * @param feeds 1, or 2 where a second line leads to the side farthest from the first
 */
public record PipeLayout(Main main, int feeds) {
    /** Whether the air can come to a tap from both sides. */
    public enum Main {
        CLOSED,
        OPEN
    }

    boolean isFedTwice() {
        return feeds > 1;
    }
}
