package lungfish.roomfile;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lungfish.json.NumberText;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Building;
import lungfish.room.Log;
import lungfish.room.Reading;
import lungfish.room.Room;

/**
 * The log makes sense by itself. What it says of an outlet, a valve or a blower that is no longer there is history, and no
 * problem.
 */
final class LogChecks {
    private static final Place LOG = Place.ROOT.key("log");
    private static final Place PRICES = Place.ROOT.key("building").key("prices");

    private final Problems problems;

    private LogChecks(Problems problems) {
        this.problems = problems;
    }

    static void tell(Room room, Problems problems) {
        LogChecks checks = new LogChecks(problems);
        Spot.each(LOG.key("readings"), room.log().readings()).forEach(checks::reading);
        checks.ticks(room.log());
        checks.prices(room.building().prices());
    }

    private void reading(Spot<Reading> spot) {
        if (spot.value().measured() instanceof Reading.Fall fall && fall.toPa() >= fall.fromPa()) {
            problems.add(
                    spot.place().key("read").key("to_pa"),
                    NumberText.of(fall.toPa()) + " is no less than from_pa (" + NumberText.of(fall.fromPa()) + ")",
                    "less than " + NumberText.of(fall.fromPa()) + ": a gauge falls while nothing blows");
        }
    }

    private void ticks(Log log) {
        Set<String> met = new HashSet<>();
        for (Spot<Log.Tick> tick : Spot.each(LOG.key("ticks"), log.ticks())) {
            once(tick.place().key("step"), tick.value().step(), "step", met);
        }
    }

    private void prices(List<Building.OwnPrice> prices) {
        Set<String> met = new HashSet<>();
        for (Spot<Building.OwnPrice> price : Spot.each(PRICES, prices)) {
            once(price.place().key("part"), price.value().part(), "part", met);
        }
    }

    private void once(Place place, String name, String what, Set<String> met) {
        if (!name.isEmpty() && !met.add(name)) {
            problems.add(place, "the " + what + " \"" + name + "\" stands here already", "it once");
        }
    }
}
