package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shell;

/** The lines of a room that things snap to: walls and the edges and middles of racks that do not move themselves. */
final class SnapLines {
    private static final double STRAIGHT_M = 0.001;

    private final Shell shell;
    private final List<Rack> racks;

    SnapLines(Room room, Selection moving) {
        this.shell = room.shell();
        this.racks = room.racks().stream()
                .filter(rack -> !moving.has(Part.rack(rack.id())))
                .toList();
    }

    /** At which x edges snap. */
    List<SnapLine> downEdges() {
        List<SnapLine> lines = new ArrayList<>();
        lines.add(new SnapLine(Guide.Reason.WALL, 0, 0, shell.widthM(), "wall"));
        lines.add(new SnapLine(Guide.Reason.WALL, shell.lengthM(), 0, shell.widthM(), "wall"));
        innerDown().forEach(lines::add);
        for (Rack rack : racks) {
            Box box = Box.of(rack);
            lines.add(line(rack, box.fromXM(), box.fromYM(), box.toYM(), "left edge"));
            lines.add(line(rack, box.toXM(), box.fromYM(), box.toYM(), "right edge"));
        }
        return lines;
    }

    /** At which y edges snap. */
    List<SnapLine> acrossEdges() {
        List<SnapLine> lines = new ArrayList<>();
        lines.add(new SnapLine(Guide.Reason.WALL, 0, 0, shell.lengthM(), "wall"));
        lines.add(new SnapLine(Guide.Reason.WALL, shell.widthM(), 0, shell.lengthM(), "wall"));
        innerAcross().forEach(lines::add);
        for (Rack rack : racks) {
            Box box = Box.of(rack);
            lines.add(line(rack, box.fromYM(), box.fromXM(), box.toXM(), "top edge"));
            lines.add(line(rack, box.toYM(), box.fromXM(), box.toXM(), "bottom edge"));
        }
        return lines;
    }

    /** At which x middles snap. */
    List<SnapLine> downMiddles() {
        return racks.stream()
                .map(rack -> line(
                        rack,
                        Box.of(rack).midXM(),
                        Box.of(rack).fromYM(),
                        Box.of(rack).toYM(),
                        "middle"))
                .toList();
    }

    /** At which y middles snap. */
    List<SnapLine> acrossMiddles() {
        return racks.stream()
                .map(rack -> line(
                        rack,
                        Box.of(rack).midYM(),
                        Box.of(rack).fromXM(),
                        Box.of(rack).toXM(),
                        "middle"))
                .toList();
    }

    private static SnapLine line(Rack rack, double atM, double fromM, double toM, String what) {
        return new SnapLine(Guide.Reason.RACK, atM, fromM, toM, Words.rack(rack) + "'s " + what);
    }

    private Stream<SnapLine> innerDown() {
        return shell.walls().stream()
                .filter(wall -> Math.abs(wall.fromXM() - wall.toXM()) <= STRAIGHT_M)
                .map(wall -> new SnapLine(
                        Guide.Reason.WALL,
                        wall.fromXM(),
                        Math.min(wall.fromYM(), wall.toYM()),
                        Math.max(wall.fromYM(), wall.toYM()),
                        "inner wall"));
    }

    private Stream<SnapLine> innerAcross() {
        return shell.walls().stream()
                .filter(wall -> Math.abs(wall.fromYM() - wall.toYM()) <= STRAIGHT_M)
                .map(wall -> new SnapLine(
                        Guide.Reason.WALL,
                        wall.fromYM(),
                        Math.min(wall.fromXM(), wall.toXM()),
                        Math.max(wall.fromXM(), wall.toXM()),
                        "inner wall"));
    }

    /** The line of the grid that is nearest to a place; empty without a grid. */
    static List<SnapLine> grid(OptionalDouble stepM, double nearM) {
        return stepM.stream()
                .filter(step -> step > 0)
                .mapToObj(step -> Metres.clean(Math.rint(nearM / step) * step))
                .map(at ->
                        new SnapLine(Guide.Reason.GRID, at, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, "grid"))
                .toList();
    }
}
