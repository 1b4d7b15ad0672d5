package lungfish.desktop;

import java.util.List;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.Box;
import lungfish.edit.Part;
import lungfish.edit.Selection;

/** What the choosing tool moves on one drawing, and how: the floor of the room, or the front of a rack. */
interface Dragging {
    /** What a drag from a part takes along. */
    Part carrier(Part part);

    /**
     * Where what is chosen is pulled into another shape, in the room as it is seen or as it is kept.
     *
     * @param at where the hand is: grips keep apart by its reach
     */
    List<Grip> grips(boolean seen, Spot at);

    /** What is chosen by a click on nothing. */
    Selection ground();

    /** What a frame chooses. */
    Selection framed(Box box);

    /** What comes of moving it. */
    Dragged dragged(Selection moving, Part held, Spot from, Spot to);

    /**
     * A drag in the making.
     *
     * @param strokes what is painted meanwhile
     * @param says what is told beside the hand, before its effect
     */
    record Dragged(Attempt attempt, List<Sketch.Stroke> strokes, List<String> says) {
        public Dragged {
            strokes = List.copyOf(strokes);
            says = List.copyOf(says);
        }
    }
}
