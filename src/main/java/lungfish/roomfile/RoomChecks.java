package lungfish.roomfile;

import java.util.List;
import lungfish.catalogue.Catalogue;
import lungfish.json.Problem;
import lungfish.json.Problems;
import lungfish.room.Room;

/**
 * What must hold between the parts of a room before it can be filed and planned: names that are there once, names that
 * lead somewhere, sizes that fit into each other. A number that could not be read (NaN) and a name that could not be read
 * (empty) are passed over: they were told already.
 */
public final class RoomChecks {
    private RoomChecks() {}

    /** Every problem, with the place that the part has in the room's file. */
    public static List<Problem> problems(Room room, Catalogue catalogue) {
        Problems problems = new Problems();
        Spots spots = Spots.of(room);
        IdChecks.tell(spots, problems);
        new ReferenceChecks(spots, problems).tell();
        new ClassChecks(spots, catalogue, problems).tell();
        new SizeChecks(problems).tell(spots);
        new FlowChecks(problems).tell(spots);
        new RunChecks(spots, catalogue, problems).tell();
        new PlaceChecks(spots, problems).tell();
        OxygenChecks.tell(room.wishes(), catalogue, problems);
        new OwnClassChecks(problems).tell(spots);
        LogChecks.tell(room, problems);
        return problems.all();
    }
}
