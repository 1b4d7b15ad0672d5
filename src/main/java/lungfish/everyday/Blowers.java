package lungfish.everyday;

/**
 * What the blowers do in a disturbance; tired unless said.
 *
 * @param gaugeBeforePa the highest pressure at any blower's outlet
 * @param gaugeAfterPa the same once it has happened
 * @param bledBeforeM3PerS what the bleeds let out
 * @param bledAfterM3PerS the same once it has happened: the bleed valves stand as they stood
 * @param tired the machine held hardest
 * @param fresh the same with the machines new
 */
public record Blowers(
        double gaugeBeforePa,
        double gaugeAfterPa,
        double bledBeforeM3PerS,
        double bledAfterM3PerS,
        Held tired,
        Held fresh) {
    /** Whether a machine, tired or new, is held above what it bears all day. */
    public boolean isTooHigh() {
        return tired.isTooHigh() || fresh.isTooHigh();
    }
}
