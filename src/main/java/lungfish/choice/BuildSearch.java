package lungfish.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.cost.CostAnswer;
import lungfish.edit.BlowerEdits;
import lungfish.edit.Edit;
import lungfish.plan.Basis;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/**
 * Finds the cheapest build, exactly and without judging most of them.
 *
 * <p>The price of a build is known before anything of it is judged: that of its pipe and that of its blower add up. So all
 * builds are looked at in the order of their price, and the first that meets everything is the cheapest; nothing behind it
 * can be cheaper. The pipe is solved once for all blowers, since a tuned network does not know what feeds it. What depends
 * on the class alone (its mains, its noise) is judged once for all pipes. Each verdict is kept for the next question, as
 * only the wish for spare pressure changes where a blower runs: all other wishes are left out by not asking for them.
 *
 * <p>A machine that the keeper has already is built in where one is wanted, never where several are: there is one of it.
 *
 * <p>Of builds at one price, to a millionth, that which costs least over the years is taken, then the one with the pipe that
 * the study tells first, then the class that the catalogue tells first.
 */
final class BuildSearch {
    private static final double SAME_PRICE = 1e-6;

    private final List<PipeResult> pipes;
    private final List<BlowerClass> kinds;
    private final List<Pair> byPrice = new ArrayList<>();
    private final Map<Asking, Verdict> verdicts = new HashMap<>();
    private final Map<Integer, Basis> spareless = new HashMap<>();
    private final Runnable between;

    /** One build, by the places of its parts. */
    private record Pair(int pipe, int kind, double price) {}

    private record Asking(int pipe, int kind, boolean sparePa) {}

    private record Verdict(Candidate candidate, List<Limit.Broken> missed) {
        boolean misses(Limit limit) {
            return missed.stream().anyMatch(each -> each.limit() == limit);
        }
    }

    /**
     * Among the variants of a study.
     *
     * @param between runs before each verdict, and may throw to stop the search
     */
    BuildSearch(PipeStudy study, Runnable between) {
        this.between = between;
        this.pipes = study.results();
        Basis drawn = study.asDrawn().basis();
        this.kinds = drawn.buyable();
        for (int kind = 0; kind < kinds.size(); kind++) {
            double blower = drawn.priceOf(kinds.get(kind));
            for (int pipe = 0; pipe < pipes.size(); pipe++) {
                byPrice.add(new Pair(
                        pipe, kind, blower + pipes.get(pipe).variant().price().total()));
            }
        }
        byPrice.sort(Comparator.comparingDouble(Pair::price)
                .thenComparingInt(Pair::pipe)
                .thenComparingInt(Pair::kind));
    }

    int builds() {
        return byPrice.size();
    }

    /** The cheapest that meets everything but what is left out. */
    Optional<Build> cheapest(Optional<Limit> leftOut) {
        List<Build> atOnePrice = new ArrayList<>();
        double price = Double.POSITIVE_INFINITY;
        for (Pair pair : byPrice) {
            if (pair.price() > price + SAME_PRICE) {
                break;
            }
            if (!isHopeless(pair.kind(), leftOut) && meets(verdict(pair, leftOut), leftOut)) {
                price = Math.min(price, pair.price());
                atOnePrice.add(build(pair, leftOut));
            }
        }
        return atOnePrice.stream().min(Comparator.comparingDouble(Build::total));
    }

    /** Of all that meet everything, the one that costs least over the years; of two, the cheaper to buy. */
    Optional<Build> lasting() {
        return byPrice.stream()
                .filter(pair -> !isHopeless(pair.kind(), Optional.empty()))
                .filter(pair -> meets(verdict(pair, Optional.empty()), Optional.empty()))
                .map(pair -> build(pair, Optional.empty()))
                .min(Comparator.comparingDouble(Build::total).thenComparingDouble(Build::purchase));
    }

    private static boolean meets(Verdict verdict, Optional<Limit> leftOut) {
        return verdict.missed().stream()
                .allMatch(each -> leftOut.filter(limit -> limit == each.limit()).isPresent());
    }

    /** Whether no pipe helps: the class is for other mains, or too loud, and that counts. */
    private boolean isHopeless(int kind, Optional<Limit> leftOut) {
        Verdict drawn = verdict(new Pair(0, kind, 0), leftOut);
        return counts(drawn, Limit.MAINS, leftOut) || counts(drawn, Limit.NOISE, leftOut);
    }

    private static boolean counts(Verdict verdict, Limit limit, Optional<Limit> leftOut) {
        return verdict.misses(limit) && leftOut.filter(left -> left == limit).isEmpty();
    }

    private Verdict verdict(Pair pair, Optional<Limit> leftOut) {
        boolean spare = leftOut.filter(limit -> limit == Limit.SPARE).isEmpty();
        return verdicts.computeIfAbsent(new Asking(pair.pipe(), pair.kind(), spare), asked -> {
            between.run();
            Basis basis = basis(pair.pipe(), leftOut);
            Candidate candidate = basis.judge(kinds.get(pair.kind()));
            return new Verdict(candidate, basis.missed(candidate));
        });
    }

    private Basis basis(int pipe, Optional<Limit> leftOut) {
        Basis own = pipes.get(pipe).basis();
        return leftOut.filter(limit -> limit == Limit.SPARE)
                .map(spare -> spareless.computeIfAbsent(
                        pipe, absent -> own.wishing(own.room().wishes().withIndexSparePa(OptionalDouble.of(0)))))
                .orElse(own);
    }

    /** What misses least: limits before wishes, by the shares that are missed; then the cheapest. Made for these mains, if any is. */
    Optional<Build> nearest() {
        Comparator<Pair> order = Comparator.comparing(
                        (Pair pair) -> verdict(pair, Optional.empty()).misses(Limit.MAINS))
                .thenComparingDouble(pair -> missing(pair, false))
                .thenComparingDouble(pair -> missing(pair, true));
        return byPrice.stream().min(order).map(pair -> build(pair, Optional.empty()));
    }

    private double missing(Pair pair, boolean wishes) {
        return verdict(pair, Optional.empty()).missed().stream()
                .filter(each -> each.limit().isWish() == wishes)
                .mapToDouble(Limit.Broken::share)
                .sum();
    }

    private Build build(Pair pair, Optional<Limit> leftOut) {
        PipeResult pipe = pipes.get(pair.pipe());
        BlowerClass kind = kinds.get(pair.kind());
        Edit buying = pipe.basis().isChosen() ? BlowerEdits.choose(kind) : BlowerEdits.settle(kind);
        Room room = buying.of(pipe.variant().room());
        return build(pipe, verdict(pair, leftOut), room);
    }

    /** The room as drawn, with the study's blower. */
    Build drawn() {
        PipeResult pipe = pipes.get(0);
        return build(
                pipe,
                new Verdict(pipe.duty().candidate(), pipe.missed()),
                pipe.variant().room());
    }

    private static Build build(PipeResult pipe, Verdict verdict, Room room) {
        Candidate candidate = verdict.candidate();
        CostAnswer cost = pipe.basis().cost(candidate.fleet(), candidate.tired().gaugePa(), List.of());
        return new Build(
                pipe,
                candidate,
                verdict.missed(),
                cost.central().purchase(),
                cost.central().total(),
                cost.years(),
                room);
    }
}
