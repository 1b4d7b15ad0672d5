package lungfish.siphon;

import java.util.ArrayList;
import java.util.List;
import lungfish.demand.Need;
import lungfish.room.Point;

/** What is open to water between the tanks that one small pump feeds: its airlines meet at it. */
final class PumpWays {
    private PumpWays() {}

    /** Pumps of which the place is not known are left out: their height says whether water runs. */
    static Waterways of(List<Siphons.Pump> pumps) {
        List<Point> places = new ArrayList<>();
        List<Waterways.Hung> outlets = new ArrayList<>();
        List<Waterways.Standing> machines = new ArrayList<>();
        for (Siphons.Pump pump : pumps) {
            pump.machine().siting().place().ifPresent(place -> {
                machines.add(new Waterways.Standing(pump.machine(), place, places.size()));
                outlets.addAll(hung(pump, places.size()));
                places.add(place);
            });
        }
        return new Waterways(places, List.of(), outlets, machines);
    }

    private static List<Waterways.Hung> hung(Siphons.Pump pump, int node) {
        return pump.served().stream()
                .filter(PumpWays::isOpen)
                .map(need -> new Waterways.Hung(need, node))
                .toList();
    }

    private static boolean isOpen(Need need) {
        return need.seat().outlet().valve().stream()
                .allMatch(valve -> valve.opening().orElse(1) > 0);
    }
}
