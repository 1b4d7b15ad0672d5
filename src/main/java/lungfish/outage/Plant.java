package lungfish.outage;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.demand.Need;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/** What gives the air of a room: the central blower as planned, or the small pumps of today. */
interface Plant {
    /** The outlets that it feeds. */
    List<Need> needs();

    /** Free air of each outlet in a state, m³/s, in the order of {@link #needs}. */
    List<Double> airM3PerS(State state);

    /** What it draws when all is well, W. */
    double watts();

    /** What it draws with only the essential outlets on; absent where none is marked, or it cannot be cut down. */
    OptionalDouble essentialWatts();

    /** The most that it draws for a moment when it starts, W. */
    double startingWatts();

    /** The same with the standbys of another version of its room. */
    Plant standingBy(Room room);

    /** Its blowers. */
    Set<BlowerId> blowers();
}
