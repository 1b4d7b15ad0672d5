package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Ways to choose: with a rectangle, all, the next one, all of the same sort. */
public final class Selecting {
    private Selecting() {}

    /** What lies wholly within a rectangle on the floor. Tanks go with their rack; doors and walls are the room's own. */
    public static Selection within(Room room, Box box) {
        return chosen(room, part -> Marquee.holds(room, part, box));
    }

    /** What a rectangle on the floor touches. */
    public static Selection touching(Room room, Box box) {
        return chosen(room, part -> Marquee.touches(room, part, box));
    }

    private static Selection chosen(Room room, Predicate<Part> meant) {
        return Selection.of(Parts.onFloor(room).stream().filter(meant).toList());
    }

    /** The tanks of a rack that a rectangle of its front touches: along the front, and heights above the floor for y. */
    public static Selection touching(Rack rack, Box front) {
        return Selection.of(rack.shelves().stream()
                .flatMap(shelf -> shelf.tanks().stream()
                        .filter(tank -> front.touches(new Box(
                                tank.xM(),
                                shelf.heightM(),
                                tank.endXM(),
                                shelf.heightM() + tank.outside().heightM())))
                        .map(tank -> Part.tank(tank.id())))
                .toList());
    }

    /** Everything that stands on the floor or hangs above it. */
    public static Selection all(Room room) {
        return Selection.of(Parts.onFloor(room));
    }

    /** Every tank of a rack. */
    public static Selection all(Rack rack) {
        return Selection.of(rack.tanks().map(tank -> Part.tank(tank.id())).toList());
    }

    /** The one after the leading one, the first after the last; from nothing, the first. */
    public static Selection next(Room room, Selection from) {
        return stepped(room, from, 1);
    }

    /** The one before the leading one, the last before the first; from nothing, the last. */
    public static Selection previous(Room room, Selection from) {
        return stepped(room, from, -1);
    }

    private static Selection stepped(Room room, Selection from, int step) {
        List<Part> row = from.lead().map(lead -> row(room, lead)).orElseGet(() -> Parts.onFloor(room));
        if (row.isEmpty()) {
            return Selection.NONE;
        }
        int at = from.lead().map(row::indexOf).orElse(-1);
        int first = step > 0 ? 0 : row.size() - 1;
        return Selection.of(row.get(at < 0 ? first : Math.floorMod(at + step, row.size())));
    }

    /** Those that the keys walk from one: the floor, or what is of its kind in the same rack or on the same pipe. */
    private static List<Part> row(Room room, Part lead) {
        List<Part> floor = Parts.onFloor(room);
        if (floor.contains(lead)) {
            return floor;
        }
        Optional<Rack> home = rackOf(room, lead);
        return Parts.of(room, lead.kind()).stream()
                .filter(part -> home.isEmpty()
                        ? part.id().equals(lead.id())
                        : rackOf(room, part).equals(home))
                .toList();
    }

    /** The rack that a part is, or stands in; taps are where their outlet is. */
    public static Optional<Rack> rackOf(Room room, Part part) {
        return room.racks().stream().filter(rack -> isIn(rack, part)).findFirst();
    }

    /** The tank that a part is, or hangs in. */
    public static Optional<Tank> tankOf(Room room, Part part) {
        return Find.tanks(room)
                .filter(tank -> Part.tank(tank.id()).equals(part)
                        || tank.outlets().stream()
                                .anyMatch(outlet -> Part.outlet(outlet.id()).equals(part)))
                .findFirst();
    }

    private static boolean isIn(Rack rack, Part part) {
        return switch (part.kind()) {
            case RACK -> Part.rack(rack.id()).equals(part);
            case SHELF ->
                rack.shelves().stream().map(Shelf::id).map(Part::shelf).anyMatch(part::equals);
            case TANK -> rack.tanks().anyMatch(tank -> Part.tank(tank.id()).equals(part));
            case OUTLET, TAP ->
                rack.tanks()
                        .flatMap(tank -> tank.outlets().stream())
                        .anyMatch(outlet -> outlet.id().text().equals(part.id()));
            default -> false;
        };
    }

    /** All of the sort of the leading one: outlets of the same device, fittings and machines alike, otherwise all of its kind. */
    public static Selection alike(Room room, Selection from) {
        return from.lead()
                .map(lead -> Selection.of(Parts.of(room, lead.kind()).stream()
                                .filter(part -> sort(room, part).equals(sort(room, lead)))
                                .toList())
                        .with(lead))
                .orElse(Selection.NONE);
    }

    private static Object sort(Room room, Part part) {
        return switch (part.kind()) {
            case OUTLET, TAP -> Find.outlet(room, part.id()).map(Outlet::device);
            case BLOWER -> Find.blower(room, part.id()).map(blower -> List.of(blower.role(), blower.machine()));
            case FITTING ->
                Find.run(room, part.id())
                        .filter(run -> part.number() < run.fittings().size())
                        .map(run -> run.fittings().get(part.number()).kind());
            case RUN -> Find.run(room, part.id()).map(run -> List.of(run.role(), run.size()));
            default -> part.kind();
        };
    }

    /** What of a selection is in the room still: after an undo, or an edit. */
    public static Selection still(Room room, Selection chosen) {
        return Selection.of(chosen.parts().stream()
                .filter(part -> Parts.of(room, part.kind()).contains(part))
                .toList());
    }

    /** In which order what is new is looked for where nothing new stands on the floor. */
    private static final List<Part.Kind> NEW_ONES = List.of(
            Part.Kind.SHELF, Part.Kind.TANK, Part.Kind.OUTLET, Part.Kind.FITTING, Part.Kind.DOOR, Part.Kind.WALL);

    /**
     * What an edit brought: racks, pipes and machines that were not there before; where there are none, shelves; else tanks,
     * outlets, fittings, doors, walls.
     */
    public static Selection added(Room before, Room after) {
        List<Part> old = Parts.onFloor(before);
        List<Part> floor = Parts.onFloor(after).stream()
                .filter(part -> !old.contains(part))
                .toList();
        if (!floor.isEmpty()) {
            return Selection.of(floor);
        }
        return NEW_ONES.stream()
                .map(kind -> fresh(before, after, kind))
                .filter(parts -> !parts.isEmpty())
                .findFirst()
                .map(Selection::of)
                .orElse(Selection.NONE);
    }

    private static List<Part> fresh(Room before, Room after, Part.Kind kind) {
        Set<Part> old = Set.copyOf(Parts.of(before, kind));
        return Parts.of(after, kind).stream()
                .filter(part -> !old.contains(part))
                .toList();
    }
}
