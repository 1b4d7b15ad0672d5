package lungfish.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Finds the things of a room by their ids. Ids that lead nowhere find nothing. */
final class Find {
    private Find() {}

    static Optional<Rack> rack(Room room, String id) {
        return first(room.racks().stream(), rack -> rack.id().text(), id);
    }

    static Optional<Rack> rackOfShelf(Room room, String shelf) {
        return room.racks().stream()
                .filter(rack -> rack.shelves().stream()
                        .anyMatch(each -> each.id().text().equals(shelf)))
                .findFirst();
    }

    static Optional<Rack> rackOfTank(Room room, TankId tank) {
        return room.racks().stream()
                .filter(rack -> rack.tanks().anyMatch(each -> each.id().equals(tank)))
                .findFirst();
    }

    static Optional<Shelf> shelf(Room room, String id) {
        return first(shelves(room), shelf -> shelf.id().text(), id);
    }

    static Optional<Tank> tank(Room room, String id) {
        return first(tanks(room), tank -> tank.id().text(), id);
    }

    static Optional<Outlet> outlet(Room room, String id) {
        return first(outlets(room), outlet -> outlet.id().text(), id);
    }

    static Optional<Run> run(Room room, String id) {
        return first(room.runs().stream(), run -> run.id().text(), id);
    }

    static Optional<Gang> gang(Room room, String id) {
        return first(room.gangs().stream(), gang -> gang.id().text(), id);
    }

    static Optional<Blower> blower(Room room, String id) {
        return first(room.blowers().stream(), blower -> blower.id().text(), id);
    }

    static Stream<Shelf> shelves(Room room) {
        return room.racks().stream().flatMap(rack -> rack.shelves().stream());
    }

    static Stream<Tank> tanks(Room room) {
        return room.racks().stream().flatMap(Rack::tanks);
    }

    static Stream<Outlet> outlets(Room room) {
        return tanks(room).flatMap(tank -> tank.outlets().stream());
    }

    /** Those of the ids that are there, in the order of the room. */
    static List<Rack> racks(Room room, Collection<RackId> ids) {
        return room.racks().stream().filter(rack -> ids.contains(rack.id())).toList();
    }

    static List<Shelf> shelves(Room room, Collection<ShelfId> ids) {
        return shelves(room).filter(shelf -> ids.contains(shelf.id())).toList();
    }

    static List<Tank> tanks(Room room, Collection<TankId> ids) {
        return tanks(room).filter(tank -> ids.contains(tank.id())).toList();
    }

    static List<Outlet> outlets(Room room, Collection<OutletId> ids) {
        return outlets(room).filter(outlet -> ids.contains(outlet.id())).toList();
    }

    static List<Run> runs(Room room, Collection<RunId> ids) {
        return room.runs().stream().filter(run -> ids.contains(run.id())).toList();
    }

    private static <T> Optional<T> first(Stream<T> all, Function<T, String> id, String wanted) {
        return all.filter(each -> id.apply(each).equals(wanted)).findFirst();
    }
}
