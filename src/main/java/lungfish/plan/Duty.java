package lungfish.plan;

import lungfish.sizing.Candidate;
import lungfish.sizing.Needed;

/**
 * What the room needs and where the blower runs.
 *
 * @param candidate the blower, with its verdict; {@code tired} and {@code fresh} are where it runs
 * @param recommended whether the plan chose it, the room being silent
 * @param needed with the devices due for cleaning
 * @param neededClean with the devices clean
 */
public record Duty(Candidate candidate, boolean recommended, Needed needed, Needed neededClean) {
    /** Below this share of the needed pressure nobody feels the pipe: common practice, no source. */
    private static final double PIPE_MATTERS_FROM = 0.02;

    /** Whether the loss in the pipe, on the way to the index outlet, is worth a word. */
    public boolean pipeMatters() {
        return matters(needed.pipePa());
    }

    /** Whether so much pressure, lost in the pipe or between its taps, is worth a word. */
    public boolean matters(double lossPa) {
        return lossPa >= PIPE_MATTERS_FROM * needed.pressurePa();
    }
}
