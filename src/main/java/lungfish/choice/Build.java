package lungfish.choice;

import java.util.List;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/**
 * A pipe and a blower, bought together.
 *
 * @param pipe the variant that is built, solved
 * @param candidate the blower in it, and where it runs
 * @param missed limits and wishes that it misses; empty where it meets them all
 * @param purchase of pipe, fittings, taps, blower, filter and silencer
 * @param total what it costs over {@code years}, purchase, energy, wear parts and replacements
 * @param room that can be saved: the pipe drawn, the blower named
 */
public record Build(
        PipeResult pipe,
        Candidate candidate,
        List<Limit.Broken> missed,
        double purchase,
        double total,
        int years,
        Room room) {
    public Build {
        missed = List.copyOf(missed);
    }
}
