package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lungfish.edit.Attempt;
import lungfish.edit.FrontMoves;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.edit.ShelfSnap;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Tanks dragged over the front of a rack: the one in the hand comes to rest, the others keep their places beside it. */
final class TankDragging {
    private final View view;

    TankDragging(View view) {
        this.view = view;
    }

    Optional<Dragging.Dragged> dragged(Rack rack, Selection moving, Part held, Spot from, Spot to) {
        List<TankId> ids = moving.ids(Part.Kind.TANK, TankId::new);
        return Front.standing(rack, each -> Part.tank(each.tank().id()).equals(held))
                .flatMap(there -> Front.nearest(rack, there.shelf().heightM() + from.yM() - to.yM())
                        .map(onto -> dragged(rack, ids, there, onto, from, to)));
    }

    private Dragging.Dragged dragged(
            Rack rack, List<TankId> ids, Front.Standing there, Shelf onto, Spot from, Spot to) {
        Tank tank = there.tank();
        Set<TankId> looksThrough = to.copies() ? Set.of() : Set.copyOf(ids);
        ShelfSnap rest = FrontResting.along(
                view, rack, onto, looksThrough, tank.outside().lengthM(), tank.xM() + to.xM() - from.xM(), to);
        int up = rack.shelves().indexOf(onto) - rack.shelves().indexOf(there.shelf());
        double alongM = rest.xM() - tank.xM();
        Attempt attempt = to.copies()
                ? FrontMoves.tankCopies(view.desk().room(), ids, alongM, up)
                : FrontMoves.tanks(view.desk().room(), ids, alongM, up);
        return new Dragging.Dragged(
                attempt,
                FrontResting.tank(rack, onto, looksThrough, tank.outside(), rest)
                        .toList(),
                List.of());
    }
}
