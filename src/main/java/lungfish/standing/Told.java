package lungfish.standing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.backup.Habits;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Room;

/** What a room says of failures and of those who mend them, and what is assumed where it is silent. */
final class Told {
    private final Backup backup;
    private final Catalogue catalogue;
    private final Habits habits;
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    Told(Room room, Catalogue catalogue) {
        this.backup = room.backup();
        this.catalogue = catalogue;
        this.habits = new Habits(room, catalogue);
    }

    Rates rates() {
        return new Rates(
                assumed(Assumable.BLOWER_MTBF),
                habits.noticeS(),
                habits.quietNoticeS(),
                habits.mendS(),
                habits.handReadyS(),
                habits.standbyByItselfS(),
                assumed(Assumable.MAINS_FAILURES),
                assumed(Assumable.MAINS_OUTAGE));
    }

    /** From when to when a generator of the room carries a load; nothing where there is none, or it is too weak. */
    List<Carried> byGenerator(double noticeS, OptionalDouble watts) {
        return backup
                .generator()
                .filter(generator -> generator.ratedW().orElse(Double.MAX_VALUE) >= watts.orElse(0))
                .map(generator -> {
                    double fromS = noticeS + habits.generatorReadyS();
                    return new Carried(fromS, fromS + habits.fuelS());
                })
                .stream()
                .toList();
    }

    List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>(habits.assumptions());
        all.addAll(assumptions);
        return List.copyOf(all);
    }

    private double assumed(Assumable key) {
        AssumedValue value = catalogue.assumed(key);
        assumptions.add(value.about(PartId.ROOM));
        return value.si();
    }
}
