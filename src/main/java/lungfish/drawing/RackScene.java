package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import lungfish.demand.Need;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/**
 * A rack seen from its front, laid out in metres: x from its left end, y down the page, the floor at 0 (so that what
 * stands higher has a lesser y). Immutable.
 */
public final class RackScene {
    private static final double ABOVE_TOP_M = 0.12;
    /** How thick a board is drawn. */
    static final double BOARD_M = 0.03;

    private final Rack rack;
    private final List<FrontOutlet> outlets;
    private final Optional<OxygenLaid> breathing;

    /** An outlet with the place of its device in the water. */
    record FrontOutlet(OutletPart outlet, Optional<Need> need, double xM, double rimYM, double releaseYM) {}

    private RackScene(Rack rack, List<FrontOutlet> outlets, Optional<OxygenLaid> breathing) {
        this.rack = rack;
        this.outlets = outlets;
        this.breathing = breathing;
    }

    /** The front of a rack of a scene; empty when the room has no such rack. */
    public static Optional<RackScene> of(RoomScene scene, RackId id) {
        return scene.room().racks().stream()
                .filter(rack -> rack.id().equals(id))
                .findFirst()
                .map(rack -> new RackScene(
                        rack,
                        scene.outlets().stream()
                                .filter(outlet -> outlet.seat().rack().id().equals(id))
                                .map(outlet -> front(outlet, scene.plan()))
                                .toList(),
                        scene.breathing()));
    }

    private static FrontOutlet front(OutletPart outlet, Optional<Plan> plan) {
        Tank tank = outlet.seat().tank();
        double x = tank.xM()
                + tank.outside().lengthM()
                        * (outlet.seat().number() + 1.0)
                        / (tank.outlets().size() + 1.0);
        double shelf = outlet.seat().shelf().heightM();
        Optional<Need> need = plan.flatMap(each -> need(each, outlet));
        double depth = need.map(each -> each.depthM().si())
                .orElseGet(() -> outlet.outlet().depthM().orElse(tank.waterDepthM()));
        double release = -(shelf + tank.waterDepthM() - depth);
        return new FrontOutlet(outlet, need, x, -(shelf + tank.outside().heightM()), release);
    }

    private static Optional<Need> need(Plan plan, OutletPart outlet) {
        return java.util.stream.Stream.concat(plan.demand().needs().stream(), plan.demand().planned().stream())
                .filter(need -> need.id().equals(outlet.outlet().id()))
                .findFirst();
    }

    public Rack rack() {
        return rack;
    }

    /** The oxygen of its tanks, if that is to be shown. */
    Optional<OxygenLaid> breathing() {
        return breathing;
    }

    List<FrontOutlet> outlets() {
        return outlets;
    }

    /** The board of a shelf. */
    Rectangle2D boardM(Shelf shelf) {
        return new Rectangle2D.Double(0, -shelf.heightM(), rack.widthM(), BOARD_M);
    }

    /** Outside box of a tank. */
    static Rectangle2D glassM(Shelf shelf, Tank tank) {
        double high = tank.outside().heightM();
        return new Rectangle2D.Double(
                tank.xM(), -(shelf.heightM() + high), tank.outside().lengthM(), high);
    }

    /** The rack from the floor to a little above its highest tank. */
    public Rectangle2D boundsM() {
        double top = rack.shelves().stream()
                .flatMap(shelf -> shelf.tanks().stream()
                        .map(tank -> shelf.heightM() + tank.outside().heightM()))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1);
        return new Rectangle2D.Double(0, -(top + ABOVE_TOP_M), rack.widthM(), top + ABOVE_TOP_M);
    }

    /** Where an outlet's device, a tank, a shelf or the rack itself lies in this view; empty for what is not in it. */
    public Optional<Rectangle2D> whereM(PartId part) {
        return outlets.stream()
                .filter(each -> each.outlet().part().equals(part))
                .findFirst()
                .<Rectangle2D>map(each -> new Rectangle2D.Double(each.xM(), each.releaseYM(), 0, 0))
                .or(() -> glassOf(part))
                .or(() -> boardOf(part))
                .or(() -> Optional.of(boundsM()).filter(all -> rack.id().part().equals(part)));
    }

    private Optional<Rectangle2D> boardOf(PartId part) {
        return rack.shelves().stream()
                .filter(shelf -> shelf.id().part().equals(part))
                .map(this::boardM)
                .findFirst();
    }

    private Optional<Rectangle2D> glassOf(PartId part) {
        return rack.shelves().stream()
                .flatMap(shelf -> shelf.tanks().stream()
                        .filter(tank -> tank.id().part().equals(part))
                        .map(tank -> glassM(shelf, tank)))
                .findFirst();
    }

    /**
     * What is at a point of this view, the smallest thing first.
     *
     * @param reachM how far from a device still counts
     */
    public Optional<Hit> at(double xM, double yM, double reachM) {
        return outlets.stream()
                .filter(each -> Math.hypot(each.xM() - xM, each.releaseYM() - yM) <= reachM)
                .findFirst()
                .map(each -> new Hit(Hit.Kind.OUTLET, each.outlet().part(), xM, yM))
                .or(() -> tankAt(xM, yM))
                .or(() -> shelfAt(xM, yM, reachM));
    }

    private Optional<Hit> tankAt(double xM, double yM) {
        return rack.shelves().stream()
                .flatMap(shelf -> shelf.tanks().stream()
                        .filter(tank -> glassM(shelf, tank).contains(xM, yM)))
                .findFirst()
                .map(tank -> new Hit(Hit.Kind.TANK, tank.id().part(), xM, yM));
    }

    private Optional<Hit> shelfAt(double xM, double yM, double reachM) {
        return rack.shelves().stream()
                .filter(shelf -> Marks.outset(boardM(shelf), reachM / 2).contains(xM, yM))
                .findFirst()
                .map(shelf -> new Hit(Hit.Kind.SHELF, shelf.id().part(), xM, yM));
    }
}
