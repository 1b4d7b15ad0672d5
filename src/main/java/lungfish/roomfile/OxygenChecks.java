package lungfish.roomfile;

import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.json.NumberText;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.reason.Assumable;
import lungfish.room.Wishes;

/** The alarm goes before there is danger; a level that is not said counts as it will be assumed. */
final class OxygenChecks {
    private static final Place WISHES = Place.ROOT.key("wishes");
    private static final String ALARM = "alarm_oxygen_kg_per_m3";
    private static final String DANGER = "danger_oxygen_kg_per_m3";

    private OxygenChecks() {}

    static void tell(Wishes wishes, Catalogue catalogue, Problems problems) {
        double alarm = wishes.alarmKgPerM3()
                .orElse(catalogue.assumed(Assumable.ALARM_OXYGEN).si());
        double danger = wishes.dangerKgPerM3()
                .orElse(catalogue.assumed(Assumable.DANGER_OXYGEN).si());
        if (danger < alarm || isUnread(alarm) || isUnread(danger)) {
            return;
        }
        if (wishes.dangerKgPerM3().isPresent()) {
            problems.add(
                    WISHES.key(DANGER),
                    NumberText.of(danger) + " is no less than the alarm level" + assumed(wishes.alarmKgPerM3(), alarm),
                    "less than " + ALARM);
        } else if (wishes.alarmKgPerM3().isPresent()) {
            problems.add(
                    WISHES.key(ALARM),
                    NumberText.of(alarm) + " is no more than the danger level"
                            + assumed(wishes.dangerKgPerM3(), danger),
                    "more than that, or a smaller " + DANGER + " beside it");
        }
    }

    private static boolean isUnread(double level) {
        return Double.isNaN(level);
    }

    private static String assumed(OptionalDouble said, double level) {
        return (said.isPresent() ? " (" : " that is assumed (") + NumberText.of(level) + ")";
    }
}
