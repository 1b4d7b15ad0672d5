package lungfish.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What hangs on the wall of a room for the hour when its air stops, in words of the reader's units.
 *
 * @param room its name
 * @param clock how long there is
 * @param parts what to do, in order; not more than {@link #MOST_STEPS} steps in all
 * @param tanks those in trouble first, the first one first
 * @param later tanks that are judged and in trouble after those
 * @param safe tanks that are in no danger by these figures
 * @param unjudged tanks of which neither fish nor food is said
 * @param outlook what comes of it all when the failures are played through; may be empty
 * @param atHand what there is to keep air on
 * @param never what not to do
 * @param blanks what is written in by hand: a telephone, notes
 * @param cautions where the help itself can hurt someone
 */
public record DrillCard(
        String room,
        Clock clock,
        List<Part> parts,
        List<TankRow> tanks,
        int later,
        int safe,
        int unjudged,
        String outlook,
        List<Have> atHand,
        List<String> never,
        List<String> blanks,
        List<String> cautions) {
    /** More cannot be read from where one stands. */
    public static final int MOST_STEPS = 12;

    /** Said wherever times to trouble stand. */
    public static final String ESTIMATES = OutageWords.ESTIMATES;

    public DrillCard {
        parts = List.copyOf(parts);
        tanks = List.copyOf(tanks);
        atHand = List.copyOf(atHand);
        never = List.copyOf(never);
        blanks = List.copyOf(blanks);
        cautions = List.copyOf(cautions);
        int steps = parts.stream().mapToInt(part -> part.steps().size()).sum();
        if (steps > MOST_STEPS) {
            throw new IllegalArgumentException(steps + " steps on a card for " + MOST_STEPS);
        }
    }

    /** What is said of all tanks but the first so many; empty where there are none. */
    public String rest(int shown) {
        int hidden = Math.max(0, tanks.size() - shown) + later;
        String others = hidden == 0 ? "" : Sentences.counted(hidden, "tank") + " more, later than these.";
        String well = safe == 0 ? "" : Sentences.counted(safe, "tank") + " in no danger by these figures.";
        String unknown =
                unjudged == 0 ? "" : Sentences.counted(unjudged, "tank") + " not judged: no fish and no food said.";
        return Stream.of(others, well, unknown).filter(text -> !text.isEmpty()).collect(Collectors.joining(" "));
    }

    /**
     * How long there is.
     *
     * @param figure the time alone: "1 h 50 min"
     * @param saying until what, where, and how sure
     */
    public record Clock(String figure, String saying) {}

    /** Steps under a title, which says when they are for. */
    public record Part(String title, List<Step> steps) {
        public Part {
            steps = List.copyOf(steps);
        }
    }

    /**
     * One thing to do.
     *
     * @param action a few words, read from afar
     * @param detail which, where, who; may be empty
     */
    public record Step(String action, String detail) {}

    /**
     * When a tank is in trouble without air.
     *
     * @param where rack and shelf
     * @param alarm by the cautious figure
     * @param danger by the cautious figure
     * @param likely danger by the likely figure
     */
    public record TankRow(String name, String where, boolean isEssential, Moment alarm, Moment danger, Moment likely) {}

    /**
     * A moment after the air has stopped.
     *
     * @param s seconds; infinite where it never comes
     * @param said as it is written in a sentence: "1 h 50 min"
     * @param brief as it stands in a column, hours and minutes: "1:50"
     */
    public record Moment(double s, String said, String brief) {}

    /** Something at hand, and how much of it. */
    public record Have(String what, String much) {}
}
