package lungfish.choice;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lungfish.network.Network;
import lungfish.plan.Basis;
import lungfish.plan.Duty;
import lungfish.sizing.Limit;

/**
 * A variant of the pipe, solved: every outlet takes its target.
 *
 * @param basis what was solved
 * @param duty what the variant needs, and the study's blower with it
 * @param missed limits and wishes that this blower misses with this pipe
 * @param good whether it misses nothing that it would not miss with the widest pipe too, and the air is not too fast
 * @param lossesPa from the blower to each tap of an outlet, the least first
 * @param metresPerS of the fastest air in it
 */
public record PipeResult(
        PipeVariant variant,
        Basis basis,
        Duty duty,
        List<Limit.Broken> missed,
        boolean good,
        List<Double> lossesPa,
        double metresPerS) {
    public PipeResult {
        missed = List.copyOf(missed);
        lossesPa = List.copyOf(lossesPa);
    }

    /** The pressure that the blower must make, gauge. */
    public double neededPa() {
        return duty.needed().pressurePa();
    }

    /** At the tap that has least, gauge, while the blower makes just what is needed. */
    public double worstTapPa() {
        return neededPa() - lossesPa.get(lossesPa.size() - 1);
    }

    /** Between the taps that have most and least. */
    public double spreadPa() {
        return lossesPa.get(lossesPa.size() - 1) - lossesPa.get(0);
    }

    /** Whether anybody feels this pipe. */
    public boolean matters() {
        return duty.pipeMatters() || duty.matters(spreadPa());
    }

    static List<Double> lossesPa(Basis basis) {
        Network network = basis.needed().tuned().network();
        double fromPa = basis.needed().pressurePa();
        return IntStream.range(0, network.drops().size())
                .mapToObj(drop -> fromPa - basis.needed().tuned().drop(drop).tapGaugePa())
                .sorted(Comparator.naturalOrder())
                .toList();
    }
}
