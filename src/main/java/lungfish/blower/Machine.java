package lungfish.blower;

import java.util.OptionalDouble;
import lungfish.air.FreeAir;
import lungfish.catalogue.BlowerClass;
import lungfish.network.Curve;
import lungfish.reason.PartId;

/**
 * A blower class set up in a room: so many of them, behind this filter and silencer, drawing this air.
 *
 * @param name for people
 * @param part the blower of the room that it stands for
 * @param count how many side by side, each behind its own check valve
 * @param intakeK temperature of the air that it draws; absent: the room's
 */
public record Machine(
        String name, PartId part, BlowerClass kind, int count, Accessories accessories, OptionalDouble intakeK) {
    /** What one machine gives at its outlet's gauge pressure, as free air of this room. */
    public Curve curve(Wear wear, FreeAir room) {
        return new Corrected(this, wear, room).curve();
    }

    /**
     * What all machines draw together, W, each at its share of a flow.
     *
     * @param gaugePa at the outlet
     * @param freeM3PerS of all machines together
     */
    public double watts(double gaugePa, double freeM3PerS, FreeAir room) {
        return count * Power.watts(kind, machinePa(gaugePa, freeM3PerS), room);
    }

    /** The gauge pressure inside the machine that makes this pressure behind its silencer. */
    public double machinePa(double gaugePa, double freeM3PerS) {
        return gaugePa + accessories.lossPa(freeM3PerS / count);
    }

    /** Flow that must always pass, m³/s of all machines together; 0 where they may be throttled. */
    public double leastM3PerS() {
        return count * kind.leastShare() * kind.openM3PerS();
    }

    /** So many of them. */
    public Machine withCount(int newCount) {
        return new Machine(name, part, kind, newCount, accessories, intakeK);
    }

    /** The same machines behind other filters and silencers. */
    public Machine fitted(Accessories others) {
        return new Machine(name, part, kind, count, others, intakeK);
    }

    /** The same machines as another class. */
    public Machine as(BlowerClass other) {
        return new Machine(other.name(), part, other, count, accessories, intakeK);
    }
}
