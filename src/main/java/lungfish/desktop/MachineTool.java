package lungfish.desktop;

import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.MachineEdits;
import lungfish.edit.RoomEdits;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Blower;
import lungfish.room.Point;

/** Puts down machines, and who hears them: the planned blower is moved there once it is drawn, standbys and pumps are added. */
final class MachineTool extends Tool {
    private final View view;
    private final Gesture gesture;
    private final MachineOptions options;
    private Optional<Spot> at = Optional.empty();

    MachineTool(View view, MachineOptions options) {
        super("Blower", 'B', "Click where it stands, or where you sit and listen");
        this.view = view;
        this.gesture = new Gesture(view);
        this.options = options;
    }

    private SnappedPoint rest(Spot spot) {
        return Resting.snap(view, Selection.NONE, spot).point(new Point(spot.xM(), spot.yM(), options.heightM()));
    }

    @Override
    void moved(Spot spot) {
        at = Optional.of(spot);
    }

    @Override
    void left() {
        if (!gesture.isGoingOn()) {
            at = Optional.empty();
        }
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = Optional.of(spot);
        Point rest = rest(spot).place();
        gesture.tryOut(attempt(new Point(rest.xM(), rest.yM(), options.heightM())));
    }

    private Attempt attempt(Point place) {
        return options.role()
                .map(role -> machine(role, place))
                .orElseGet(() -> RoomEdits.listen(view.desk().room(), place));
    }

    private Attempt machine(Blower.Role role, Point place) {
        Optional<Blower> drawn = view.desk().room().blowers(Blower.Role.PLANNED).stream()
                .filter(blower -> role == Blower.Role.PLANNED)
                .findFirst();
        return drawn.map(blower -> MachineEdits.place(view.desk().room(), blower.id(), place))
                .orElseGet(() -> MachineEdits.place(view.desk().room(), role, Optional.empty(), place));
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
    Sketch sketch() {
        return at.map(spot -> {
                    SnappedPoint rest = rest(spot);
                    Stream<Sketch.Stroke> there = Stream.of(
                            new Sketch.Spot(rest.place().xM(), rest.place().yM()));
                    return new Sketch(
                            Stream.concat(there, Resting.guides(rest.guides())).toList(), gesture.note(spot));
                })
                .orElse(Sketch.NOTHING);
    }
}
