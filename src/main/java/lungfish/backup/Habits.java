package lungfish.backup;

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
import lungfish.room.Backup.Standby;
import lungfish.room.Room;

/** How soon people do what they do, typed or assumed. It remembers which of what it assumed was asked for. */
public final class Habits {
    /** A pressure switch, and a blower that gets going: common practice, no source. */
    private static final double ITSELF_S = 60;

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

    /**
     * The same where no alarm can ring: a small pump stopped, or there is less air but not none. A low-pressure alarm hardly sees
     * half the air, as most of the pressure is the depth of the water.
     */
    public double quietNoticeS() {
        return given(backup.noticeS(), Assumable.NOTICE);
    }

    /** When a hand is there that switches something on or puts a hose back, s after the failure. */
    public double handS() {
        return noticeS() + given(OptionalDouble.empty(), Assumable.READY);
    }

    /** From noticing until a standby that is started by hand gives air, s. */
    public double handReadyS() {
        return given(readyS(Standby.Start.MANUAL), Assumable.READY);
    }

    /** When a standby that is started by hand gives air, s after the failure. */
    public double standbyByHandS() {
        return noticeS() + handReadyS();
    }

    /** When a standby that starts by itself gives air, s after the failure. */
    public double standbyByItselfS() {
        return readyS(Standby.Start.AUTOMATIC).orElse(ITSELF_S);
    }

    private OptionalDouble readyS(Standby.Start start) {
        return backup.standby()
                .filter(standby -> standby.start() == start)
                .map(Standby::readyS)
                .orElseGet(OptionalDouble::empty);
    }

    /** From noticing until a generator carries the room, s. */
    public double generatorReadyS() {
        return given(generator().readyS(), Assumable.READY);
    }

    /** When a generator carries the room, s after the failure. */
    public double generatorS() {
        return noticeS() + generatorReadyS();
    }

    /** How long its fuel lasts, s. */
    public double fuelS() {
        return given(generator().fuelS(), Assumable.GENERATOR_FUEL);
    }

    private Backup.Generator generator() {
        return backup.generator().orElse(Backup.Generator.UNKNOWN);
    }

    /** From noticing until a failed machine is replaced, s. */
    public double mendS() {
        return given(backup.mendS(), Assumable.MEND);
    }

    /** When a failed machine is replaced, s after the failure. */
    public double replacedS() {
        return noticeS() + mendS();
    }

    /** What was assumed of that which was asked. */
    public List<Assumption> assumptions() {
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
