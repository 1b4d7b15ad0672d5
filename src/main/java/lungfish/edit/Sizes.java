package lungfish.edit;

import java.util.List;
import java.util.OptionalDouble;

/** Numbers that a keeper types, in the ranges that a room file keeps: wide on purpose, they catch a wrong unit and a wrong sign. */
final class Sizes {
    private static final double LONGEST_M = 1000;
    private static final double HIGHEST_M = 100;
    private static final double MOST_M3_PER_S = 1;

    private Sizes() {}

    /** A size: above nothing. */
    static void span(String what, double spanM, List<Refused> troubles) {
        if (!(spanM > 0 && spanM <= LONGEST_M)) {
            troubles.add(Refused.because(
                    what + " would be {found}.",
                    "It must be more than nothing, and at most {most}.",
                    Refused.length("found", spanM),
                    Refused.length("most", LONGEST_M)));
        }
    }

    /** A place along one axis of the room. */
    static void place(double atM, List<Refused> troubles) {
        if (!(Math.abs(atM) <= LONGEST_M)) {
            troubles.add(Refused.because(
                    "That place, {found}, is far away.",
                    "Stay within {most} of the room's corner.",
                    Refused.length("found", atM),
                    Refused.length("most", LONGEST_M)));
        }
    }

    /** A height above the floor. */
    static void height(String what, double heightM, List<Refused> troubles) {
        if (!(heightM >= 0 && heightM <= HIGHEST_M)) {
            troubles.add(Refused.because(
                    what + " would be {found} above the floor.",
                    "It must be on the floor or above.",
                    Refused.length("found", heightM)));
        }
    }

    /** Whether a flow may stand in a room: above nothing, or nothing too where that makes sense. */
    static boolean isFlow(OptionalDouble flowM3PerS, boolean orNothing) {
        double flow = flowM3PerS.orElse(MOST_M3_PER_S);
        return (orNothing ? flow >= 0 : flow > 0) && flow <= MOST_M3_PER_S;
    }
}
