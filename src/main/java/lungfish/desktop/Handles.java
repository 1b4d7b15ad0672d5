package lungfish.desktop;

import static java.util.stream.Collectors.toCollection;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import lungfish.drawing.Hit;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.reason.PartId;
import lungfish.room.BlowerId;
import lungfish.room.GangId;
import lungfish.room.OutletId;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.room.ShelfId;
import lungfish.room.TankId;

/** From what the drawing and the plan name to what an edit takes hold of, and back. */
final class Handles {
    private Handles() {}

    /** What can be taken hold of; empty for batteries, circuits and the room itself. */
    static Optional<Part> of(PartId named) {
        return switch (named.kind()) {
            case RACK -> Optional.of(Part.rack(new RackId(named.id())));
            case SHELF -> Optional.of(Part.shelf(new ShelfId(named.id())));
            case TANK -> Optional.of(Part.tank(new TankId(named.id())));
            case OUTLET -> Optional.of(Part.outlet(new OutletId(named.id())));
            case RUN -> Optional.of(Part.run(new RunId(named.id())));
            case GANG -> Optional.of(Part.gang(new GangId(named.id())));
            case BLOWER -> Optional.of(Part.blower(new BlowerId(named.id())));
            case ROOM, BATTERY, INVERTER, ALARM, STIRRER, CIRCUIT, OWN_CLASS, NETWORK -> Optional.empty();
        };
    }

    /** What the pointer is on. A tap is that of the outlet or gang that it feeds. */
    static Optional<Part> of(Hit hit) {
        String id = hit.part().id();
        return switch (hit.kind()) {
            case TAP ->
                Optional.of(
                        hit.part().kind() == PartId.Kind.GANG
                                ? Part.gangTap(new GangId(id))
                                : Part.tap(new OutletId(id)));
            case LISTENER -> Optional.of(Part.listener());
            case FITTING -> Optional.of(Part.fitting(new RunId(id), hit.number()));
            case DOOR -> Optional.of(Part.door(hit.number()));
            case WALL -> Optional.of(Part.wall(hit.number()));
            case OUTLET, GANG, BLOWER, RUN, TANK, SHELF, RACK -> of(hit.part());
        };
    }

    /** What a drag from there moves over the floor: tanks and outlets go with their rack. */
    static Part carrier(Room room, Part part) {
        return switch (part.kind()) {
            case TANK, OUTLET, SHELF ->
                Selecting.rackOf(room, part).map(rack -> Part.rack(rack.id())).orElse(part);
            default -> part;
        };
    }

    /** The same for all that is chosen. */
    static Selection carriers(Room room, Selection chosen) {
        return Selection.of(chosen.parts().stream()
                .map(part -> carrier(room, part))
                .distinct()
                .toList());
    }

    /** What a drawing frames as chosen. */
    static Set<PartId> named(Selection selection) {
        return selection.parts().stream()
                .flatMap(part -> framed(part).stream())
                .collect(toCollection(LinkedHashSet::new));
    }

    /** What a drawing frames of what is pointed at. */
    static Optional<PartId> framed(Hit hit) {
        return of(hit).map(Handles::framed).orElse(Optional.of(hit.part()));
    }

    /** What a drawing frames of a part that is pointed at: of a small thing nothing but itself, which {@link SmallMarks} does. */
    static Optional<PartId> framed(Part part) {
        return switch (part.kind()) {
            case FITTING, CORNER, FEED, DOOR, WALL, LISTENER -> Optional.empty();
            default -> Optional.of(named(part));
        };
    }

    private static PartId named(Part part) {
        return switch (part.kind()) {
            case RACK -> new PartId(PartId.Kind.RACK, part.id());
            case SHELF -> new PartId(PartId.Kind.SHELF, part.id());
            case TANK -> new PartId(PartId.Kind.TANK, part.id());
            case OUTLET, TAP -> new PartId(PartId.Kind.OUTLET, part.id());
            case RUN, CORNER, FITTING -> new PartId(PartId.Kind.RUN, part.id());
            case GANG, GANG_TAP -> new PartId(PartId.Kind.GANG, part.id());
            case BLOWER, FEED -> new PartId(PartId.Kind.BLOWER, part.id());
            case LISTENER, DOOR, WALL -> PartId.ROOM;
        };
    }
}
