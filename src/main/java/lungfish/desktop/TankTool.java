package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.FrontMoves;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.edit.ShelfSnap;
import lungfish.edit.TankEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Adds tanks of a common or an own size: a click puts one on the shelf below the pointer. */
final class TankTool extends PlacingTool {
    private final Front front;
    private final TankOptions options;

    TankTool(View view, Front front, TankOptions options) {
        super(view, "Tank", 'T', "Click where it stands · Enter puts one into the next gap");
        this.front = front;
        this.options = options;
    }

    @Override
    Optional<Placing> placing(Spot spot) {
        return front.rack().map(rack -> Front.below(rack, -spot.yM())
                .map(shelf -> placing(rack, shelf, spot))
                .orElseGet(() -> new Placing(FrontMoves.NO_SHELF, List.of(), List.of())));
    }

    private Placing placing(Rack rack, Shelf shelf, Spot spot) {
        Tank.Size size = options.outside();
        ShelfSnap rest =
                FrontResting.along(view(), rack, shelf, Set.of(), size.lengthM(), spot.xM() - size.lengthM() / 2, spot);
        Stream<Sketch.Stroke> strokes = Stream.concat(
                FrontResting.tank(rack, shelf, Set.of(), size, rest),
                FrontResting.headroom(rack, shelf, size, rest.xM()));
        return new Placing(
                TankEdits.addAt(
                        view().desk().room(), shelf.id(), rest.xM(), size, options.waterDepthM(), options.device()),
                strokes.toList(),
                says(size, FrontResting.headroomM(rack, shelf, size)));
    }

    private List<String> says(Tank.Size size, Optional<Double> headroomM) {
        List<String> says = new ArrayList<>();
        says.add(Stream.of(size.lengthM(), size.widthM(), size.heightM())
                .map(m -> view().quantities().show(m, Dimension.DEPTH))
                .reduce((one, other) -> one + " × " + other)
                .orElse(""));
        headroomM
                .filter(m -> m < 0)
                .ifPresent(
                        m -> says.add(view().quantities().show(-m, Dimension.DEPTH) + " too high for the shelf above"));
        return says;
    }

    /** On the shelf of what is chosen; where that is full, on the first that is not. */
    @Override
    Attempt placed() {
        Selection chosen = view().selection();
        return front.rack().stream()
                .flatMap(rack -> Stream.concat(
                        rack.shelves().stream().filter(shelf -> holds(shelf, chosen)), rack.shelves().stream()))
                .map(shelf -> TankEdits.add(
                        view().desk().room(), shelf.id(), options.outside(), options.waterDepthM(), options.device()))
                .reduce((first, next) -> first.edit().isPresent() ? first : next)
                .orElse(FrontMoves.NO_SHELF);
    }

    private static boolean holds(Shelf shelf, Selection chosen) {
        return chosen.has(Part.shelf(shelf.id()))
                || shelf.tanks().stream()
                        .anyMatch(tank -> chosen.has(Part.tank(tank.id()))
                                || tank.outlets().stream().anyMatch(outlet -> chosen.has(Part.outlet(outlet.id()))));
    }
}
