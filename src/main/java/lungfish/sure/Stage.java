package lungfish.sure;

import java.util.List;
import java.util.Optional;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Step;

/**
 * A room as it is to be at some time.
 *
 * @param name as the keeper calls it, or the number of its step
 * @param room with all that stands there by then
 */
public record Stage(String name, Room room) {
    /** The steps that a room is planned to grow in, the first first. */
    public static List<Stage> of(Room room) {
        return room.racks().stream()
                .filter(Rack::isPlanned)
                .map(rack -> rack.step().number())
                .distinct()
                .sorted()
                .map(number -> new Stage(name(room, number), grown(room, number)))
                .toList();
    }

    private static String name(Room room, int number) {
        return room.racks().stream()
                .filter(rack -> rack.isPlanned() && rack.step().number() == number)
                .map(Rack::step)
                .map(Step::name)
                .flatMap(Optional::stream)
                .findFirst()
                .orElse("Step " + number);
    }

    private static Room grown(Room room, int number) {
        return room.withRacks(room.racks().stream()
                .map(rack -> rack.isPlanned() && rack.step().number() <= number ? rack.at(Rack.Stage.IN_PLACE) : rack)
                .toList());
    }
}
