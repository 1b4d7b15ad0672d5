package lungfish.choice;

import java.util.OptionalInt;
import lungfish.cost.Bill;
import lungfish.sizing.Candidate;

/**
 * One blower on the bench.
 *
 * @param candidate the verdict; its reserve and where it runs are those of the tired machine with devices due for cleaning
 * @param reserveNewShare what it keeps beyond the targets at the pressure that clean devices need, new, as a share of them:
 *     the best that it will ever do
 * @param bill the machines in the first years, without the pipe: purchase, energy where they run tired, rebuilds,
 *     replacements
 * @param perYear energy and rebuilds of a year, averaged over its life, in the keeper's currency
 * @param paybackYear the year from which on it is no dearer, with its pipe, than the small pumps of today; absent: never in
 *     the years that costs are counted over, or there are no pumps
 * @param isOwn whether the keeper typed it from a data sheet
 */
public record BenchRow(
        Candidate candidate,
        double reserveNewShare,
        Bill bill,
        double perYear,
        OptionalInt paybackYear,
        boolean isOwn,
        BenchReason reason) {
    /** The class by which it is named. */
    public String id() {
        return candidate.kind().id();
    }

    /** Whether it ever gives the targets, tired: otherwise there is no point at which it would run. */
    public boolean runs() {
        return candidate.reserveShare() >= 0;
    }

    /** Running time until it is replaced, s. */
    public double lifeS() {
        return candidate.kind().lifeS();
    }
}
