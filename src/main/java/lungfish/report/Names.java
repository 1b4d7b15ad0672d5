package lungfish.report;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import lungfish.reason.PartId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Seat;
import lungfish.room.Shelf;

/** What a keeper calls each part of one room. A part that the room does not know is called by its kind and id. */
public final class Names {
    private final Map<PartId, String> names = new HashMap<>();

    /** Without a room: parts of a network, by their ids. */
    public Names() {}

    public Names(Room room) {
        room.racks().forEach(this::addRack);
        room.seats().forEach(this::addOutlet);
        room.runs().forEach(run -> names.put(run.id().part(), run.name()));
        room.blowers().forEach(blower -> names.put(blower.id().part(), blower.name()));
        room.circuits().forEach(circuit -> names.put(circuit.id().part(), circuit.name()));
    }

    private void addRack(Rack rack) {
        names.put(rack.id().part(), rack.name());
        for (int i = 0; i < rack.shelves().size(); i++) {
            Shelf shelf = rack.shelves().get(i);
            names.put(shelf.id().part(), "shelf " + (i + 1) + " of " + rack.name());
            shelf.tanks().forEach(tank -> names.put(tank.id().part(), tank.name()));
        }
    }

    private void addOutlet(Seat seat) {
        String tank = seat.tank().name();
        names.put(seat.outlet().id().part(), "outlet " + seat.outlet().id() + " (" + tank + ")");
    }

    /** "Rack B", "outlet c4-2 (40 breeder, C4)", "the inverter". */
    public String of(PartId part) {
        String known = names.get(part);
        return known != null ? known : unnamed(part);
    }

    private static String unnamed(PartId part) {
        return switch (part.kind()) {
            case ROOM -> "the room";
            case NETWORK -> part.id().isEmpty() ? "the network" : part.id();
            case OWN_CLASS -> part.id();
            default -> unnamed(part.kind().name().toLowerCase(Locale.ROOT), part.id());
        };
    }

    private static String unnamed(String kind, String id) {
        return id.isEmpty() || id.equals(kind) ? "the " + kind : kind + " " + id;
    }
}
