package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import lungfish.edit.Attempt;
import lungfish.edit.Box;
import lungfish.edit.FrontMoves;
import lungfish.edit.HeightSnap;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.edit.ShelfEdits;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;

/** Tanks are moved along their shelf and to others, devices up and down and into other tanks, shelves up and down. */
final class FrontDragging implements Dragging {
    private final View view;
    private final Front front;
    private final TankDragging tanks;
    private final OutletDragging outlets;

    FrontDragging(View view, Front front) {
        this.view = view;
        this.front = front;
        this.tanks = new TankDragging(view);
        this.outlets = new OutletDragging(view, front);
    }

    private Room room() {
        return view.desk().room();
    }

    @Override
    public Part carrier(Part part) {
        return part;
    }

    @Override
    public List<Grip> grips(boolean seen, Spot at) {
        return List.of();
    }

    @Override
    public Selection ground() {
        return front.rack().map(Rack::id).map(Part::rack).map(Selection::of).orElse(Selection.NONE);
    }

    @Override
    public Selection framed(Box box) {
        Box heights = Box.between(box.fromXM(), -box.fromYM(), box.toXM(), -box.toYM());
        return front.rack().map(rack -> Selecting.touching(rack, heights)).orElse(Selection.NONE);
    }

    @Override
    public Dragged dragged(Selection moving, Part held, Spot from, Spot to) {
        return front.rack()
                .flatMap(rack -> switch (held.kind()) {
                    case TANK -> tanks.dragged(rack, moving, held, from, to);
                    case OUTLET -> outlets.dragged(rack, moving, held, from, to);
                    case SHELF -> shelf(rack, held, from, to);
                    default -> Optional.<Dragged>empty();
                })
                .orElseGet(() -> new Dragged(FrontMoves.NOTHING, List.of(), List.of()));
    }

    private Optional<Dragged> shelf(Rack rack, Part held, Spot from, Spot to) {
        ShelfId id = new ShelfId(held.id());
        return rack.shelves().stream()
                .filter(shelf -> shelf.id().equals(id))
                .findFirst()
                .map(shelf -> shelf(rack, shelf, shelf.heightM() + from.yM() - to.yM(), to));
    }

    private Dragged shelf(Rack rack, Shelf shelf, double heightM, Spot to) {
        Optional<ShelfId> moving = to.copies() ? Optional.empty() : Optional.of(shelf.id());
        HeightSnap rest = FrontResting.height(view, rack, moving, heightM, to);
        Attempt attempt = to.copies()
                ? FrontMoves.shelfCopy(room(), shelf.id(), rest.heightM())
                : ShelfEdits.raise(room(), shelf.id(), rest.heightM());
        return new Dragged(
                attempt, FrontResting.shelf(rack, moving, rest), List.of(FrontResting.above(view, rest.heightM())));
    }
}
