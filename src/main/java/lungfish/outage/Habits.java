package lungfish.outage;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumable;
import lungfish.room.Backup;
import lungfish.room.Room;

/**
 * How soon people do what they do, typed or assumed.
 *
 * @param noticeS until somebody notices that the air is off
 * @param readyS from then until a standby runs, or a hose is on again
 * @param generatorReadyS from then until a generator carries the room
 * @param fuelS how long its fuel lasts
 * @param mendS until a failed machine is replaced
 */
record Habits(double noticeS, double readyS, double generatorReadyS, double fuelS, double mendS) {
    static Habits of(Room room, Catalogue catalogue) {
        Backup backup = room.backup();
        Assumable unnoticed = backup.alarm().isPresent() ? Assumable.NOTICE_ALARM : Assumable.NOTICE;
        double ready = catalogue.assumed(Assumable.READY).si();
        return new Habits(
                backup.noticeS().orElse(catalogue.assumed(unnoticed).si()),
                typed(backup.standby().map(Backup.Standby::readyS)).orElse(ready),
                typed(backup.generator().map(Backup.Generator::readyS)).orElse(ready),
                typed(backup.generator().map(Backup.Generator::fuelS))
                        .orElse(catalogue.assumed(Assumable.GENERATOR_FUEL).si()),
                backup.mendS().orElse(catalogue.assumed(Assumable.MEND).si()));
    }

    private static OptionalDouble typed(Optional<OptionalDouble> said) {
        return said.orElse(OptionalDouble.empty());
    }

    /** When a hand is there that does what has to be done, s after the failure. */
    double handS() {
        return noticeS + readyS;
    }
}
