package lungfish.measured;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lungfish.measured.Candidates.Candidate;
import lungfish.room.Reading;
import org.hipparchus.special.Gamma;

/** Makes a measured room of two rounds of readings. */
final class Measuring {
    /** So improbable a misfit is a contradiction. Common practice, no source. */
    private static final double CONTRADICTS = 1e-3;

    private final Rounds rounds;
    private final Start start;
    private final Unknowns unknowns;
    private final Sections sections;
    private final Rows rows;
    private final List<Candidate> candidates;
    private final List<Reading> used;

    Measuring(Ground ground, Rounds rounds) {
        this.rounds = rounds;
        this.start = Start.of(ground, rounds, new Jars(ground));
        this.unknowns = new Unknowns(start);
        this.sections = new Sections(ground);
        this.rows = new Rows(start, unknowns, sections);
        this.used = rounds.now().stream().filter(rows::isUsed).toList();
        this.candidates = Candidates.of(ground, sections, read(ground));
    }

    private Set<Integer> read(Ground ground) {
        return used.stream()
                .map(Reading::measured)
                .flatMap(each ->
                        each instanceof Reading.Jar jar ? Stream.of(ground.outlet(jar.outlet())) : Stream.empty())
                .collect(Collectors.toSet());
    }

    /** Empty where nothing that was read can be held against the room. */
    Optional<MeasuredRoom> measured() {
        return used.isEmpty() || rounds.isFirst()
                ? Optional.empty()
                : weighing(used).map(this::measured);
    }

    private Optional<Weighing> weighing(List<Reading> readings) {
        Weighing weighing = Weighing.of(candidates, rows, unknowns, readings);
        return weighing.weighed().isEmpty() ? Optional.empty() : Optional.of(weighing);
    }

    private MeasuredRoom measured(Weighing weighing) {
        List<Suspect> suspects = suspects(weighing);
        Verdict verdict = verdict(weighing, suspects);
        Weighed best = weighing.best(suspects.get(0).culprit());
        boolean isLeak = verdict == Verdict.LIKELY && best.happening().culprit().kind() == Culprit.Kind.LEAK;
        Advising advising = new Advising(start, unknowns, sections, weighing, used);
        return new MeasuredRoom(
                rounds.setOn(),
                rounds.on(),
                used.size(),
                verdict,
                suspects,
                new Fitting(start, unknowns, rows, used, best).fit().map(Fit::fitted),
                isLeak ? places(weighing) : List.of(),
                isLeak ? advising.ofSections() : advising.ofCulprits(),
                verdict == Verdict.CONTRADICTION ? doubtful() : List.of(),
                rounds.now().stream().filter(reading -> !rows.isUsed(reading)).toList());
    }

    private static List<Suspect> suspects(Weighing weighing) {
        List<Suspect> suspects = new ArrayList<>();
        for (Map.Entry<Culprit, Double> each : weighing.by(Happening::culprit).entrySet()) {
            suspects.add(new Suspect(each.getKey(), weighing.best(each.getKey()).happening(), each.getValue()));
        }
        return suspects;
    }

    private List<LeakPlace> places(Weighing weighing) {
        Map<Integer, Double> shares = weighing.by(Advising::section);
        double leaks = shares.entrySet().stream()
                .filter(each -> each.getKey() >= 0)
                .mapToDouble(Map.Entry::getValue)
                .sum();
        return shares.entrySet().stream()
                .filter(each -> each.getKey() >= 0)
                .map(each -> new LeakPlace(sections.stretches(each.getKey()), each.getValue() / leaks))
                .toList();
    }

    private Verdict verdict(Weighing weighing, List<Suspect> suspects) {
        if (contradicts(weighing)) {
            return Verdict.CONTRADICTION;
        }
        Suspect first = suspects.get(0);
        if (!first.culprit().equals(Culprit.NOTHING)) {
            return first.probability() >= Verdict.SURE ? Verdict.LIKELY : Verdict.CANNOT_TELL;
        }
        boolean isWell = suspects.stream().skip(1).allMatch(Measuring::isOut) && !isStarving();
        return isWell ? Verdict.NOTHING_WRONG : Verdict.CANNOT_TELL;
    }

    private static boolean contradicts(Weighing weighing) {
        return agreement(weighing) < CONTRADICTS;
    }

    /** How probable so much misfit is, were the likeliest true. */
    private static double agreement(Weighing weighing) {
        Weighed best = weighing.weighed().get(0);
        return best.readings() < 2 ? 1 : Gamma.regularizedGammaQ(best.readings() / 2.0, best.misfit() / 2);
    }

    private static boolean isOut(Suspect suspect) {
        boolean isClog = suspect.culprit().kind() == Culprit.Kind.CLOG;
        return suspect.probability() < (isClog ? Verdict.UNLIKELY : Verdict.RULED_OUT);
    }

    /** Whether a jar told of an outlet that hardly gets any air. */
    private boolean isStarving() {
        Jars jars = new Jars(start.ground());
        return used.stream()
                .map(Reading::measured)
                .flatMap(each -> each instanceof Reading.Jar jar ? Stream.of(jar) : Stream.empty())
                .anyMatch(jar -> jars.flow(jar)
                        < Verdict.STARVES * start.flow()[start.ground().outlet(jar.outlet())]);
    }

    /** Leaves out one after another, and sees with which the rest go together. */
    private List<Reading> doubtful() {
        record Left(Reading reading, double agreement) {}
        return used.stream()
                .flatMap(reading -> weighing(used.stream()
                                .filter(each -> !each.id().equals(reading.id()))
                                .toList())
                        .map(rest -> new Left(reading, agreement(rest)))
                        .stream())
                .filter(left -> left.agreement() >= CONTRADICTS)
                .sorted(Comparator.comparingDouble((Left left) -> -left.agreement()))
                .map(Left::reading)
                .toList();
    }
}
