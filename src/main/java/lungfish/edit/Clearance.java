package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.room.Room;
import lungfish.room.Shell;

/**
 * A live dimension: how far a rectangle is from the nearest thing on one side, and the line to draw, m.
 *
 * @param words what it is measured to: "wall", "rack B"
 */
public record Clearance(
        Side side, double lengthM, double fromXM, double fromYM, double toXM, double toYM, String words) {
    /** Sides of the drawing: left is towards less x, top towards less y. */
    public enum Side {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM
    }

    /** Something that one may bump into, as a rectangle. */
    private record Thing(Box box, String words) {}

    private static final double TOUCHING_M = 1e-6;

    /** To the nearest wall or rack on each side, as far as there is one; things that move along are looked through. */
    public static List<Clearance> around(Room room, Box box, Selection moving) {
        List<Thing> things = Stream.concat(
                        room.racks().stream()
                                .filter(rack -> !moving.has(Part.rack(rack.id())))
                                .map(rack -> new Thing(Box.of(rack), Words.rack(rack))),
                        walls(room.shell()))
                .toList();
        List<Clearance> all = new ArrayList<>();
        for (Side side : Side.values()) {
            nearest(box, things, side).ifPresent(all::add);
        }
        return all;
    }

    private static Stream<Thing> walls(Shell shell) {
        double l = shell.lengthM();
        double w = shell.widthM();
        Stream<Thing> outer = Stream.of(
                        new Box(0, 0, 0, w), new Box(l, 0, l, w), new Box(0, 0, l, 0), new Box(0, w, l, w))
                .map(box -> new Thing(box, "wall"));
        Stream<Thing> inner = shell.walls().stream()
                .map(wall ->
                        new Thing(Box.between(wall.fromXM(), wall.fromYM(), wall.toXM(), wall.toYM()), "inner wall"));
        return Stream.concat(outer, inner);
    }

    private static Optional<Clearance> nearest(Box box, List<Thing> things, Side side) {
        Clearance best = null;
        for (Thing thing : things) {
            OptionalDouble gap = gapM(box, thing.box(), side);
            if (gap.isPresent() && (best == null || gap.getAsDouble() < best.lengthM)) {
                best = line(box, gap.getAsDouble(), side, thing.words());
            }
        }
        return Optional.ofNullable(best);
    }

    /** Empty where the other lies on another side, or beside the way. */
    private static OptionalDouble gapM(Box box, Box other, Side side) {
        boolean acrossTheWay =
                switch (side) {
                    case LEFT, RIGHT -> other.fromYM() < box.toYM() && other.toYM() > box.fromYM();
                    case TOP, BOTTOM -> other.fromXM() < box.toXM() && other.toXM() > box.fromXM();
                };
        double gap =
                switch (side) {
                    case LEFT -> box.fromXM() - other.toXM();
                    case RIGHT -> other.fromXM() - box.toXM();
                    case TOP -> box.fromYM() - other.toYM();
                    case BOTTOM -> other.fromYM() - box.toYM();
                };
        return acrossTheWay && gap >= -TOUCHING_M ? OptionalDouble.of(Math.max(0, gap)) : OptionalDouble.empty();
    }

    private static Clearance line(Box box, double gapM, Side side, String words) {
        double x = box.midXM();
        double y = box.midYM();
        return switch (side) {
            case LEFT -> new Clearance(side, gapM, box.fromXM(), y, box.fromXM() - gapM, y, words);
            case RIGHT -> new Clearance(side, gapM, box.toXM(), y, box.toXM() + gapM, y, words);
            case TOP -> new Clearance(side, gapM, x, box.fromYM(), x, box.fromYM() - gapM, words);
            case BOTTOM -> new Clearance(side, gapM, x, box.toYM(), x, box.toYM() + gapM, words);
        };
    }
}
