package lungfish.desktop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.edit.Attempt;
import lungfish.edit.DepthSnap;
import lungfish.edit.FrontMoves;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.plan.OutletPlan;
import lungfish.quantity.Dimension;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Tank;

/** Devices dragged over the front of a rack: up and down in their water, or into another tank. */
final class OutletDragging {
    private final View view;
    private final Front front;

    OutletDragging(View view, Front front) {
        this.view = view;
        this.front = front;
    }

    Optional<Dragging.Dragged> dragged(Rack rack, Selection moving, Part held, Spot from, Spot to) {
        OutletId id = new OutletId(held.id());
        List<OutletId> ids = moving.ids(Part.Kind.OUTLET, OutletId::new);
        return Front.standing(rack, each -> Front.hangs(each.tank(), id)).map(home -> {
            Front.Standing over = Front.standing(rack, each -> each.holds(to)).orElse(home);
            double fromM = front.depthM(home.tank(), id);
            boolean stays = over.tank().id().equals(home.tank().id());
            double toM = stays ? fromM + to.yM() - from.yM() : over.depthM(to.yM());
            DepthSnap rest = FrontResting.depth(view, over.tank(), front.depthsM(rack, ids), toM, to);
            Map<OutletId, Double> depths = depths(rack, ids, over.tank(), stays ? rest.depthM() - fromM : 0);
            depths.put(id, rest.depthM());
            return new Dragging.Dragged(
                    attempt(depths, over, stays, to),
                    FrontResting.device(over, stays && !to.copies() ? xM(home.tank(), id) : to.xM(), rest),
                    says(id, rest.depthM()));
        });
    }

    private Attempt attempt(Map<OutletId, Double> depths, Front.Standing over, boolean stays, Spot to) {
        if (to.copies()) {
            return FrontMoves.outletCopies(
                    view.desk().room(), depths, over.tank().id());
        }
        return stays
                ? FrontMoves.depths(view.desk().room(), depths)
                : FrontMoves.outlets(view.desk().room(), depths, over.tank().id());
    }

    /** How deep it is, and what its tap has to spare there. */
    private List<String> says(OutletId id, double depthM) {
        List<String> says = new ArrayList<>(List.of(FrontResting.deep(view, depthM)));
        view.plan().stream()
                .flatMap(plan -> plan.outlets().stream())
                .filter(outlet -> outlet.need().id().equals(id))
                .findFirst()
                .map(this::spare)
                .filter(OptionalDouble::isPresent)
                .ifPresent(spare -> says.add((spare.getAsDouble() < 0 ? "short by " : "to spare ")
                        + view.quantities().show(Math.abs(spare.getAsDouble()), Dimension.PRESSURE)));
        return says;
    }

    private OptionalDouble spare(OutletPlan outlet) {
        return view.shown().sparePa(outlet);
    }

    private static double xM(Tank tank, OutletId id) {
        List<OutletId> all = tank.outlets().stream().map(Outlet::id).toList();
        return tank.xM() + tank.outside().lengthM() * (all.indexOf(id) + 1.0) / (all.size() + 1.0);
    }

    /** Each as much deeper; none leaves the water of the tank that it comes to. */
    private Map<OutletId, Double> depths(Rack rack, List<OutletId> ids, Tank into, double deeperM) {
        Map<OutletId, Double> depths = new LinkedHashMap<>();
        rack.tanks().forEach(tank -> tank.outlets().stream()
                .map(Outlet::id)
                .filter(ids::contains)
                .forEach(id -> depths.put(id, front.depthM(tank, id, into, deeperM))));
        return depths;
    }
}
