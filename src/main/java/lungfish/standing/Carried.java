package lungfish.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch after the mains failed in which something carries the air all the same.
 *
 * @param fromS after the failure
 * @param toS after the failure, not before {@code fromS}
 */
public record Carried(double fromS, double toS) {
    public Carried {
        if (!(fromS >= 0) || !(toS >= fromS)) {
            throw new IllegalArgumentException("a stretch begins at 0 s or later and does not run backwards");
        }
    }

    /**
     * Time a year without air by the mains. The length of a failure is taken as exponential: against failures that all
     * take their mean, that never credits a battery with more, as long failures do occur.
     *
     * @param perYear failures of the mains
     * @param meanS how long they last on average, above 0
     * @param carried stretches, in any order; they may overlap
     * @return s
     */
    public static double mainsOffSPerYear(double perYear, double meanS, List<Carried> carried) {
        double left = 1;
        for (Carried each : apart(carried)) {
            left -= Availability.reliability(1 / meanS, each.fromS) - Availability.reliability(1 / meanS, each.toS);
        }
        return perYear * meanS * Math.max(0, left);
    }

    /** The same time, told by stretches that do not overlap. */
    private static List<Carried> apart(List<Carried> carried) {
        List<Carried> apart = new ArrayList<>();
        double untilS = 0;
        for (Carried each : carried.stream()
                .sorted(Comparator.comparingDouble(Carried::fromS))
                .toList()) {
            if (each.toS > untilS) {
                apart.add(new Carried(Math.max(untilS, each.fromS), each.toS));
                untilS = each.toS;
            }
        }
        return apart;
    }
}
