package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import lungfish.edit.Attempt;
import lungfish.edit.DepthSnap;
import lungfish.edit.OutletEdits;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.room.Rack;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Hangs devices into tanks: a click hangs one at that depth. */
final class DeviceTool extends PlacingTool {
    private final Front front;
    private final DeviceOptions options;

    DeviceTool(View view, Front front, DeviceOptions options) {
        super(
                view,
                "Device",
                'D',
                "Click in a tank, at its depth · Enter hangs one into each chosen tank, a number so deep");
        this.front = front;
        this.options = options;
    }

    @Override
    Optional<Placing> placing(Spot spot) {
        return front.rack()
                .flatMap(rack -> Front.standing(rack, each -> each.holds(spot)).map(over -> placing(rack, over, spot)));
    }

    private Placing placing(Rack rack, Front.Standing over, Spot spot) {
        DepthSnap rest =
                FrontResting.depth(view(), over.tank(), front.depthsM(rack, List.of()), over.depthM(spot.yM()), spot);
        return new Placing(
                OutletEdits.addAt(view().desk().room(), over.tank().id(), options.device(), rest.depthM()),
                FrontResting.device(over, spot.xM(), rest),
                List.of(FrontResting.deep(view(), rest.depthM())));
    }

    /** Its depth is not known then: the plan takes the usual one. */
    @Override
    Attempt placed() {
        List<TankId> tanks = front.rack().stream()
                .flatMap(Rack::tanks)
                .filter(this::isChosen)
                .map(Tank::id)
                .toList();
        return OutletEdits.add(view().desk().room(), tanks, options.device());
    }

    private boolean isChosen(Tank tank) {
        return view().selection().has(Part.tank(tank.id()))
                || tank.outlets().stream().anyMatch(outlet -> view().selection().has(Part.outlet(outlet.id())));
    }

    @Override
    boolean takesLength() {
        return view().selection().lead().filter(part -> tank(part).isPresent()).isPresent();
    }

    /** So deep in the tank that leads what is chosen. */
    @Override
    void length(double lengthM) {
        view().attempt((room, chosen) -> chosen.lead()
                .flatMap(this::tank)
                .map(tank -> OutletEdits.addAt(room, tank.id(), options.device(), lengthM))
                .orElseGet(() -> OutletEdits.add(room, List.of(), options.device())));
    }

    private Optional<Tank> tank(Part part) {
        return Selecting.tankOf(view().desk().room(), part);
    }
}
