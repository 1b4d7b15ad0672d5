package lungfish.edit;

import lungfish.room.BlowerId;
import lungfish.room.GangId;
import lungfish.room.OutletId;
import lungfish.room.RackId;
import lungfish.room.RunId;
import lungfish.room.ShelfId;
import lungfish.room.TankId;

/**
 * One thing that a keeper can take hold of.
 *
 * @param id the id of the thing, or of what it belongs to; empty for doors, walls and the listener
 * @param number counted from 0 where a thing has no id: a run's corner or fitting, a door, an inner wall; otherwise 0
 */
public record Part(Kind kind, String id, int number) {
    /** The kinds of thing. {@code TAP}: of an outlet; {@code GANG_TAP}: of a gang; {@code FEED}: where a blower joins the pipe. */
    public enum Kind {
        RACK,
        SHELF,
        TANK,
        OUTLET,
        TAP,
        RUN,
        CORNER,
        FITTING,
        GANG,
        GANG_TAP,
        BLOWER,
        FEED,
        LISTENER,
        DOOR,
        WALL
    }

    private static Part of(Kind kind, String id) {
        return new Part(kind, id, 0);
    }

    public static Part rack(RackId id) {
        return of(Kind.RACK, id.text());
    }

    public static Part shelf(ShelfId id) {
        return of(Kind.SHELF, id.text());
    }

    public static Part tank(TankId id) {
        return of(Kind.TANK, id.text());
    }

    public static Part outlet(OutletId id) {
        return of(Kind.OUTLET, id.text());
    }

    /** Where an outlet's airline leaves the pipe. */
    public static Part tap(OutletId of) {
        return of(Kind.TAP, of.text());
    }

    public static Part run(RunId id) {
        return of(Kind.RUN, id.text());
    }

    /** A corner or an end of a run. */
    public static Part corner(RunId run, int number) {
        return new Part(Kind.CORNER, run.text(), number);
    }

    /** A fitting of a run, by its place in the run's list. */
    public static Part fitting(RunId run, int number) {
        return new Part(Kind.FITTING, run.text(), number);
    }

    public static Part gang(GangId id) {
        return of(Kind.GANG, id.text());
    }

    /** Where a gang's feeder leaves the pipe. */
    public static Part gangTap(GangId of) {
        return of(Kind.GANG_TAP, of.text());
    }

    /** A blower, a standby or a pump of today. */
    public static Part blower(BlowerId id) {
        return of(Kind.BLOWER, id.text());
    }

    /** Where a blower joins the pipe. */
    public static Part feed(BlowerId of) {
        return of(Kind.FEED, of.text());
    }

    public static Part listener() {
        return of(Kind.LISTENER, "");
    }

    public static Part door(int number) {
        return new Part(Kind.DOOR, "", number);
    }

    public static Part wall(int number) {
        return new Part(Kind.WALL, "", number);
    }
}
