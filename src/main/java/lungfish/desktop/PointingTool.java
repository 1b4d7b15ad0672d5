package lungfish.desktop;

import java.util.Optional;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;

/** A tool that shows under the pointer what it would do, tries it while the button is down, and keeps it when it comes up. */
abstract class PointingTool extends Tool {
    private final View view;
    private final Gesture gesture;
    private Optional<Spot> at = Optional.empty();

    PointingTool(View view, String name, char key, String hint) {
        super(name, key, hint);
        this.view = view;
        this.gesture = new Gesture(view);
    }

    final View view() {
        return view;
    }

    final Gesture gesture() {
        return gesture;
    }

    /** Where the pointer is; empty where nothing is to be shown of it. */
    final Optional<Spot> at() {
        return at;
    }

    /** Until the pointer moves nothing is shown of it. */
    final void forget() {
        at = Optional.empty();
    }

    /** What is shown while the pointer is there. */
    abstract Sketch sketch(Spot spot);

    @Override
    void moved(Spot spot) {
        at = Optional.of(spot);
    }

    @Override
    void left() {
        at = gesture.isGoingOn() ? at : Optional.empty();
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = Optional.of(spot);
    }

    @Override
    void released(Spot spot) {
        if (gesture.isGoingOn()) {
            gesture.keep();
        }
    }

    @Override
    boolean cancelled() {
        boolean was = gesture.isGoingOn();
        gesture.leave();
        return was;
    }

    @Override
    final Sketch sketch() {
        return at.map(this::sketch).orElse(Sketch.NOTHING);
    }
}
