package lungfish.plan;

import java.util.List;
import java.util.Optional;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.noise.NoiseAnswer;
import lungfish.piping.PipedRoom;
import lungfish.piping.ValveMaker;
import lungfish.sizing.Asked;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;
import lungfish.sizing.Setting;
import lungfish.sizing.Trial;

/**
 * The air of a room that could be solved: the blower, the settings, and the two trials.
 *
 * @param basis the room solved tuned, and its bench
 * @param candidates all classes, ranked
 * @param noise of the blower
 * @param settings of the drops, in their order
 * @param predicted every valve at its coarse start
 * @param filed every valve as the room says
 * @param filedNetwork what {@code filed} solved
 */
record AirSide(
        Basis basis,
        Duty duty,
        List<Candidate> candidates,
        NoiseAnswer noise,
        List<Setting> settings,
        AsSet predicted,
        AsSet filed,
        Network filedNetwork) {

    /** Solves the two trials for a duty; empty when they cannot be solved, which a solved tuned network rules out. */
    static Optional<AirSide> of(Setup setup, Basis basis, Duty duty, List<Candidate> candidates) {
        PipedRoom piped = basis.piped();
        Needed needed = duty.needed();
        Candidate candidate = duty.candidate();
        List<Valve> valves = valves(setup, piped);
        List<Setting> settings = Setting.all(needed.tuned(), candidate.tired().gaugePa(), valves);
        Trial trial = new Trial(piped, candidate.fleet(), needed.tuned(), candidate.tired());
        double[] coarse = new double[valves.size()];
        for (int i = 0; i < coarse.length; i++) {
            coarse[i] = valves.get(i).kAt(settings.get(i).opening());
        }
        double[] asFiled =
                piped.network().drops().stream().mapToDouble(Drop::valveK).toArray();
        Optional<AsSet> predicted = solved(trial, coarse);
        Optional<AsSet> filed = solved(trial, asFiled);
        NoiseAnswer noise = basis.noise(candidate.fleet());
        return predicted.flatMap(first -> filed.map(
                second -> new AirSide(basis, duty, candidates, noise, settings, first, second, second.network())));
    }

    private static Optional<AsSet> solved(Trial trial, double[] valveK) {
        return trial.asSet(Wear.TIRED, Upkeep.DUE, valveK)
                .match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }

    private static List<Valve> valves(Setup setup, PipedRoom piped) {
        return piped.needs().stream()
                .map(need -> ValveMaker.of(need.seat().outlet(), setup.catalogue()))
                .toList();
    }

    PipedRoom piped() {
        return basis.piped();
    }

    Asked asked() {
        return basis.asked();
    }

    Fleet fleet() {
        return duty.candidate().fleet();
    }
}
