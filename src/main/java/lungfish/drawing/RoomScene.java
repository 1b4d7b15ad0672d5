package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import lungfish.drawing.SceneParts.BlowerPart;
import lungfish.drawing.SceneParts.FittingPart;
import lungfish.drawing.SceneParts.GangPart;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.drawing.SceneParts.StretchPart;
import lungfish.drawing.SceneParts.TapPart;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.room.Room;

/**
 * A room laid out for drawing, in metres: where everything is, and how it stands. Made once for a plan, painted as often
 * as one likes, and asked what is under the pointer. Immutable.
 */
public final class RoomScene {
    private final Room room;
    private final Optional<Plan> plan;
    private final Shown shown;
    private final List<RackPart> racks;
    private final List<OutletPart> outlets;
    private final List<StretchPart> stretches;
    private final List<TapPart> taps;
    private final List<FittingPart> fittings;
    private final List<GangPart> gangs;
    private final List<BlowerPart> blowers;
    private final Optional<GrowthLaid> growing;
    private final Optional<WaterLaid> water;
    private final Optional<OxygenLaid> breathing;

    private RoomScene(SceneMaker maker) {
        this.room = maker.room();
        this.plan = maker.plan();
        this.shown = maker.shown();
        this.racks = maker.racks();
        this.outlets = maker.outlets();
        this.stretches = maker.stretches();
        this.gangs = maker.gangs();
        this.taps = maker.taps(outlets);
        this.blowers = maker.blowers();
        this.fittings = FittingMaker.of(room);
        this.growing = Optional.empty();
        this.water = Optional.empty();
        this.breathing = Optional.empty();
    }

    private RoomScene(
            RoomScene like, Optional<GrowthLaid> growing, Optional<WaterLaid> water, Optional<OxygenLaid> breathing) {
        this.room = like.room;
        this.plan = like.plan;
        this.shown = like.shown;
        this.racks = like.racks;
        this.outlets = like.outlets;
        this.stretches = like.stretches;
        this.gangs = like.gangs;
        this.taps = like.taps;
        this.blowers = like.blowers;
        this.fittings = like.fittings;
        this.growing = growing;
        this.water = water;
        this.breathing = breathing;
    }

    /** The same scene with the places laid over it where the room can grow; empty: with none. */
    public RoomScene growing(Optional<GrowthLaid> that) {
        return that.equals(growing) ? this : new RoomScene(this, that, water, breathing);
    }

    /** The same scene with a way of water laid over it; empty: with none. */
    public RoomScene water(Optional<WaterLaid> that) {
        return that.equals(water) ? this : new RoomScene(this, growing, that, breathing);
    }

    /** The same scene with the oxygen of its tanks at a time of an outage; empty: without. */
    public RoomScene breathing(Optional<OxygenLaid> that) {
        return that.equals(breathing) ? this : new RoomScene(this, growing, water, that);
    }

    /** A room that is not planned yet: everything in its place, no flow, no state. */
    public static RoomScene of(Room room) {
        return new RoomScene(new SceneMaker(room, Optional.empty(), Shown.AS_IT_SHOULD_BE_SET));
    }

    /** A planned room. Bubbles, teeth and states are all those of one trial. */
    public static RoomScene of(Plan plan, Shown shown) {
        return new RoomScene(new SceneMaker(plan.room(), Optional.of(plan), shown));
    }

    public Room room() {
        return room;
    }

    public Optional<Plan> plan() {
        return plan;
    }

    /** The trial that it shows. */
    public Shown shown() {
        return shown;
    }

    /** Where the room can grow, if that is to be shown. */
    Optional<GrowthLaid> growing() {
        return growing;
    }

    /** The way that water could take, if one is to be shown. */
    Optional<WaterLaid> water() {
        return water;
    }

    /** The oxygen of its tanks, if that is to be shown. */
    Optional<OxygenLaid> breathing() {
        return breathing;
    }

    List<RackPart> racks() {
        return racks;
    }

    List<OutletPart> outlets() {
        return outlets;
    }

    List<StretchPart> stretches() {
        return stretches;
    }

    List<TapPart> taps() {
        return taps;
    }

    List<FittingPart> fittings() {
        return fittings;
    }

    List<GangPart> gangs() {
        return gangs;
    }

    List<BlowerPart> blowers() {
        return blowers;
    }

    Optional<OutletPart> index() {
        return outlets.stream().filter(OutletPart::index).findFirst();
    }

    /** The room and whatever stands outside it. */
    public Rectangle2D boundsM() {
        Rectangle2D.Double box = new Rectangle2D.Double(
                0, 0, room.shell().lengthM(), room.shell().widthM());
        racks.forEach(rack -> box.add(rack.outlineM()));
        blowers.forEach(blower -> box.add(blower.xM(), blower.yM()));
        room.listener().ifPresent(ear -> box.add(ear.place().xM(), ear.place().yM()));
        room.runs().forEach(run -> run.points().forEach(point -> box.add(point.xM(), point.yM())));
        return box;
    }

    /** Where a part of the room lies; empty for what has no place, or none that is known. */
    public Optional<Rectangle2D> whereM(PartId part) {
        return new Whereabouts(this).of(part);
    }

    /**
     * What is at a point of the room, the smallest thing first.
     *
     * @param reachM how far from a mark or the pipe still counts
     */
    public Optional<Hit> at(double xM, double yM, double reachM) {
        return new RoomHits(this, xM, yM, reachM).first();
    }
}
