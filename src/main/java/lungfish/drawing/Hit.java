package lungfish.drawing;

import lungfish.reason.PartId;

/**
 * What is under the pointer.
 *
 * @param part for a tap the outlet or gang that it feeds; for a fitting its run; for a door, a wall and the listener the room
 * @param number of a fitting in its run, of a door or of an inner wall, from 0; otherwise 0
 */
public record Hit(Kind kind, PartId part, int number, double xM, double yM) {
    /** Of a thing that has an id. */
    Hit(Kind kind, PartId part, double xM, double yM) {
        this(kind, part, 0, xM, yM);
    }

    /** The kinds of thing that a drawing knows, those above first. */
    public enum Kind {
        OUTLET,
        TAP,
        GANG,
        BLOWER,
        LISTENER,
        FITTING,
        RUN,
        TANK,
        SHELF,
        RACK,
        DOOR,
        WALL
    }
}
