package lungfish.noise;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.reason.Why;

/**
 * The level of the machines at the listener. It counts the machines only: bubbles, the hiss of a bleed and humming
 * walls are not in it, and whoever shows it says so.
 *
 * @param dba absent where no machine with a known level runs
 * @param at where, in plain words
 * @param heard what each source adds
 * @param why how the sources add up; absent with {@code dba}
 */
public record NoiseAnswer(
        OptionalDouble dba,
        String at,
        List<Heard> heard,
        List<Finding> findings,
        List<Assumption> assumptions,
        Optional<Why> why) {
    public NoiseAnswer {
        heard = List.copyOf(heard);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }
}
