package lungfish.sure;

import java.util.List;
import lungfish.growth.Stage;
import lungfish.sizing.Candidate;

/**
 * How sure the plan of a room is.
 *
 * @param chosen the blower that the bands are about, with the plan's verdict on it
 * @param samples how many rooms like this were looked at
 * @param bands where its figures lie
 * @param stages the odds that the room as it is, and each of its planned stages, is served by that blower
 * @param candidates the odds of every blower made for these mains, in the order of the plan
 * @param weights what the doubt about the reserve comes from, the most of it first; empty where nothing that is off moves it
 */
public record Sureness(
        Candidate chosen,
        int samples,
        Bands bands,
        List<StageOdds> stages,
        List<CandidateOdds> candidates,
        List<Weight> weights) {
    public Sureness {
        stages = List.copyOf(stages);
        candidates = List.copyOf(candidates);
        weights = List.copyOf(weights);
    }

    /**
     * Where the figures of the chosen blower lie, tired and with devices due.
     *
     * @param headroom how many more outlets fit
     * @param reserve air beyond the targets, as a share of them; negative: short
     * @param needed pressure that the room needs, Pa
     * @param running pressure where the blower runs, Pa
     * @param gives air that it gives there, m³/s
     * @param draws power that it draws there, W
     */
    public record Bands(Band headroom, Band reserve, Band needed, Band running, Band gives, Band draws) {}

    /**
     * Of one stage of the room.
     *
     * @param outlets in it
     * @param served whether air, pressure, rating and heat hold
     */
    public record StageOdds(Stage.When when, int outlets, Odds served) {}

    /**
     * Of one blower of the bench.
     *
     * @param served whether air, pressure, rating and heat hold
     * @param fits whether all that is wished holds too
     */
    public record CandidateOdds(Candidate planned, Odds served, Odds fits) {}
}
