package lungfish.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;

/** Edits of racks. They are moved by {@link Moves}, aligned by {@link Arranging}, drawn by {@link RackDrawing}. */
public final class RackEdits {
    private static final int QUARTERS = 4;

    private RackEdits() {}

    /** Puts a rack's first corner (that of the least x and y) there, m. */
    public static Attempt place(Room room, RackId id, double xM, double yM) {
        return change(room, List.of(id), "Move ", rack -> rack.movedTo(xM, yM));
    }

    /** This wide along the front and this deep, m; the first corner stays, and tanks stay where they are on their shelves. */
    public static Attempt resize(Room room, RackId id, double widthM, double depthM) {
        return change(room, List.of(id), "Resize ", rack -> rack.sized(widthM, depthM));
    }

    /** Takes up this much of the floor, as a dragged edge or corner says. Tanks stay where they are from the left end. */
    public static Attempt stretch(Room room, RackId id, Box floor) {
        return change(room, List.of(id), "Resize ", rack -> stretched(rack, floor));
    }

    private static Rack stretched(Rack rack, Box floor) {
        boolean alongX = rack.turn() == Rack.Turn.NONE || rack.turn() == Rack.Turn.HALF;
        double spanXM = Metres.clean(floor.spanXM());
        double spanYM = Metres.clean(floor.spanYM());
        return rack.movedTo(Metres.clean(floor.fromXM()), Metres.clean(floor.fromYM()))
                .sized(alongX ? spanXM : spanYM, alongX ? spanYM : spanXM);
    }

    public static Attempt rename(Room room, RackId id, String name) {
        Optional<Refused> trouble = Names.trouble(name);
        return trouble.isPresent() ? trouble.get() : change(room, List.of(id), "Rename ", rack -> rack.named(name));
    }

    /** Thought of, not there yet: it counts as room to grow. */
    public static Attempt markPlanned(Room room, Collection<RackId> ids) {
        return change(room, ids, "Mark as planned: ", rack -> rack.at(Rack.Stage.PLANNED));
    }

    /** It stands there. */
    public static Attempt markInPlace(Room room, Collection<RackId> ids) {
        return change(room, ids, "Mark as in place: ", rack -> rack.at(Rack.Stage.IN_PLACE));
    }

    /** What it weighs when empty, kg; empty: unknown. */
    public static Attempt weigh(Room room, Collection<RackId> ids, OptionalDouble massKg) {
        return change(room, ids, "Set the mass of ", rack -> rack.weighing(massKg));
    }

    /** Turns by quarters, clockwise as seen from above (a negative number: the other way), about the middle of them all. */
    public static Attempt turn(Room room, Collection<RackId> ids, int quarters) {
        List<Rack> racks = Find.racks(room, ids);
        if (racks.isEmpty()) {
            return Refused.nothing("rack");
        }
        Box all = Box.around(racks.stream().map(Box::of).toList());
        int times = Math.floorMod(quarters, QUARTERS);
        return change(room, ids, "Turn ", rack -> turned(rack, all.midXM(), all.midYM(), times));
    }

    private static Rack turned(Rack rack, double aboutXM, double aboutYM, int times) {
        Box floor = Box.of(rack);
        double fromXM = floor.midXM() - aboutXM;
        double fromYM = floor.midYM() - aboutYM;
        Rack turned = rack;
        for (int i = 0; i < times; i++) {
            double wasXM = fromXM;
            fromXM = -fromYM;
            fromYM = wasXM;
            turned = turned.turned(turned.turn().further());
        }
        return turned.movedTo(
                Metres.clean(aboutXM + fromXM - turned.spanXM() / 2),
                Metres.clean(aboutYM + fromYM - turned.spanYM() / 2));
    }

    private static Attempt change(Room room, Collection<RackId> ids, String verb, UnaryOperator<Rack> change) {
        List<Rack> racks = Find.racks(room, ids);
        return racks.isEmpty()
                ? Refused.nothing("rack")
                : Edit.tried(
                        room,
                        verb + Words.racks(racks),
                        before -> Each.rack(before, Each.where(rack -> ids.contains(rack.id()), change)));
    }
}
