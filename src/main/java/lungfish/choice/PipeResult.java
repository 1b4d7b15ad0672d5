package lungfish.choice;

import java.util.List;
import lungfish.plan.Basis;
import lungfish.plan.Duty;
import lungfish.sizing.Limit;

/**
 * A variant of the pipe, solved: every outlet takes its target.
 *
 * @param basis what was solved
 * @param duty what the variant needs, and the study's blower with it
 * @param missed limits and wishes that this blower misses with this pipe
 * @param faults those of them that are the pipe's: with the widest pipe they would not be missed, or by less; or the air is
 *     too fast
 * @param losses from the blower to the taps
 * @param metresPerS of the fastest air in it
 */
public record PipeResult(
        PipeVariant variant,
        Basis basis,
        Duty duty,
        List<Limit.Broken> missed,
        List<Limit.Broken> faults,
        TapLosses losses,
        double metresPerS) {
    public PipeResult {
        missed = List.copyOf(missed);
        faults = List.copyOf(faults);
    }

    /** Whether the pipe is in the way of nothing. */
    public boolean good() {
        return faults.isEmpty();
    }

    /** The pressure that the blower must make, gauge. */
    public double neededPa() {
        return duty.needed().pressurePa();
    }

    /** Lost in the pipe on the way to the tap of the worst-served outlet. */
    public double pipePa() {
        return losses.indexPa();
    }

    /** At the tap that has least, gauge, while the blower makes just what is needed. */
    public double worstTapPa() {
        return neededPa() - losses.worstPa();
    }

    /** Between the taps that have most and least. */
    public double spreadPa() {
        return losses.worstPa() - losses.bestPa();
    }

    /** Whether anybody feels this pipe. */
    public boolean matters() {
        return duty.matters(pipePa()) || duty.matters(spreadPa());
    }

    /** The same, with these for the pipe's own faults. */
    PipeResult blamed(List<Limit.Broken> those) {
        return new PipeResult(variant, basis, duty, missed, those, losses, metresPerS);
    }
}
