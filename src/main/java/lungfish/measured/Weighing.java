package lungfish.measured;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lungfish.measured.Candidates.Candidate;
import lungfish.room.Reading;

/**
 * All that may have happened, weighed by what was read (Bayes' rule).
 *
 * @param weighed the likeliest first
 * @param shares their probabilities, in that order
 */
record Weighing(Rows rows, List<Weighed> weighed, List<Double> shares) {
    static Weighing of(List<Candidate> candidates, Rows rows, Unknowns unknowns, List<Reading> readings) {
        double[] none = new double[unknowns.count()];
        List<Weighed> all = new ArrayList<>();
        for (Candidate candidate : candidates) {
            rows.of(readings, candidate.happening(), none)
                    .map(held -> Weighed.of(candidate.happening(), candidate.lnPrior(), held, unknowns))
                    .ifPresent(all::add);
        }
        all.sort(Comparator.comparingDouble((Weighed each) -> -each.lnWeight()));
        double most = all.isEmpty() ? 0 : all.get(0).lnWeight();
        double sum = all.stream()
                .mapToDouble(each -> Math.exp(each.lnWeight() - most))
                .sum();
        List<Double> shares =
                all.stream().map(each -> Math.exp(each.lnWeight() - most) / sum).toList();
        return new Weighing(rows, List.copyOf(all), shares);
    }

    /** How probable each kind of thing is, the likeliest first. */
    <K> Map<K, Double> by(Function<Happening, K> kind) {
        Map<K, Double> sums = new LinkedHashMap<>();
        for (int i = 0; i < weighed.size(); i++) {
            sums.merge(kind.apply(weighed.get(i).happening()), shares.get(i), Double::sum);
        }
        Map<K, Double> sorted = new LinkedHashMap<>();
        sums.entrySet().stream()
                .sorted(Map.Entry.<K, Double>comparingByValue().reversed())
                .forEach(each -> sorted.put(each.getKey(), each.getValue()));
        return sorted;
    }

    /** The likeliest of a kind. */
    Weighed best(Culprit culprit) {
        return weighed.stream()
                .filter(each -> each.happening().culprit().equals(culprit))
                .findFirst()
                .orElseThrow();
    }
}
