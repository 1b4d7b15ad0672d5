package lungfish.oxygen;

import java.util.ArrayList;
import java.util.List;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Room;

/**
 * The levels of oxygen that count.
 *
 * @param alarmGPerM3 below which somebody must act
 * @param dangerGPerM3 below which fish are lost; below the alarm
 */
public record Levels(double alarmGPerM3, double dangerGPerM3) {
    private static final double G_PER_KG = 1000;

    /** Those of a room that are assumed. */
    public static List<Assumption> assumed(Room room, Catalogue catalogue) {
        List<Assumption> assumed = new ArrayList<>();
        if (room.wishes().alarmKgPerM3().isEmpty()) {
            assumed.add(catalogue.assumed(Assumable.ALARM_OXYGEN).about(PartId.ROOM));
        }
        if (room.wishes().dangerKgPerM3().isEmpty()) {
            assumed.add(catalogue.assumed(Assumable.DANGER_OXYGEN).about(PartId.ROOM));
        }
        return assumed;
    }

    /** Those of a room, typed or assumed. */
    public static Levels of(Room room, Catalogue catalogue) {
        return new Levels(
                G_PER_KG
                        * room.wishes()
                                .alarmKgPerM3()
                                .orElse(catalogue
                                        .assumed(Assumable.ALARM_OXYGEN)
                                        .si()),
                G_PER_KG
                        * room.wishes()
                                .dangerKgPerM3()
                                .orElse(catalogue
                                        .assumed(Assumable.DANGER_OXYGEN)
                                        .si()));
    }
}
