package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.Box;
import lungfish.edit.Moves;
import lungfish.edit.Part;
import lungfish.edit.Places;
import lungfish.edit.RoomEdits;
import lungfish.edit.Selection;
import lungfish.edit.Snap;
import lungfish.edit.Snapped;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shell;

/** A drag of what is chosen over the floor: where it comes to rest, what comes of it, and what is painted meanwhile. */
record Moving(View view, Selection moving, double dxM, double dyM) {
    private Room room() {
        return view.desk().room();
    }

    Dragging.Dragged dragged(Spot at) {
        Optional<Box> box = Boxes.around(room(), moving).map(all -> all.moved(dxM, dyM));
        Snapped rest = box.map(snap(at)::box).orElse(new Snapped(0, 0, List.of()));
        Stream<Sketch.Stroke> ghost = box.map(all -> all.moved(rest.dxM(), rest.dyM())).stream()
                .flatMap(all -> Stream.concat(
                        Stream.of(new Sketch.Ghost(Boxes.shape(all))), Resting.clearances(view, all, moving)));
        Stream<Sketch.Stroke> beside = only().stream().flatMap(this::beside);
        return new Dragging.Dragged(
                door().orElseGet(() -> Moves.by(room(), moving, dxM + rest.dxM(), dyM + rest.dyM())),
                Stream.of(ghost, beside, Resting.guides(rest.guides()))
                        .flatMap(strokes -> strokes)
                        .toList(),
                List.of());
    }

    private Optional<Part> only() {
        return moving.parts().size() == 1 ? moving.lead() : Optional.empty();
    }

    /** A single door goes round the corners of the room. */
    private Optional<Attempt> door() {
        return only().filter(part -> part.kind() == Part.Kind.DOOR).flatMap(part -> Places.of(room(), part)
                .map(gap -> gap.moved(dxM, dyM))
                .map(gap -> RoomEdits.placeDoor(room(), part.number(), gap.midXM(), gap.midYM())));
    }

    private Snap snap(Spot at) {
        Snap snap = Resting.snap(view, moving, at);
        return only().filter(part -> part.kind() == Part.Kind.RUN)
                .flatMap(part -> run(part.id(), room()))
                .map(run -> Resting.clipped(view, snap, run.size()))
                .orElse(snap);
    }

    private static Optional<Run> run(String id, Room room) {
        return room.runs().stream()
                .filter(run -> run.id().equals(new RunId(id)))
                .findFirst();
    }

    /** How far what slides along a pipe or a wall is from what bounds it. */
    private Stream<Sketch.Stroke> beside(Part part) {
        Room seen = view.desk().seen();
        return switch (part.kind()) {
            case FITTING ->
                run(part.id(), seen).stream().flatMap(run -> run.fittings().stream()
                        .skip(part.number())
                        .limit(1)
                        .flatMap(fitting -> Resting.alongLeg(run, fitting.atM())));
            case TAP, GANG_TAP, FEED -> Places.seat(seen, part).stream().flatMap(seat -> alongLeg(seen, seat));
            case DOOR -> Places.of(seen, part).stream().flatMap(gap -> alongWall(gap, seen.shell()));
            default -> Stream.empty();
        };
    }

    private static Stream<Sketch.Stroke> alongLeg(Room room, Outlet.OnRun seat) {
        return run(seat.run().text(), room).stream().flatMap(run -> Resting.alongLeg(run, seat.atM()));
    }

    private static Stream<Sketch.Stroke> alongWall(Box gap, Shell shell) {
        boolean side = gap.spanXM() < gap.spanYM();
        return side
                ? Stream.of(
                        new Sketch.Length(gap.fromXM(), 0, gap.fromXM(), gap.fromYM()),
                        new Sketch.Length(gap.fromXM(), gap.toYM(), gap.fromXM(), shell.widthM()))
                : Stream.of(
                        new Sketch.Length(0, gap.fromYM(), gap.fromXM(), gap.fromYM()),
                        new Sketch.Length(gap.toXM(), gap.fromYM(), shell.lengthM(), gap.fromYM()));
    }
}
