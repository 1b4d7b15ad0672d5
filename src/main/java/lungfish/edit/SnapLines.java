package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shell;

/** The lines of a room that things snap to: walls and the edges and middles of racks that do not move themselves. */
final class SnapLines {
    private static final double STRAIGHT_M = 0.001;

    private final Shell shell;
    private final List<Rack> racks;
    private final double standOffM;

    SnapLines(Room room, Selection moving, double standOffM) {
        this.standOffM = standOffM;
        this.shell = room.shell();
        this.racks = room.racks().stream()
                .filter(rack -> !moving.has(Part.rack(rack.id())))
                .toList();
    }

    /** At which x edges snap. */
    List<SnapLine> downEdges() {
        List<SnapLine> lines = new ArrayList<>();
        lines.add(outer(standOffM, shell.widthM()));
        lines.add(outer(shell.lengthM() - standOffM, shell.widthM()));
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
        lines.add(outer(standOffM, shell.lengthM()));
        lines.add(outer(shell.widthM() - standOffM, shell.lengthM()));
        innerAcross().forEach(lines::add);
        for (Rack rack : racks) {
            Box box = Box.of(rack);
            lines.add(line(rack, box.fromYM(), box.fromXM(), box.toXM(), "top edge"));
            lines.add(line(rack, box.toYM(), box.fromXM(), box.toXM(), "bottom edge"));
        }
        return lines;
    }

    private SnapLine outer(double atM, double toM) {
        return new SnapLine(Guide.Reason.WALL, Metres.clean(atM), 0, toM, standOffM > 0 ? "along the wall" : "wall");
    }

    /** What stands off a wall may do so on either side of an inner one. */
    private Stream<SnapLine> inner(double atM, double oneM, double otherM) {
        String words = standOffM > 0 ? "along the inner wall" : "inner wall";
        return DoubleStream.of(atM - standOffM, atM + standOffM)
                .distinct()
                .mapToObj(at -> new SnapLine(
                        Guide.Reason.WALL, Metres.clean(at), Math.min(oneM, otherM), Math.max(oneM, otherM), words));
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
                .flatMap(wall -> inner(wall.fromXM(), wall.fromYM(), wall.toYM()));
    }

    private Stream<SnapLine> innerAcross() {
        return shell.walls().stream()
                .filter(wall -> Math.abs(wall.fromYM() - wall.toYM()) <= STRAIGHT_M)
                .flatMap(wall -> inner(wall.fromYM(), wall.fromXM(), wall.toXM()));
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
