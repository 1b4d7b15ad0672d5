package lungfish.edit;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Changes all parts of one kind in a room. What does not change is shared with the room before, lists too. */
final class Each {
    private Each() {}

    static <T> List<T> changed(List<T> all, UnaryOperator<T> change) {
        return shared(all, all.stream().map(change).toList());
    }

    static <T> List<T> kept(List<T> all, Predicate<T> keep) {
        return shared(all, all.stream().filter(keep).toList());
    }

    private static <T> List<T> shared(List<T> before, List<T> after) {
        return after.equals(before) ? before : after;
    }

    static Room rack(Room room, UnaryOperator<Rack> change) {
        return room.withRacks(changed(room.racks(), change));
    }

    static Room shelf(Room room, UnaryOperator<Shelf> change) {
        return rack(room, rack -> put(rack, rack.shelves(), changed(rack.shelves(), change), rack::withShelves));
    }

    static Room tanks(Room room, UnaryOperator<List<Tank>> change) {
        return shelf(room, shelf -> put(shelf, shelf.tanks(), change.apply(shelf.tanks()), shelf::withTanks));
    }

    static Room tank(Room room, UnaryOperator<Tank> change) {
        return tanks(room, tanks -> changed(tanks, change));
    }

    static Room outlets(Room room, UnaryOperator<List<Outlet>> change) {
        return tank(room, tank -> put(tank, tank.outlets(), change.apply(tank.outlets()), tank::withOutlets));
    }

    static Room outlet(Room room, UnaryOperator<Outlet> change) {
        return outlets(room, outlets -> changed(outlets, change));
    }

    /** The whole with its new parts; the same whole where they are equal to the old. */
    private static <W, T> W put(W whole, List<T> before, List<T> after, Function<List<T>, W> with) {
        return after.equals(before) ? whole : with.apply(after);
    }

    /** A change for those that are meant; the others stay. */
    static <T> UnaryOperator<T> where(Predicate<T> meant, UnaryOperator<T> change) {
        return each -> meant.test(each) ? change.apply(each) : each;
    }
}
