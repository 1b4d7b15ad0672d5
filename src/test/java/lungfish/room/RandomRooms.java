package lungfish.room;

import java.util.Random;
import lungfish.catalogue.Catalogue;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Random sound rooms for properties: no piece of a room file that is not used by some of them. */
public final class RandomRooms {
    private RandomRooms() {}

    /** Rooms in which each optional value is there in half of the cases. */
    public static Arbitrary<Room> any(Catalogue catalogue) {
        return Arbitraries.randomValue(random -> new RoomMaker(random, catalogue, 0.5).room());
    }

    /** A room in which every optional value is there, the same for the same seed. */
    public static Room full(Catalogue catalogue, long seed) {
        return new RoomMaker(new Random(seed), catalogue, 1).room();
    }
}
