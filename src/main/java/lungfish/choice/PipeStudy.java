package lungfish.choice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.plan.Basis;
import lungfish.plan.Duty;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/**
 * The same room with each pipe: what reaches the taps, what the pipe costs, and which is good enough. The blower is that of
 * the room as drawn throughout, so that only the pipe makes the difference.
 *
 * @param room as drawn
 * @param results the room as drawn first, then layout by layout, the smallest pipe first
 */
public record PipeStudy(Room room, List<PipeResult> results) {
    /** What misses a limit by no more of the allowed than this beyond the widest pipe misses it as the widest does. */
    private static final double NO_WORSE_SHARE = 0.01;

    public PipeStudy {
        results = List.copyOf(results);
    }

    /** Every variant of a room, solved; empty where the room itself cannot be solved, or has no main. */
    public static Optional<PipeStudy> of(Room room, Planner planner, Progress progress) {
        List<PipeVariant> variants = PipeVariants.of(room, planner);
        Optional<Basis> drawn = planner.basis(room);
        return drawn.isEmpty() || variants.isEmpty()
                ? Optional.empty()
                : Optional.of(new Work(planner, drawn.get()).study(variants, progress));
    }

    public PipeResult asDrawn() {
        return results.get(0);
    }

    /** That of the room as drawn first. */
    public Set<PipeLayout> layouts() {
        return results.stream()
                .map(each -> each.variant().layout())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The results with one layout, the smallest pipe first; as drawn among them, first where its sizes are mixed. */
    public List<PipeResult> with(PipeLayout layout) {
        return results.stream()
                .filter(each -> each.variant().layout().equals(layout))
                .sorted((one, other) -> Double.compare(boreM(one), boreM(other)))
                .toList();
    }

    private static double boreM(PipeResult result) {
        return result.variant().size().map(size -> size.boreM()).orElse(0.0);
    }

    /** The smallest pipe that is good enough in a layout; empty where none is. */
    public Optional<PipeResult> smallest(PipeLayout layout) {
        return with(layout).stream()
                .filter(each -> each.good() && each.variant().size().isPresent())
                .findFirst();
    }

    /** Whether some size of the drawn layout is felt: otherwise the smallest that is not too fast will do. */
    public boolean pipeMatters() {
        return with(asDrawn().variant().layout()).stream().anyMatch(each -> !each.good() || each.matters());
    }

    /** Solves the variants of one room. */
    private record Work(Planner planner, Basis drawn) {
        PipeStudy study(List<PipeVariant> variants, Progress progress) {
            Candidate chosen = drawn.chosen();
            List<PipeResult> solved = new ArrayList<>();
            for (int i = 0; i < variants.size(); i++) {
                progress.at(i, variants.size());
                PipeVariant variant = variants.get(i);
                Optional<Basis> basis = variant.asDrawn() ? Optional.of(drawn) : planner.basis(variant.room());
                basis.ifPresent(each -> solved.add(result(variant, each, chosen)));
            }
            progress.at(variants.size(), variants.size());
            Map<Limit, Double> unavoidable = unavoidable(solved);
            return new PipeStudy(
                    drawn.room(),
                    solved.stream().map(each -> judged(each, unavoidable)).toList());
        }

        private PipeResult result(PipeVariant variant, Basis basis, Candidate chosen) {
            Candidate candidate = basis.like(chosen);
            Duty duty = new Duty(candidate, !basis.isChosen(), basis.needed(), basis.neededClean());
            return new PipeResult(
                    variant,
                    basis,
                    duty,
                    basis.missed(candidate),
                    List.of(),
                    TapLosses.of(basis),
                    basis.speed().metresPerS());
        }

        /**
         * By what share of the allowed the blower misses each limit even with the widest pipe in the drawn layout: that is
         * not the pipe's fault.
         */
        private static Map<Limit, Double> unavoidable(List<PipeResult> solved) {
            PipeLayout layout = solved.get(0).variant().layout();
            PipeResult widest = solved.stream()
                    .filter(each -> each.variant().layout().equals(layout))
                    .reduce(solved.get(0), (one, other) -> boreM(other) > boreM(one) ? other : one);
            Map<Limit, Double> shares = new EnumMap<>(Limit.class);
            widest.missed().forEach(each -> shares.merge(each.limit(), each.share(), Math::max));
            shares.remove(Limit.SPEED);
            return shares;
        }

        private static PipeResult judged(PipeResult result, Map<Limit, Double> unavoidable) {
            return result.blamed(result.missed().stream()
                    .filter(each -> each.share()
                            > unavoidable.getOrDefault(each.limit(), Double.NEGATIVE_INFINITY) + NO_WORSE_SHARE)
                    .toList());
        }
    }
}
