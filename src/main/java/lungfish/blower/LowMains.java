package lungfish.blower;

import lungfish.catalogue.BlowerClass;

/**
 * A class on mains that give a tenth less voltage than they should, at the frequency that they should have.
 *
 * <ul>
 *   <li>Linear machines: an alternating magnet drives a spring near resonance, and stroke, and so flow, goes as the voltage.
 *       The pressure that they reach goes as the force: with permanent magnets in the moving part (diaphragms) as the current,
 *       so as the voltage; where the magnet pulls soft iron (pistons) as its square (Maxwell's stress B²/2µ₀). Common practice
 *       in this form, no source. Cautious: the current that rises when the stroke shrinks is left out.
 *   <li>Side channel and rotary vane: an induction machine. On the straight part of its curve torque goes as slip times voltage
 *       squared (the textbooks' equivalent circuit, from memory), so at the same torque a full-load slip of {@value #SLIP}
 *       (small two-pole machines, common practice, no source) grows by 1/0.9². Speed takes flow with it, and in a side channel
 *       pressure as its square (similarity laws of turbomachines: ISO 5801, from memory). Cautious: the torque falls a little
 *       with the speed.
 * </ul>
 *
 * <p>The watts of the class stay as they are: nothing that is said of low mains rests on them.
 */
public final class LowMains {
    /** Of the voltage that the mains should have. */
    public static final double SHARE = 0.9;

    /** Slip of a small induction machine at full load. */
    static final double SLIP = 0.06;

    private LowMains() {}

    /** The class as it runs then. */
    public static BlowerClass of(BlowerClass kind) {
        return switch (kind.kind()) {
            case SMALL_DIAPHRAGM, LINEAR_DIAPHRAGM -> at(kind, SHARE, SHARE);
            case SMALL_PISTON, LINEAR_PISTON -> at(kind, SHARE, SHARE * SHARE);
            case SIDE_CHANNEL -> at(kind, speed(), speed() * speed());
            case ROTARY_VANE -> at(kind, speed(), 1);
        };
    }

    private static BlowerClass at(BlowerClass kind, double flowShare, double pressureShare) {
        return kind.giving(flowShare, kind.tiredShare()).pressing(pressureShare);
    }

    /** Speed at the lower voltage over speed at the full one. */
    static double speed() {
        return (1 - SLIP / (SHARE * SHARE)) / (1 - SLIP);
    }
}
