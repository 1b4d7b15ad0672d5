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
final class MachineTool extends PointingTool {
    private final MachineOptions options;

    MachineTool(View view, MachineOptions options) {
        super(view, "Blower", 'B', "Click where it stands, or where you sit and listen");
        this.options = options;
    }

    void means(Blower.Role role) {
        options.choose(role);
    }

    private SnappedPoint rest(Spot spot) {
        return Resting.snap(view(), Selection.NONE, spot).point(new Point(spot.xM(), spot.yM(), options.heightM()));
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        super.pressed(spot, under);
        Point rest = rest(spot).place();
        gesture().tryOut(attempt(new Point(rest.xM(), rest.yM(), options.heightM())));
    }

    private Attempt attempt(Point place) {
        return options.role()
                .map(role -> machine(role, place))
                .orElseGet(() -> RoomEdits.listen(view().desk().room(), place));
    }

    private Attempt machine(Blower.Role role, Point place) {
        Optional<Blower> drawn = view().desk().room().blowers(Blower.Role.PLANNED).stream()
                .filter(blower -> role == Blower.Role.PLANNED)
                .findFirst();
        return drawn.map(blower -> MachineEdits.place(view().desk().room(), blower.id(), place))
                .orElseGet(() -> MachineEdits.place(view().desk().room(), role, Optional.empty(), place));
    }

    @Override
    Sketch sketch(Spot spot) {
        SnappedPoint rest = rest(spot);
        Sketch.Stroke there = new Sketch.Spot(rest.place().xM(), rest.place().yM());
        Stream<Sketch.Stroke> all = Stream.concat(Stream.of(there), Resting.guides(rest.guides()));
        return new Sketch(all.toList(), gesture().note(spot));
    }
}
