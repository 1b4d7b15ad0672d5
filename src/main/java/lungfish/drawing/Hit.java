package lungfish.drawing;

import lungfish.reason.PartId;

/**
 * What is under the pointer.
 *
 * @param part for a tap the outlet or gang that it feeds; for the listener the room
 */
public record Hit(Kind kind, PartId part, double xM, double yM) {
    /** The kinds of thing that a drawing knows, those above first. */
    public enum Kind {
        OUTLET,
        TAP,
        GANG,
        BLOWER,
        LISTENER,
        RUN,
        TANK,
        SHELF,
        RACK
    }
}
