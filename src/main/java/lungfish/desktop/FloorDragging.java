package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Box;
import lungfish.edit.Moves;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.edit.Snapped;
import lungfish.room.Room;

/** Racks, pipes and machines are moved over the floor; tanks and outlets go with their rack. */
final class FloorDragging implements Dragging {
    private final View view;

    FloorDragging(View view) {
        this.view = view;
    }

    private Room room() {
        return view.desk().room();
    }

    @Override
    public Part carrier(Part part) {
        return Handles.carrier(room(), part);
    }

    @Override
    public List<Grip> grips(boolean seen) {
        return Grip.of(seen ? view.desk().seen() : room(), view.selection());
    }

    @Override
    public Selection ground() {
        return Selection.NONE;
    }

    @Override
    public Selection framed(Box box) {
        return Selecting.touching(room(), box);
    }

    @Override
    public Dragged dragged(Selection moving, Part held, Spot from, Spot to) {
        double dxM = to.xM() - from.xM();
        double dyM = to.yM() - from.yM();
        Optional<Box> box = Boxes.around(room(), moving).map(all -> all.moved(dxM, dyM));
        Snapped rest = box.map(Resting.snap(view, moving, to)::box).orElse(new Snapped(0, 0, List.of()));
        Stream<Sketch.Stroke> ghost = box.map(all -> all.moved(rest.dxM(), rest.dyM())).stream()
                .flatMap(all -> Stream.concat(
                        Stream.of(new Sketch.Ghost(Boxes.shape(all))), Resting.clearances(view, all, moving)));
        return new Dragged(
                Moves.by(room(), moving, dxM + rest.dxM(), dyM + rest.dyM()),
                Stream.concat(ghost, Resting.guides(rest.guides())).toList(),
                List.of());
    }
}
