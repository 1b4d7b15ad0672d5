package lungfish.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.backup.BatteryRuntime;
import lungfish.catalogue.Catalogue;
import lungfish.room.Blower;
import lungfish.room.Room;

/** How the ways to give a room its air stand up to failures of machines, and of what they share. */
public final class Redundancy {
    private Redundancy() {}

    /**
     * Answers for a room.
     *
     * @param blowerW what the blower draws where it runs; absent where nobody knows: then no battery is credited
     * @param pumpsW what the small pumps of today draw together
     * @throws IllegalArgumentException if a battery names a kind that is not in the catalogue
     */
    public static StandingAnswer of(Room room, Catalogue catalogue, OptionalDouble blowerW, OptionalDouble pumpsW) {
        Told told = new Told(room, catalogue);
        Rates rates = told.rates();
        // Batteries stand behind the planned blower; only where none is planned do they stand behind the pumps.
        boolean planned = !room.blowers(Blower.Role.PLANNED).isEmpty();
        List<Carried> ofBlower = battery(room, catalogue, blowerW);
        List<Carried> ofPumps = planned ? List.of() : battery(room, catalogue, pumpsW);
        Standings standings = new Standings(
                room,
                rates,
                mainsS(rates, ofBlower, told.byGenerator(rates.noticeS(), blowerW)),
                mainsS(rates, ofPumps, told.byGenerator(rates.quietNoticeS(), pumpsW)));
        return new StandingAnswer(rates, standings.tanks(), standings.all(), told.assumptions());
    }

    private static List<Carried> battery(Room room, Catalogue catalogue, OptionalDouble watts) {
        List<Carried> carried = new ArrayList<>();
        if (watts.orElse(0) > 0) {
            BatteryRuntime.runtimeS(room, catalogue, watts.getAsDouble())
                    .ifPresent(forS -> carried.add(new Carried(0, forS)));
        }
        return carried;
    }

    private static double mainsS(Rates rates, List<Carried> battery, List<Carried> generator) {
        return Carried.mainsOffSPerYear(
                rates.mainsPerYear(),
                rates.mainsS(),
                Stream.concat(battery.stream(), generator.stream()).toList());
    }
}
