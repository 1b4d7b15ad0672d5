package lungfish.desk;

import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.plan.Duty;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/**
 * At which age the equipment is looked at. A choice of view: one plan holds the answers to all of them.
 *
 * @param machine the blower, as delivered or due for its rebuild
 * @param devices clean, or due for cleaning
 */
public record Age(Wear machine, Upkeep devices) {
    /** At which the headline answers are given: the blower tired, the devices due. */
    public static final Age OF_HEADLINES = new Age(Wear.TIRED, Upkeep.DUE);

    public Age with(Wear that) {
        return new Age(that, devices);
    }

    public Age with(Upkeep that) {
        return new Age(machine, that);
    }

    /** What the room needs at this age. */
    public Needed needed(Duty duty) {
        return switch (devices) {
            case DUE -> duty.needed();
            case CLEAN -> duty.neededClean();
        };
    }

    /** Where the blower runs at this age. The bleed is set once, for devices that are due, and left there when they are clean. */
    public Running running(Duty duty) {
        return switch (machine) {
            case TIRED -> duty.candidate().tired();
            case NEW -> duty.candidate().fresh();
        };
    }

    /** Air that the blower could give at this age beyond what the room needs, at the pressure needed, m³/s; negative: short. */
    public double spareM3PerS(Duty duty) {
        Needed needed = needed(duty);
        return duty.candidate().fleet().freeAt(needed.pressurePa(), machine) - needed.freeM3PerS();
    }
}
