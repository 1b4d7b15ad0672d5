package lungfish.standing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Backup.Standby;
import lungfish.room.Room;

/** What a room says of failures and of those who mend them, and what is assumed where it is silent. */
final class Told {
    /** A pressure switch, and a blower that gets going: common practice, no source. */
    private static final double SELF_S = 60;

    private final Backup backup;
    private final Catalogue catalogue;
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    Told(Room room, Catalogue catalogue) {
        this.backup = room.backup();
        this.catalogue = catalogue;
    }

    Habits habits() {
        Assumable notice = backup.alarm().isPresent() ? Assumable.NOTICE_ALARM : Assumable.NOTICE;
        return new Habits(
                assumed(Assumable.BLOWER_MTBF),
                said(backup.noticeS(), notice),
                said(backup.noticeS(), Assumable.NOTICE),
                said(backup.mendS(), Assumable.MEND),
                said(standbyS(Standby.Start.MANUAL), Assumable.READY),
                standbyS(Standby.Start.AUTOMATIC).orElse(SELF_S),
                assumed(Assumable.MAINS_FAILURES),
                assumed(Assumable.MAINS_OUTAGE));
    }

    /** From when to when a generator of the room carries a load; nothing where there is none, or it is too weak. */
    List<Carried> byGenerator(double noticeS, OptionalDouble watts) {
        return backup
                .generator()
                .filter(generator -> generator.ratedW().orElse(Double.MAX_VALUE) >= watts.orElse(0))
                .map(generator -> {
                    double fromS = noticeS + said(generator.readyS(), Assumable.READY);
                    return new Carried(fromS, fromS + said(generator.fuelS(), Assumable.GENERATOR_FUEL));
                })
                .stream()
                .toList();
    }

    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    private OptionalDouble standbyS(Standby.Start start) {
        return backup.standby()
                .filter(standby -> standby.start() == start)
                .map(Standby::readyS)
                .orElseGet(OptionalDouble::empty);
    }

    private double said(OptionalDouble typed, Assumable otherwise) {
        return typed.orElseGet(() -> assumed(otherwise));
    }

    private double assumed(Assumable key) {
        AssumedValue value = catalogue.assumed(key);
        assumptions.add(value.about(PartId.ROOM));
        return value.si();
    }
}
