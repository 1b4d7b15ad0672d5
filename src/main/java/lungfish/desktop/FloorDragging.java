package lungfish.desktop;

import java.util.List;
import lungfish.edit.Box;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.room.Room;

/** Racks, pipes and machines are moved over the floor; tanks and outlets go with their rack. */
final class FloorDragging implements Dragging {
    private static final double LEAST_LEG_AS_REACH = 7;

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
    public List<Grip> grips(boolean seen, Spot at) {
        return Grip.of(seen ? view.desk().seen() : room(), view.selection(), LEAST_LEG_AS_REACH * at.reachM());
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
        return new Moving(view, moving, to.xM() - from.xM(), to.yM() - from.yM()).dragged(to);
    }
}
