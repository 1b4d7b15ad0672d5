package lungfish.measured;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import lungfish.measured.Unknowns.Felt;
import lungfish.room.Outlet;
import lungfish.room.Reading;

/**
 * Which reading would tell most next: the one of which most information is to be expected, that is by how much it would lessen,
 * on average, the entropy of what may have happened (D. V. Lindley, "On a Measure of the Information Provided by an Experiment",
 * Annals of Mathematical Statistics 27(4), 1956, p. 986).
 */
final class Advising {
    /** The middles of eight equal shares of the standard normal distribution: NIST/SEMATECH e-Handbook, 1.3.6.7.1. */
    private static final double[] DEVIATES = {-1.5341, -0.8871, -0.4888, -0.1573, 0.1573, 0.4888, 0.8871, 1.5341};

    private static final double WORTH_A_LOOK = 1e-4;

    private final Start start;
    private final Unknowns unknowns;
    private final Sections sections;
    private final List<Reading> readings;
    private final List<Kept> kept = new ArrayList<>();

    /** One that is probable enough to matter. */
    private record Kept(Weighed weighed, double share, Stand stand) {}

    Advising(Start start, Unknowns unknowns, Sections sections, Weighing weighing, List<Reading> readings) {
        this.start = start;
        this.unknowns = unknowns;
        this.sections = sections;
        this.readings = readings;
        double[] none = new double[unknowns.count()];
        for (int i = 0; i < weighing.weighed().size(); i++) {
            Weighed each = weighing.weighed().get(i);
            double share = weighing.shares().get(i);
            if (share > WORTH_A_LOOK) {
                weighing.rows()
                        .stand(each.happening(), none)
                        .ifPresent(stand -> kept.add(new Kept(each, share, stand)));
            }
        }
    }

    /** The reading that tells most of what happened; empty where none tells anything. */
    Optional<NextReading> ofCulprits() {
        List<NextReading> all = new ArrayList<>();
        for (int i = 0; i < start.outlets(); i++) {
            int outlet = i;
            all.add(new NextReading.Jar(
                    start.ground().needs().get(i).id(), bits(Happening::culprit, each -> jar(each, outlet))));
        }
        if (readings.stream().noneMatch(reading -> reading.measured() instanceof Reading.Gauge)) {
            all.add(new NextReading.Gauge(bits(Happening::culprit, this::gauge)));
        }
        all.add(new NextReading.Fall(List.of(), bits(Happening::culprit, each -> fall(each, List.of()))));
        return best(all);
    }

    /** The reading that tells most of where a leak is; empty where no valve parts the pipe further. */
    Optional<NextReading> ofSections() {
        List<NextReading> all = new ArrayList<>();
        for (List<Outlet.OnRun> shut : closings()) {
            all.add(new NextReading.Fall(shut, bits(Advising::section, each -> fall(each, shut))));
        }
        return best(all);
    }

    private static Optional<NextReading> best(List<NextReading> all) {
        return all.stream().max(Comparator.comparingDouble(NextReading::bits)).filter(next -> next.bits() > 0.01);
    }

    static int section(Happening happening) {
        return happening instanceof Happening.Leak leak ? leak.section() : -1;
    }

    /** Every set of valves of which the last few cut some sections off, the smallest sets first; few rooms have more than eight. */
    private List<List<Outlet.OnRun>> closings() {
        List<Outlet.OnRun> valves = sections.valves();
        List<List<Outlet.OnRun>> all = new ArrayList<>();
        for (int i = 0; i < valves.size(); i++) {
            all.add(List.of(valves.get(i)));
            for (int k = i + 1; k < valves.size(); k++) {
                all.add(List.of(valves.get(i), valves.get(k)));
            }
        }
        if (valves.size() > 2) {
            all.add(valves);
        }
        return all;
    }

    private <K> double bits(Function<Happening, K> kind, Function<Kept, Foreseen> reading) {
        List<Foreseen> foreseen = kept.stream().map(reading).toList();
        Map<K, Integer> numbers = new HashMap<>();
        int[] number = kept.stream()
                .mapToInt(each ->
                        numbers.computeIfAbsent(kind.apply(each.weighed().happening()), key -> numbers.size()))
                .toArray();
        double[] before = new double[numbers.size()];
        IntStream.range(0, number.length)
                .forEach(i -> before[number[i]] += kept.get(i).share());
        double left = 0;
        double all = Arrays.stream(before).sum();
        for (int i = 0; i < number.length; i++) {
            for (double deviate : DEVIATES) {
                double at = foreseen.get(i).mean()
                        + deviate * Math.sqrt(foreseen.get(i).variance());
                left += kept.get(i).share()
                        / all
                        / DEVIATES.length
                        * entropy(after(foreseen, number, numbers.size(), at));
            }
        }
        return Math.max(0, entropy(before) - left);
    }

    /** What each kind would weigh once a reading told this. */
    private double[] after(List<Foreseen> foreseen, int[] number, int kinds, double at) {
        double[] after = new double[kinds];
        for (int i = 0; i < number.length; i++) {
            after[number[i]] += kept.get(i).share() * foreseen.get(i).density(at);
        }
        return after;
    }

    /** In bits; the weights need not add up to 1. */
    private static double entropy(double[] weights) {
        double all = Arrays.stream(weights).sum();
        double sum = 0;
        for (double weight : weights) {
            double share = all > 0 ? weight / all : 0;
            sum -= share > 0 ? share * Math.log(share) / Math.log(2) : 0;
        }
        return sum;
    }

    /** The natural logarithm of the flow that a jar would tell. */
    private Foreseen jar(Kept each, int outlet) {
        Stand stand = each.stand();
        OutletLaw law = start.laws().get(outlet);
        double flow = Math.max(stand.flow(outlet), 1e-3 * start.flow()[outlet]);
        double grows = law.slope(flow, stand.off(outlet)) * flow;
        double[] slope = new double[unknowns.count()];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = stand.pressure(k) / grows;
        }
        for (Felt felt : unknowns.felt(outlet)) {
            slope[felt.unknown()] -= felt.input().slope(law, flow, stand.off(outlet)) / grows;
        }
        double wobble = Doubts.WOBBLE_PA / grows;
        return each.weighed().foreseen(Math.log(flow), slope, Doubts.JAR_SHARE * Doubts.JAR_SHARE + wobble * wobble);
    }

    private Foreseen gauge(Kept each) {
        double[] slope = new double[unknowns.count()];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = each.stand().pressure(k);
        }
        slope[unknowns.gauge] += 1;
        return each.weighed().foreseen(each.stand().headerPa(), slope, Doubts.WOBBLE_PA * Doubts.WOBBLE_PA);
    }

    private Foreseen fall(Kept each, List<Outlet.OnRun> shut) {
        boolean[] reached = sections.reached(shut);
        Happening happening = each.weighed().happening();
        double leaks = happening instanceof Happening.Leak leak && reached[leak.section()] ? leak.share() : 0;
        double[] slope = new double[unknowns.count()];
        slope[unknowns.seep] = 1;
        double share = leaks + Doubts.SEEP_SHARE;
        double doubt = Doubts.FALL_SHARE * share;
        double noise = Fallen.varianceOf(start, sections.volumeM3(reached), share) + doubt * doubt;
        return each.weighed().foreseen(share, slope, noise);
    }
}
