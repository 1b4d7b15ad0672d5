package lungfish.measured;

import lungfish.room.OutletId;

/** What may have happened to the room since its valves were set. */
public sealed interface Happening {
    /** Nothing but what always happens: blowers age and devices foul as their classes say. */
    record Nothing() implements Happening {}

    /**
     * The blowers give less than their age explains.
     *
     * @param lost share of their air, 0 to 1
     */
    record Wear(double lost) implements Happening {}

    /**
     * Air leaks out of the pipe.
     *
     * @param section of the pipe between its valves, 0 or above
     * @param share of the air of the outlets, at the pressure at which the valves were set
     */
    record Leak(int section, double share) implements Happening {}

    /**
     * The device of an outlet has clogged.
     *
     * @param outlet its number among the needs
     * @param left share of its air that is left at the same pressure, above 0
     */
    record Clog(int outlet, OutletId id, double left) implements Happening {}

    /** How large it is; 0 where that has no meaning. */
    default double size() {
        if (this instanceof Wear wear) {
            return wear.lost();
        }
        if (this instanceof Leak leak) {
            return leak.share();
        }
        return this instanceof Clog clog ? clog.left() : 0;
    }

    /** The same of another size, within what is possible. */
    default Happening sized(double size) {
        if (this instanceof Wear) {
            return new Wear(Math.min(0.95, Math.max(0, size)));
        }
        if (this instanceof Leak leak) {
            return new Leak(leak.section(), Math.max(0, size));
        }
        return this instanceof Clog clog ? new Clog(clog.outlet(), clog.id(), Math.min(1, Math.max(0.01, size))) : this;
    }

    /** Its kind: what a name is given to, whatever the size. */
    default Culprit culprit() {
        if (this instanceof Wear) {
            return Culprit.BLOWER;
        }
        if (this instanceof Leak) {
            return Culprit.LEAK;
        }
        return this instanceof Clog clog ? Culprit.clog(clog.id()) : Culprit.NOTHING;
    }
}
