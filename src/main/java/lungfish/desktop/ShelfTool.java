package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import lungfish.edit.Attempt;
import lungfish.edit.FrontMoves;
import lungfish.edit.HeightSnap;
import lungfish.edit.ShelfEdits;
import lungfish.room.Rack;

/** Adds shelves: a click puts one at that height. */
final class ShelfTool extends PlacingTool {
    private final Front front;

    ShelfTool(View view, Front front) {
        super(view, "Shelf", 'S', "Click at the height of its board, or type it · Enter adds one on top");
        this.front = front;
    }

    @Override
    Optional<Placing> placing(Spot spot) {
        return front.rack().map(rack -> placing(rack, spot));
    }

    private Placing placing(Rack rack, Spot spot) {
        HeightSnap rest = FrontResting.height(view(), rack, Optional.empty(), Math.max(0, -spot.yM()), spot);
        return new Placing(
                ShelfEdits.add(view().desk().room(), rack.id(), rest.heightM()),
                FrontResting.shelf(rack, Optional.empty(), rest),
                List.of(FrontResting.above(view(), rest.heightM())));
    }

    @Override
    Attempt placed() {
        return front.rack()
                .map(rack -> ShelfEdits.add(view().desk().room(), rack.id()))
                .orElse(FrontMoves.NOTHING);
    }

    @Override
    boolean takesLength() {
        return true;
    }

    /** So high above the floor. */
    @Override
    void length(double lengthM) {
        front.rack().ifPresent(rack -> view().attempt((room, chosen) -> ShelfEdits.add(room, rack.id(), lengthM)));
    }
}
