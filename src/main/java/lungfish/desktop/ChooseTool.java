package lungfish.desktop;

import java.awt.Cursor;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Box;
import lungfish.edit.Part;
import lungfish.edit.Selection;
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
    private final Dragging dragging;
    private Meaning meaning = Meaning.NOTHING;
    private Spot from = Spot.NOWHERE;
    private Spot at = from;
    private boolean isFar;
    private Selection before = Selection.NONE;
    private Selection moving = Selection.NONE;
    private Part held = Part.listener();
    private Dragging.@Nullable Dragged dragged;
    private @Nullable Grip grip;

    ChooseTool(View view, Dragging dragging, String hint) {
        super("Choose", 'V', hint);
        this.view = view;
        this.gesture = new Gesture(view);
        this.dragging = dragging;
    }

    @Override
    Cursor cursor(Optional<Hit> under) {
        return Cursor.getPredefinedCursor(under.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR);
    }

    @Override
    boolean enters() {
        return true;
    }

    @Override
    void moved(Spot spot) {
        at = spot;
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        from = spot;
        at = spot;
        isFar = false;
        before = view.selection();
        grip = dragging.grips(false, at).stream()
                .filter(each -> spot.isNear(each.xM(), each.yM()))
                .findFirst()
                .orElse(null);
        if (grip != null) {
            pressedOn(grip);
            return;
        }
        under.ifPresentOrElse(hit -> pressedOn(hit, spot), () -> pressedOnGround(spot));
    }

    /** One of several chosen corners takes the others along. */
    private void pressedOn(Grip pulled) {
        boolean isOfMany = before.parts().size() > 1 && before.has(pulled.moves());
        moving = before;
        held = pulled.moves();
        meaning = isOfMany ? Meaning.MOVE : Meaning.PULL;
    }

    private void pressedOn(Hit hit, Spot spot) {
        Optional<Part> part = Handles.of(hit);
        part.ifPresentOrElse(one -> choose(one, hit, spot), () -> view.choose(hit.part()));
        held = part.map(dragging::carrier).orElse(Part.listener());
        moving = before.has(held) && !spot.adds() ? before : Selection.of(held);
        meaning = part.isPresent() ? Meaning.MOVE : Meaning.NOTHING;
    }

    private void choose(Part part, Hit hit, Spot spot) {
        Part carrier = dragging.carrier(part);
        if (spot.adds()) {
            view.select(before.toggled(carrier));
        } else if (!before.has(carrier) || before.parts().size() == 1) {
            view.choose(hit.part());
            view.select(Selection.of(part));
        }
    }

    private void pressedOnGround(Spot spot) {
        meaning = Meaning.FRAME;
        if (!spot.adds()) {
            view.select(dragging.ground());
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
        Dragging.Dragged now = dragging.dragged(moving, held, from, at);
        dragged = now;
        gesture.tryOut(now.attempt());
    }

    private void pull() {
        pulling().ifPresent(pulling -> gesture.tryOut(pulling.attempt(at)));
    }

    private Optional<Pulling> pulling() {
        return Optional.ofNullable(grip).map(pulled -> new Pulling(view, pulled));
    }

    private void frame() {
        Selection inside = dragging.framed(framed());
        Selection all = Selection.of(Stream.concat(before.parts().stream(), inside.parts().stream())
                .distinct()
                .toList());
        view.select(from.adds() ? all : inside.isEmpty() ? dragging.ground() : inside);
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
        } else if (grip != null && !isFar) {
            chooseCorner(grip, spot);
        }
        rest();
    }

    /** A click on a corner of a pipe chooses it: it can be deleted, nudged, or placed by typing. */
    private void chooseCorner(Grip clicked, Spot spot) {
        if (clicked.moves().kind() == Part.Kind.CORNER) {
            boolean adds = spot.adds() && before.isOnly(Part.Kind.CORNER);
            view.select(adds ? before.toggled(clicked.moves()) : Selection.of(clicked.moves()));
        }
    }

    @Override
    boolean cancelled() {
        boolean was = meaning != Meaning.NOTHING && isFar;
        gesture.leave();
        rest();
        return was;
    }

    private void rest() {
        meaning = Meaning.NOTHING;
        isFar = false;
        dragged = null;
    }

    @Override
    Sketch sketch() {
        if (!isFar) {
            return new Sketch(
                    dragging.grips(true, at).stream().map(Grip::stroke).toList(), Optional.empty());
        }
        return switch (meaning) {
            case MOVE -> moved();
            case PULL -> pulled();
            case FRAME -> new Sketch(List.of(new Sketch.Choosing(Boxes.shape(framed()))), Optional.empty());
            case NOTHING -> Sketch.NOTHING;
        };
    }

    private Sketch pulled() {
        return new Sketch(
                pulling().stream().flatMap(pulling -> pulling.strokes(at)).toList(), gesture.note(at));
    }

    private Sketch moved() {
        Dragging.Dragged now = dragged;
        return now == null ? Sketch.NOTHING : new Sketch(now.strokes(), gesture.note(at, now.says()));
    }
}
