package lungfish.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import lungfish.room.Rack;
import lungfish.room.Room;

/**
 * A room as it is drawn for one step of its growth.
 *
 * @param room with all racks of that step and of those before it in place
 */
public record Grown(Stage.When when, Room room) {
    /** The room as it is now, then each step that is planned, the first first. */
    public static List<Grown> steps(Room drawn) {
        SortedSet<Integer> numbers = new TreeSet<>();
        numbers.add(0);
        drawn.racks().stream()
                .filter(Rack::isPlanned)
                .forEach(rack -> numbers.add(rack.step().number()));
        List<Grown> steps = new ArrayList<>();
        for (int number : numbers) {
            Room room = with(drawn, rack -> rack.step().number() <= number);
            steps.add(new Grown(when(drawn, number), room));
        }
        return steps;
    }

    /** The room with some of its planned racks in place. */
    static Room with(Room room, Predicate<Rack> there) {
        return room.withRacks(room.racks().stream()
                .map(rack -> rack.isPlanned() && there.test(rack) ? rack.at(Rack.Stage.IN_PLACE) : rack)
                .toList());
    }

    private static Stage.When when(Room drawn, int number) {
        List<Rack> racks = drawn.racks().stream()
                .filter(rack -> rack.isPlanned() && rack.step().number() == number)
                .toList();
        Optional<String> name =
                racks.stream().flatMap(rack -> rack.step().name().stream()).findFirst();
        return new Stage.When(number, name, racks.stream().map(Rack::id).toList());
    }
}
