package lungfish.measured;

import java.util.Optional;
import lungfish.room.OutletId;

/**
 * What is to blame, whatever its size.
 *
 * @param outlet of a clog; empty for the rest
 */
public record Culprit(Kind kind, Optional<OutletId> outlet) {
    /** Nothing is. */
    public static final Culprit NOTHING = new Culprit(Kind.NOTHING, Optional.empty());

    static final Culprit BLOWER = new Culprit(Kind.BLOWER, Optional.empty());
    static final Culprit LEAK = new Culprit(Kind.LEAK, Optional.empty());

    /** The kinds of culprit. */
    public enum Kind {
        NOTHING,
        BLOWER,
        LEAK,
        CLOG
    }

    static Culprit clog(OutletId outlet) {
        return new Culprit(Kind.CLOG, Optional.of(outlet));
    }
}
