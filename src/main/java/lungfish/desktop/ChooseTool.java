package lungfish.desktop;

import java.awt.Cursor;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Box;
import lungfish.edit.Moves;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.edit.Snapped;
import lungfish.edit.SnappedPoint;
import lungfish.room.Point;
import lungfish.room.Room;
import org.jspecify.annotations.Nullable;

/** Click chooses; a drag moves what is chosen, pulls a corner, or frames what is to be chosen. */
final class ChooseTool extends Tool {
    /** What the drag that may come would do. */
    private enum Meaning {
        NOTHING,
        MOVE,
        PULL,
        FRAME
    }

    private final View view;
    private final Gesture gesture;
    private Meaning meaning = Meaning.NOTHING;
    private Spot from = new Spot(0, 0, 0, false, false, 0);
    private Spot at = from;
    private boolean isFar;
    private Selection before = Selection.NONE;
    private Selection moving = Selection.NONE;
    private @Nullable Grip grip;

    ChooseTool(View view) {
        super("Choose", 'V', "Click chooses, Shift adds · drag moves or frames · double click opens a rack");
        this.view = view;
        this.gesture = new Gesture(view);
    }

    @Override
    Cursor cursor(Optional<Hit> under) {
        return Cursor.getPredefinedCursor(under.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR);
    }

    @Override
    boolean enters() {
        return true;
    }

    private Room room() {
        return view.desk().room();
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        from = spot;
        at = spot;
        isFar = false;
        before = view.selection();
        grip = Grip.of(room(), before).stream()
                .filter(each -> spot.isNear(each.xM(), each.yM()))
                .findFirst()
                .orElse(null);
        if (grip != null) {
            meaning = Meaning.PULL;
            return;
        }
        under.ifPresentOrElse(hit -> pressedOn(hit, spot), () -> pressedOnFloor(spot));
    }

    private void pressedOn(Hit hit, Spot spot) {
        Optional<Part> part = Handles.of(hit);
        part.ifPresentOrElse(one -> choose(one, hit, spot), () -> view.choose(hit.part()));
        Part carrier = part.map(one -> Handles.carrier(room(), one)).orElse(Part.listener());
        moving = before.has(carrier) && !spot.adds() ? before : Selection.of(carrier);
        meaning = part.isPresent() ? Meaning.MOVE : Meaning.NOTHING;
    }

    private void choose(Part part, Hit hit, Spot spot) {
        Part carrier = Handles.carrier(room(), part);
        if (spot.adds()) {
            view.select(before.toggled(carrier));
        } else if (!before.has(carrier) || before.parts().size() == 1) {
            view.choose(hit.part());
            view.select(Selection.of(part));
        }
    }

    private void pressedOnFloor(Spot spot) {
        meaning = Meaning.FRAME;
        if (!spot.adds()) {
            view.chooseNothing();
        }
    }

    @Override
    void dragged(Spot spot) {
        isFar = isFar || !spot.isNear(from.xM(), from.yM());
        at = spot;
        if (!isFar) {
            return;
        }
        switch (meaning) {
            case MOVE -> move();
            case PULL -> pull();
            case FRAME -> frame();
            case NOTHING -> {}
        }
    }

    private void move() {
        Snapped rest = rest();
        gesture.tryOut(Moves.by(room(), moving, dxM() + rest.dxM(), dyM() + rest.dyM()));
    }

    private double dxM() {
        return at.xM() - from.xM();
    }

    private double dyM() {
        return at.yM() - from.yM();
    }

    private Optional<Box> dragged() {
        return Boxes.around(room(), moving).map(box -> box.moved(dxM(), dyM()));
    }

    private Snapped rest() {
        return dragged().map(Resting.snap(view, moving, at)::box).orElse(new Snapped(0, 0, List.of()));
    }

    private void pull() {
        if (grip != null) {
            gesture.tryOut(grip.pulled(room(), pulled()));
        }
    }

    private SnappedPoint pulled() {
        return Resting.snap(view, view.selection(), at).point(new Point(at.xM(), at.yM(), 0));
    }

    private void frame() {
        Selection inside = Selecting.touching(room(), framed());
        view.select(
                from.adds()
                        ? Selection.of(Stream.concat(before.parts().stream(), inside.parts().stream())
                                .distinct()
                                .toList())
                        : inside);
    }

    private Box framed() {
        return Box.between(from.xM(), from.yM(), at.xM(), at.yM());
    }

    @Override
    void released(Spot spot) {
        if (gesture.isGoingOn()) {
            if (meaning == Meaning.MOVE && !view.selection().equals(moving)) {
                view.select(moving);
            }
            gesture.keep();
        }
        meaning = Meaning.NOTHING;
        isFar = false;
    }

    @Override
    boolean cancelled() {
        boolean was = meaning != Meaning.NOTHING && isFar;
        gesture.leave();
        meaning = Meaning.NOTHING;
        isFar = false;
        return was;
    }

    @Override
    Sketch sketch() {
        if (!isFar) {
            return new Sketch(
                    Grip.of(view.desk().seen(), view.selection()).stream()
                            .map(Grip::stroke)
                            .toList(),
                    Optional.empty());
        }
        return switch (meaning) {
            case MOVE -> moved();
            case PULL -> new Sketch(Resting.guides(pulled().guides()).toList(), gesture.note(at.xM(), at.yM()));
            case FRAME -> new Sketch(List.of(new Sketch.Choosing(Boxes.shape(framed()))), Optional.empty());
            case NOTHING -> Sketch.NOTHING;
        };
    }

    private Sketch moved() {
        Snapped rest = rest();
        Optional<Box> box = dragged().map(one -> one.moved(rest.dxM(), rest.dyM()));
        Stream<Sketch.Stroke> ghost = box.stream()
                .flatMap(one -> Stream.concat(
                        Stream.of(new Sketch.Ghost(Boxes.shape(one))), Resting.clearances(view, one, moving)));
        return new Sketch(Stream.concat(ghost, Resting.guides(rest.guides())).toList(), gesture.note(at.xM(), at.yM()));
    }
}
