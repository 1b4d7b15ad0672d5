package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;

/** Puts racks in line with each other, and at equal gaps. Sides are those of the drawing: left is the least x, top the least y. */
public final class Arranging {
    private Arranging() {}

    /** What is brought in line. */
    public enum Edge {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM,
        MIDDLE_ACROSS,
        MIDDLE_DOWN
    }

    /** Along which way gaps are made equal. */
    public enum Axis {
        ACROSS,
        DOWN
    }

    /** Brings racks in line with the last of them. */
    public static Attempt align(Room room, List<RackId> ids, Edge edge) {
        List<Rack> racks = Find.racks(room, ids);
        if (racks.size() < 2) {
            return Refused.because("Fewer than two racks are chosen.", "Choose those to be brought in line.");
        }
        RackId lead = ids.get(ids.size() - 1);
        return Edit.tried(room, "Align " + Words.racks(racks), before -> aligned(before, ids, lead, edge));
    }

    private static Room aligned(Room room, List<RackId> ids, RackId lead, Edge edge) {
        return Find.rack(room, lead.text())
                .map(Box::of)
                .map(to ->
                        Each.rack(room, Each.where(rack -> ids.contains(rack.id()), rack -> aligned(rack, to, edge))))
                .orElse(room);
    }

    private static Rack aligned(Rack rack, Box to, Edge edge) {
        Box box = Box.of(rack);
        return switch (edge) {
            case LEFT -> Moves.moved(rack, to.fromXM() - box.fromXM(), 0);
            case RIGHT -> Moves.moved(rack, to.toXM() - box.toXM(), 0);
            case TOP -> Moves.moved(rack, 0, to.fromYM() - box.fromYM());
            case BOTTOM -> Moves.moved(rack, 0, to.toYM() - box.toYM());
            case MIDDLE_ACROSS -> Moves.moved(rack, to.midXM() - box.midXM(), 0);
            case MIDDLE_DOWN -> Moves.moved(rack, 0, to.midYM() - box.midYM());
        };
    }

    /** Makes the gaps between racks equal; the outermost two stay. */
    public static Attempt distribute(Room room, List<RackId> ids, Axis axis) {
        List<Rack> racks = Find.racks(room, ids);
        if (racks.size() < 3) {
            return Refused.because("Fewer than three racks are chosen.", "Choose the outer two and those between.");
        }
        return Edit.tried(room, "Distribute " + Words.racks(racks), before -> spread(before, ids, axis));
    }

    private static Room spread(Room room, List<RackId> ids, Axis axis) {
        ToDoubleFunction<Rack> from = rack -> axis == Axis.ACROSS ? rack.xM() : rack.yM();
        ToDoubleFunction<Rack> span = rack -> axis == Axis.ACROSS ? rack.spanXM() : rack.spanYM();
        List<Rack> racks = new ArrayList<>(Find.racks(room, ids));
        racks.sort(Comparator.comparingDouble(rack -> from.applyAsDouble(rack) + span.applyAsDouble(rack) / 2));
        Rack last = racks.get(racks.size() - 1);
        double wholeM = from.applyAsDouble(last) + span.applyAsDouble(last) - from.applyAsDouble(racks.get(0));
        double gapM = (wholeM - racks.stream().mapToDouble(span).sum()) / (racks.size() - 1);
        Map<RackId, Double> places = new HashMap<>();
        double atM = from.applyAsDouble(racks.get(0));
        for (Rack rack : racks) {
            places.put(rack.id(), Metres.clean(atM));
            atM += span.applyAsDouble(rack) + gapM;
        }
        return Each.rack(room, rack -> put(rack, places.getOrDefault(rack.id(), from.applyAsDouble(rack)), axis));
    }

    private static Rack put(Rack rack, double atM, Axis axis) {
        return axis == Axis.ACROSS ? rack.movedTo(atM, rack.yM()) : rack.movedTo(rack.xM(), atM);
    }
}
