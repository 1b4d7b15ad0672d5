package lungfish.outage;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.Given;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Room;

/** How soon people do what they do, typed or assumed. It remembers which of what it assumed was asked for. */
public final class Habits {
    private final Backup backup;
    private final Catalogue catalogue;
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    /** Those of a room. */
    public Habits(Room room, Catalogue catalogue) {
        this.backup = room.backup();
        this.catalogue = catalogue;
    }

    /** Until somebody notices that the air is off, s. */
    public double noticeS() {
        return given(backup.noticeS(), backup.alarm().isPresent() ? Assumable.NOTICE_ALARM : Assumable.NOTICE);
    }

    /** When a hand is there that switches something on or puts a hose back, s after the failure. */
    public double handS() {
        return noticeS() + given(OptionalDouble.empty(), Assumable.READY);
    }

    /** When a standby that is started by hand gives air, s after the failure. */
    public double standbyByHandS() {
        return noticeS() + given(standbyReadyS(), Assumable.READY);
    }

    /** When a standby that starts by itself gives air, s after the failure. */
    double standbyByItselfS() {
        return standbyReadyS().orElse(0);
    }

    private OptionalDouble standbyReadyS() {
        return backup.standby().map(Backup.Standby::readyS).orElse(OptionalDouble.empty());
    }

    /** When a generator carries the room, s after the failure. */
    public double generatorS() {
        return noticeS() + given(generator().readyS(), Assumable.READY);
    }

    /** How long its fuel lasts, s. */
    public double fuelS() {
        return given(generator().fuelS(), Assumable.GENERATOR_FUEL);
    }

    private Backup.Generator generator() {
        return backup.generator().orElse(Backup.Generator.UNKNOWN);
    }

    /** When a failed machine is replaced, s after the failure. */
    public double replacedS() {
        return noticeS() + given(backup.mendS(), Assumable.MEND);
    }

    /** What was assumed of that which was asked. */
    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    private double given(OptionalDouble typed, Assumable otherwise) {
        AssumedValue assumed = catalogue.assumed(otherwise);
        Given given = Given.typedOr(typed, assumed.given());
        if (given.isAssumed()) {
            assumptions.add(assumed.about(PartId.ROOM));
        }
        return given.si();
    }
}
