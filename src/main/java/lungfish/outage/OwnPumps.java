package lungfish.outage;

import java.util.ArrayList;
import java.util.List;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.room.Room;

/**
 * A plant with the small battery pumps of the room beside it: while they run, essential outlets that get nothing from the plant
 * share what the pumps give, each no more than its target.
 */
record OwnPumps(Plant plant, double givesM3PerS) {
    static OwnPumps of(Plant plant, Room room, Catalogue catalogue) {
        double gives = room.backup()
                .batteryPumps()
                .flatMap(pumps -> catalogue
                        .backupGear(pumps.kind())
                        .map(BackupClass::ratedM3PerS)
                        .map(each -> pumps.count() * each))
                .orElse(0.0);
        return new OwnPumps(plant, gives);
    }

    /** Free air of each outlet in a state, m³/s. */
    List<Double> airM3PerS(State state) {
        List<Double> air = plant.airM3PerS(state);
        if (!state.batteryPumps()) {
            return air;
        }
        List<Need> needs = plant.needs();
        List<Integer> without = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            if (needs.get(i).essential() && air.get(i) == 0) {
                without.add(i);
            }
        }
        double asked = without.stream()
                .mapToDouble(i -> needs.get(i).targetM3PerS().si())
                .sum();
        double share = asked > 0 ? Math.min(1, givesM3PerS / asked) : 0;
        List<Double> with = new ArrayList<>(air);
        without.forEach(i -> with.set(i, share * needs.get(i).targetM3PerS().si()));
        return with;
    }
}
