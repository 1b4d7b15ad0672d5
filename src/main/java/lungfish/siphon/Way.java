package lungfish.siphon;

import java.util.OptionalDouble;

/**
 * A way that water could take when the air stops.
 *
 * @param crestM the highest place behind the rim of its own tank, m above the floor: of all ways through the pipe, the one
 *     whose highest place is lowest
 */
public record Way(Leaving from, Reached into, double crestM) {
    /** Heights closer than this are one. */
    static final double SAME_M = 5e-4;

    /** What it takes to make water go this way. */
    public enum Start {
        /** No place behind the rim of its own tank lies above its water line: it runs as soon as the air has gone. */
        BY_ITSELF,
        /** It must be lifted over the crest first: by air that cools in the pipe, or a hose that is pulled off. */
        ONCE_LIFTED
    }

    public Start start() {
        boolean runs = crestM <= from.lineM() + SAME_M && from.passesItsRim();
        return runs ? Start.BY_ITSELF : Start.ONCE_LIFTED;
    }

    /** How far above its own line the water must rise, the rim of its tank included, m. */
    public double liftM() {
        return Math.max(0, Math.max(crestM, from.rim().zM()) - from.lineM());
    }

    /** How much can run, m³: until the air release comes to air, or the lines are level. */
    public double waterM3() {
        double sinks = Math.min(from.depthM(), from.lineM() - into.lineM());
        return Vessel.runsOutM3(from.outlet().tank(), sinks);
    }

    /** How much of it would run over the rim of the lower tank, m³; absent where it is a machine. */
    public OptionalDouble overM3() {
        OptionalDouble free = into.freeM3();
        return free.isPresent() ? OptionalDouble.of(Math.max(0, waterM3() - free.getAsDouble())) : free;
    }

    /** Whether it ends in a machine, and on mains power. */
    public boolean reachesMachine() {
        return into instanceof Reached.AtMachine;
    }
}
