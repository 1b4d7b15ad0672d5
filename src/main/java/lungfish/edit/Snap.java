package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.catalogue.PipeSize;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/**
 * Draws what is dragged or drawn to walls, racks, pipes and the grid, where they are near enough; and says why. Walls,
 * racks and pipes win over the grid. What moves itself draws nothing.
 *
 * @param gridM step of the grid, m; empty: none
 * @param toleranceM how near is near enough, m: some pixels, in the eyes of whoever looks
 * @param standOffM how far from the face of a wall it comes to rest, m: pipe hangs in clips, racks stand at the wall itself
 */
public record Snap(Room room, Selection moving, OptionalDouble gridM, double toleranceM, double standOffM) {
    /** The foot of a pipe clip holds the pipe so far off the wall: a finger's width. Common practice, no source. */
    private static final double CLIP_M = 0.015;

    /** Of what stands at the wall itself. */
    public Snap(Room room, Selection moving, OptionalDouble gridM, double toleranceM) {
        this(room, moving, gridM, toleranceM, 0);
    }

    /** The same for pipe so thick: its middle stays half of that, and the foot of a clip, off the walls. */
    public Snap clipped(PipeSize pipe) {
        return new Snap(room, moving, gridM, toleranceM, Metres.clean(pipe.outsideM() / 2 + CLIP_M));
    }

    /** Where a rectangle comes to rest: its edges at walls and edges, its middle at middles. */
    public Snapped box(Box box) {
        SnapLines lines = new SnapLines(room, moving, standOffM);
        Optional<SnapLine.Pull> across = pull(
                lines.downEdges(), List.of(box.fromXM(), box.toXM()), lines.downMiddles(), box.midXM(), box.fromXM());
        Optional<SnapLine.Pull> down = pull(
                lines.acrossEdges(),
                List.of(box.fromYM(), box.toYM()),
                lines.acrossMiddles(),
                box.midYM(),
                box.fromYM());
        Box rest = box.moved(by(across), by(down));
        List<Guide> guides = Stream.concat(
                        across.stream().map(pull -> pull.line().down(rest.fromYM(), rest.toYM())),
                        down.stream().map(pull -> pull.line().across(rest.fromXM(), rest.toXM())))
                .toList();
        return new Snapped(by(across), by(down), guides);
    }

    private static double by(Optional<SnapLine.Pull> pull) {
        return pull.map(SnapLine.Pull::byM).orElse(0.0);
    }

    private Optional<SnapLine.Pull> pull(
            List<SnapLine> edgeLines,
            List<Double> edgesM,
            List<SnapLine> middleLines,
            double middleM,
            double gridEdgeM) {
        Optional<SnapLine.Pull> edge = SnapLine.nearest(edgeLines, edgesM, toleranceM);
        Optional<SnapLine.Pull> middle = SnapLine.nearest(middleLines, List.of(middleM), toleranceM);
        boolean middleIsNearer = middle.isPresent() && (edge.isEmpty() || Math.abs(by(middle)) < Math.abs(by(edge)));
        Optional<SnapLine.Pull> thing = middleIsNearer ? middle : edge;
        return thing.or(() -> SnapLine.nearest(SnapLines.grid(gridM, gridEdgeM), List.of(gridEdgeM), toleranceM));
    }

    /** Where a single point comes to rest: a machine, a tap, an end of a pipe. The end of a pipe meets its own other end. */
    public SnappedPoint point(Point point) {
        return SeenPipe.otherEnd(room, moving)
                .filter(end -> planM(end, point) <= toleranceM)
                .map(Snap::closing)
                .orElseGet(() -> next(List.of(), point));
    }

    /** Where a point on the floor comes to rest, whatever pipes pass above: a corner of a rack, an end of a wall. */
    public SnappedPoint ground(Point point) {
        return ground(List.of(), point);
    }

    /** The same, for one that goes on from points drawn so far: in line with the last of them, too. */
    public SnappedPoint ground(List<Point> drawn, Point point) {
        return lined(last(drawn), point);
    }

    private static List<Point> last(List<Point> drawn) {
        return drawn.subList(Math.max(0, drawn.size() - 1), drawn.size());
    }

    /**
     * Where the next corner of a pipe comes to rest, after those drawn so far: at the start, so that it closes; on another
     * pipe, its corners before its legs; in line with the corner before; at walls, racks and grid.
     */
    public SnappedPoint next(List<Point> drawn, Point point) {
        if (drawn.size() >= 3 && meets(drawn.get(0), point)) {
            return closing(drawn.get(0));
        }
        return SeenPipe.nearest(room, moving, point, toleranceM, toleranceM)
                .map(Snap::on)
                .orElseGet(() -> lined(last(drawn), point));
    }

    /** Where something that sits on a pipe comes to rest, corners or not; empty where no pipe is near enough. */
    public Optional<SnappedPoint> onPipe(Point point) {
        return SeenPipe.nearest(room, moving, point, toleranceM, 0).map(Snap::on);
    }

    /** Where a corner of a pipe comes to rest that lies between others: in line with each of them, too. */
    public SnappedPoint corner(List<Point> neighbours, Point point) {
        SnappedPoint rest = point(point);
        boolean isOnPipe = rest.closes() || rest.onto().isPresent();
        return isOnPipe ? rest : lined(neighbours, point);
    }

    private static SnappedPoint on(SeenPipe pipe) {
        return new SnappedPoint(pipe.place(), List.of(pipe.guide()), Optional.of(pipe.seat()), false);
    }

    /** Near enough itself; or where the start was pointed at, before it was drawn to a wall. */
    private boolean meets(Point start, Point point) {
        return planM(start, point) <= toleranceM
                || planM(start, lined(List.of(), point).place()) <= Run.TOUCH_M;
    }

    private static SnappedPoint closing(Point start) {
        Guide guide = new Guide(
                Guide.Reason.START, start.xM(), start.yM(), start.xM(), start.yM(), "the start, which closes the loop");
        return new SnappedPoint(start, List.of(guide), Optional.empty(), true);
    }

    private static double planM(Point one, Point other) {
        return Math.hypot(one.xM() - other.xM(), one.yM() - other.yM());
    }

    private SnappedPoint lined(List<Point> others, Point point) {
        SnapLines lines = new SnapLines(room, moving, standOffM);
        List<SnapLine> downs = new ArrayList<>(lines.downEdges());
        List<SnapLine> acrosses = new ArrayList<>(lines.acrossEdges());
        for (Point other : others) {
            downs.add(new SnapLine(Guide.Reason.LINE, other.xM(), other.yM(), other.yM(), "straight on"));
            acrosses.add(new SnapLine(Guide.Reason.LINE, other.yM(), other.xM(), other.xM(), "straight on"));
        }
        Optional<SnapLine.Pull> across = pull(downs, List.of(point.xM()), List.of(), point.xM(), point.xM());
        Optional<SnapLine.Pull> down = pull(acrosses, List.of(point.yM()), List.of(), point.yM(), point.yM());
        Point rest = new Point(point.xM() + by(across), point.yM() + by(down), point.zM());
        List<Guide> guides = Stream.concat(
                        across.stream().map(pull -> pull.line().down(rest.yM(), rest.yM())),
                        down.stream().map(pull -> pull.line().across(rest.xM(), rest.xM())))
                .toList();
        return new SnappedPoint(rest, guides, Optional.empty(), false);
    }
}
