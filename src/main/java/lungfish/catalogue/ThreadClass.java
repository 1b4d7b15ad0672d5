package lungfish.catalogue;

/**
 * A thread that is tapped into a pipe's wall or a boss.
 *
 * @param taper whether it seals on its own taper
 * @param majorM largest diameter of the thread (of a taper thread: outside of the pipe that it is named after)
 * @param pitchM from turn to turn
 * @param drillM hole to drill before tapping
 * @param drillName what that drill is called where it is bought: a letter, a number, a fraction, millimetres
 * @param engagementM length of thread that must hold: of NPT the hand-tight engagement L1 of ASME B1.20.1
 */
public record ThreadClass(
        String id,
        String name,
        boolean taper,
        double majorM,
        double pitchM,
        double drillM,
        String drillName,
        double engagementM,
        String source) {}
