package lungfish.sure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Room;
import lungfish.room.Spread;
import lungfish.sizing.Candidate;
import lungfish.sure.Tally.Figure;

/**
 * Asks how sure the plan of a room is, by looking at many rooms like it.
 *
 * <p>In each sample every input that may be off is drawn anew ({@link Widths}, {@link Chance}); the room is solved, tuned,
 * with these numbers, and every blower of the bench is judged on it, tired and with devices due, just as in the plan. All
 * blowers and all stages see the same luck, so that their differences are sharper than their odds.
 *
 * <p>Samples come in blocks, each with a seed of its own that follows from the one given, and every sample has its own place
 * in the answer: it is the same to the last bit whoever works on which block. That is why this engine, unlike the others,
 * may use two threads; a thousand samples of a bench are worth it, and a third thread would be taken from the window.
 *
 * <p>What the doubt comes from is found one input at a time: the variance of the reserve where only that input is off. See
 * docs/decisions/0018-how-sure.md.
 */
public final class Sampling {
    /** So many samples, if nobody says otherwise: odds of a half are then good to three of a hundred. */
    public static final int USUAL_SAMPLES = 1000;

    /** No question is worth more. */
    public static final int MOST_SAMPLES = 100_000;

    /** The seed, if nobody says otherwise. */
    public static final long USUAL_SEED = 1;

    private static final int BLOCK = 50;
    private static final int THREADS = 2;

    /** Samples for each input alone: its variance is then good to a seventh. */
    private static final int ALONE = 200;

    private final Ground ground;
    private final Progress progress;
    private final long[] seeds;
    private final Tally tally;
    private final List<Spread> off;
    private final double[][] alone;
    private final int samples;
    private final int steps;
    private int done;

    private Sampling(Ground ground, int samples, long seed, Progress progress) {
        this.ground = ground;
        this.progress = progress;
        this.samples = samples;
        SplittableRandom root = new SplittableRandom(seed);
        this.seeds = new long[(samples + BLOCK - 1) / BLOCK];
        for (int i = 0; i < seeds.length; i++) {
            seeds[i] = root.nextLong();
        }
        this.tally =
                new Tally(samples, ground.candidates().size(), ground.stages().size());
        this.off = List.of(Spread.values()).stream()
                .filter(spread -> ground.widths().of(spread) > 0)
                .toList();
        this.alone = new double[off.size()][Math.min(samples, ALONE)];
        this.steps = samples + off.size() * Math.min(samples, ALONE);
    }

    /**
     * How sure the plan is.
     *
     * @param samples 2 to {@link #MOST_SAMPLES}
     * @return empty where there is no plan: without a pipe or outlets, and where the network cannot be solved
     * @throws IllegalArgumentException when the room names a class that is nowhere, which its reader rules out
     */
    public static Optional<Sureness> of(Planner planner, Room room, int samples, long seed, Progress progress) {
        return Ground.of(planner, room).map(ground -> new Sampling(ground, samples, seed, progress).answer(THREADS));
    }

    /** For tests: the same with so many threads. */
    static Sureness of(Ground ground, int samples, long seed, int threads) {
        return new Sampling(ground, samples, seed, Progress.UNHEARD).answer(threads);
    }

    private Sureness answer(int threads) {
        IntStream hands = IntStream.range(0, threads);
        (threads > 1 ? hands.parallel() : hands).forEach(first -> work(first, threads));
        return new Sureness(ground.chosen(), samples, bands(), stages(), candidates(), weights());
    }

    /** Every so-manieth block, from the first of this thread. */
    private void work(int first, int threads) {
        Sampler sampler = new Sampler(ground);
        for (int block = first; block < seeds.length; block += threads) {
            int begin = block * BLOCK;
            Draws draws = new Draws(ground.layout(), Math.min(BLOCK, samples - begin), seeds[block]);
            for (int i = 0; i < draws.samples(); i++) {
                sampler.look(draws, i, tally, begin + i);
                step();
                alone(sampler, draws, i, begin + i);
            }
        }
    }

    private void alone(Sampler sampler, Draws draws, int sample, int at) {
        for (int i = 0; at < ALONE && i < off.size(); i++) {
            alone[i][at] = sampler.reserve(ground.widths().only(off.get(i)), draws, sample);
            step();
        }
    }

    private synchronized void step() {
        done++;
        progress.at(done, steps);
    }

    private Sureness.Bands bands() {
        Candidate chosen = ground.chosen();
        Basis now = ground.now();
        return new Sureness.Bands(
                tally.band(Figure.HEADROOM, now.headroom(chosen).outlets()),
                tally.band(Figure.RESERVE, chosen.reserveShare()),
                tally.band(Figure.NEEDED, now.needed().pressurePa()),
                tally.band(Figure.RUNNING, chosen.tired().gaugePa()),
                tally.band(Figure.GIVES, chosen.tired().freeM3PerS()),
                tally.band(Figure.DRAWS, chosen.tired().watts()));
    }

    private List<Sureness.StageOdds> stages() {
        List<Odds> odds = tally.stages();
        List<Sureness.StageOdds> stages = new ArrayList<>();
        int here = ground.now().piped().needs().size();
        stages.add(new Sureness.StageOdds(ground.when(), here, odds.get(0)));
        for (int i = 0; i < ground.stages().size(); i++) {
            Ground.Planned later = ground.stages().get(i);
            int then = later.basis().piped().needs().size();
            stages.add(new Sureness.StageOdds(later.when(), then, odds.get(i + 1)));
        }
        return stages;
    }

    private List<Sureness.CandidateOdds> candidates() {
        return IntStream.range(0, ground.candidates().size())
                .mapToObj(i -> new Sureness.CandidateOdds(ground.candidates().get(i), tally.served(i), tally.fits(i)))
                .toList();
    }

    private List<Weight> weights() {
        double[] variances = IntStream.range(0, off.size())
                .mapToDouble(i -> variance(alone[i]))
                .toArray();
        double sum =
                IntStream.range(0, off.size()).mapToDouble(i -> variances[i]).sum();
        return IntStream.range(0, sum > 0 ? off.size() : 0)
                .mapToObj(i -> new Weight(
                        off.get(i),
                        ground.widths().of(off.get(i)),
                        variances[i] / sum,
                        Band.of(alone[i], ground.chosen().reserveShare())))
                .sorted(Comparator.comparingDouble(Weight::share).reversed())
                .toList();
    }

    private static double variance(double[] samples) {
        double mean = IntStream.range(0, samples.length)
                .mapToDouble(i -> samples[i])
                .average()
                .orElse(0);
        double sum = 0;
        for (double sample : samples) {
            sum += (sample - mean) * (sample - mean);
        }
        return samples.length > 1 ? sum / (samples.length - 1) : 0;
    }
}
