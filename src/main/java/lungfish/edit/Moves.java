package lungfish.edit;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Run;

/**
 * Moves whatever is chosen over the floor. A drag asks for the edit anew from the room in which it began, with the whole
 * way so far: the room of that edit is the preview, and the last one is what is applied.
 */
public final class Moves {
    /** What has a place on the floor, or on the pipe. */
    private static final Set<Part.Kind> MOVABLE =
            EnumSet.complementOf(EnumSet.of(Part.Kind.SHELF, Part.Kind.TANK, Part.Kind.OUTLET));

    private Moves() {}

    /**
     * Moves what is chosen by so much, m. Doors slide in their wall, taps and fittings along their pipe; branches follow the
     * main that they hang on. Shelves, tanks and outlets stay in their rack: {@link TankEdits#slide}.
     */
    public static Attempt by(Room room, Selection chosen, double dxM, double dyM) {
        List<Part> movable = chosen.parts().stream()
                .filter(part -> MOVABLE.contains(part.kind()))
                .toList();
        if (movable.isEmpty()) {
            return Refused.because("Nothing that is chosen can be moved over the floor.", "Choose a rack or a pipe.");
        }
        Selection moved = new Selection(movable);
        return Edit.tried(room, "Move " + Words.of(room, moved), before -> moved(before, moved, dxM, dyM));
    }

    private static Room moved(Room room, Selection chosen, double dxM, double dyM) {
        List<RackId> racks = chosen.ids(Part.Kind.RACK, RackId::new);
        Room step = Each.rack(room, Each.where(rack -> racks.contains(rack.id()), rack -> moved(rack, dxM, dyM)));
        step = step.withGangs(Each.changed(
                step.gangs(),
                Each.where(gang -> chosen.has(Part.gang(gang.id())), gang -> gang.at(moved(gang.place(), dxM, dyM)))));
        step = step.withBlowers(Each.changed(
                step.blowers(),
                Each.where(blower -> chosen.has(Part.blower(blower.id())), blower -> moved(blower, dxM, dyM))));
        if (chosen.has(Part.listener())) {
            step = step.withListener(step.listener().map(ear -> ear.at(moved(ear.place(), dxM, dyM))));
        }
        step = step.withShell(WallMoves.moved(step.shell(), chosen, dxM, dyM));
        return Sliding.slid(pipes(step, chosen, dxM, dyM), chosen, dxM, dyM);
    }

    private static Room pipes(Room room, Selection chosen, double dxM, double dyM) {
        List<Run> changed = room.runs().stream()
                .map(run -> moved(run, chosen, dxM, dyM))
                .filter(run -> !room.runs().contains(run))
                .toList();
        return changed.isEmpty() ? room : Reshaping.of(room, changed);
    }

    private static Run moved(Run run, Selection chosen, double dxM, double dyM) {
        boolean whole = chosen.has(Part.run(run.id()));
        List<Point> points = IntStream.range(0, run.points().size())
                .mapToObj(i -> whole || chosen.has(Part.corner(run.id(), i))
                        ? moved(run.points().get(i), dxM, dyM)
                        : run.points().get(i))
                .toList();
        return run.through(points, run.closed());
    }

    private static Blower moved(Blower blower, double dxM, double dyM) {
        Optional<Point> place = blower.siting().place().map(at -> moved(at, dxM, dyM));
        return blower.sited(blower.siting().at(place));
    }

    static Rack moved(Rack rack, double dxM, double dyM) {
        return rack.movedTo(Metres.clean(rack.xM() + dxM), Metres.clean(rack.yM() + dyM));
    }

    static Point moved(Point point, double dxM, double dyM) {
        return new Point(Metres.clean(point.xM() + dxM), Metres.clean(point.yM() + dyM), point.zM());
    }
}
