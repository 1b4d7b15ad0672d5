package lungfish.choice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lungfish.room.Wishes.Wish;
import lungfish.sizing.Candidate;
import lungfish.sizing.Ranking;

/** Finds the reasons of ranked candidates. */
final class Reasons {
    private final Ranking ranking;
    private final ToDoubleFunction<Candidate> perYear;
    private final List<Candidate> serving;
    private final Map<Wish, Map<Candidate, Double>> steps = new EnumMap<>(Wish.class);

    /**
     * For candidates in their order.
     *
     * @param perYear what running one costs in a year
     */
    Reasons(List<Candidate> ranked, Ranking ranking, ToDoubleFunction<Candidate> perYear) {
        this.ranking = ranking;
        this.perYear = perYear;
        this.serving = ranked.stream()
                .filter(each -> each.suitsMains() && each.serves())
                .toList();
        for (Wish wish : ranking.order()) {
            Map<Candidate, Double> each = new HashMap<>();
            serving.forEach(candidate -> each.put(candidate, ranking.step(candidate, wish)));
            steps.put(wish, each);
        }
    }

    private double step(Candidate candidate, Wish wish) {
        return steps.getOrDefault(wish, Map.of()).getOrDefault(candidate, 0.0);
    }

    BenchReason of(Candidate candidate) {
        if (!serving.contains(candidate)) {
            return new BenchReason(false, List.of(), candidate.broken(), Optional.empty());
        }
        Candidate first = serving.get(0);
        return candidate.equals(first)
                ? new BenchReason(true, picked(first), first.broken(), Optional.empty())
                : new BenchReason(false, alone(candidate), candidate.broken(), behind(candidate, first));
    }

    /** Wish by wish, as long as more than one is left: those wishes that left fewer. */
    private List<Wish> picked(Candidate first) {
        List<Wish> picked = new ArrayList<>();
        List<Candidate> left = serving;
        for (Wish wish : ranking.order()) {
            double best = step(first, wish);
            List<Candidate> asGood =
                    left.stream().filter(each -> step(each, wish) == best).toList();
            if (asGood.size() < left.size()) {
                picked.add(wish);
            }
            left = asGood;
        }
        return picked;
    }

    /** The first wish by which nobody that serves is as good. */
    private List<Wish> alone(Candidate candidate) {
        return ranking.order().stream()
                .filter(wish -> serving.stream()
                        .allMatch(each -> each.equals(candidate) || step(each, wish) > step(candidate, wish)))
                .limit(1)
                .toList();
    }

    private Optional<BenchReason.Behind> behind(Candidate candidate, Candidate first) {
        return ranking.order().stream()
                .filter(wish -> step(candidate, wish) > step(first, wish))
                .findFirst()
                .filter(wish -> wish != Wish.RESERVE) // told by the limits that it breaks
                .map(wish -> new BenchReason.Behind(wish, Math.abs(figure(candidate, wish) - figure(first, wish))));
    }

    private double figure(Candidate candidate, Wish wish) {
        return switch (wish) {
            case RESERVE -> candidate.reserveShare();
            case SMALLEST -> candidate.kind().ratedM3PerS();
            case CHEAPEST -> candidate.fleet().price();
            case QUIETEST -> candidate.dba().orElse(Double.NaN);
            case CHEAPEST_TO_RUN -> perYear.applyAsDouble(candidate);
            case LONGEST_LIVED -> candidate.kind().lifeS();
        };
    }
}
