package lungfish.desktop;

import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Box;
import lungfish.edit.Part;
import lungfish.edit.Places;
import lungfish.edit.Selection;
import lungfish.room.Room;
import lungfish.room.Shell;

/** How small things are marked that the drawing itself cannot frame: fittings, taps, corners, doors, inner walls. */
final class SmallMarks {
    private final Room room;

    SmallMarks(Room room) {
        this.room = room;
    }

    /** All that are chosen, and the one that is pointed at. */
    Stream<Sketch.Stroke> of(Selection chosen, Optional<Part> pointed) {
        return Stream.concat(
                chosen.parts().stream().flatMap(part -> mark(part, true)),
                pointed.filter(part -> !chosen.has(part)).stream().flatMap(part -> mark(part, false)));
    }

    private Stream<Sketch.Stroke> mark(Part part, boolean strong) {
        return switch (part.kind()) {
            case FITTING, TAP, GANG_TAP, FEED, LISTENER ->
                Places.point(room, part).stream().map(at -> new Sketch.Ring(at.xM(), at.yM(), strong));
            case CORNER -> Places.point(room, part).stream().map(at -> new Sketch.Held(at.xM(), at.yM()));
            case DOOR -> Places.of(room, part).stream().map(gap -> beside(gap, strong));
            case WALL -> wall(part.number()).map(wall -> beside(wall, strong));
            case RACK, SHELF, TANK, OUTLET, RUN, GANG, BLOWER -> Stream.empty();
        };
    }

    private Stream<Shell.Wall> wall(int number) {
        return room.shell().walls().stream().skip(number).limit(1);
    }

    private static Sketch.Stroke beside(Box gap, boolean strong) {
        return new Sketch.Beside(gap.fromXM(), gap.fromYM(), gap.toXM(), gap.toYM(), strong);
    }

    private static Sketch.Stroke beside(Shell.Wall wall, boolean strong) {
        return new Sketch.Beside(wall.fromXM(), wall.fromYM(), wall.toXM(), wall.toYM(), strong);
    }
}
