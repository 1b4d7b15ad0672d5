package lungfish.sure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lungfish.sizing.Candidate;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/** What was found in each sample. Every sample writes its own places, so that threads do not meet. */
final class Tally {
    /** The figures of the chosen blower. */
    enum Figure {
        HEADROOM,
        RESERVE,
        NEEDED,
        RUNNING,
        GIVES,
        DRAWS
    }

    private final Map<Figure, double[]> figures = new EnumMap<>(Figure.class);
    private final boolean[][] served;
    private final boolean[][] fits;
    private final boolean[][] stages;

    Tally(int samples, int candidates, int stages) {
        for (Figure figure : Figure.values()) {
            figures.put(figure, new double[samples]);
        }
        this.served = new boolean[candidates][samples];
        this.fits = new boolean[candidates][samples];
        this.stages = new boolean[stages + 1][samples];
    }

    /** The chosen blower in the room as it is. */
    void chosen(int at, Needed needed, Candidate chosen, int headroom) {
        Running tired = chosen.tired();
        set(Figure.HEADROOM, at, headroom);
        set(Figure.RESERVE, at, chosen.reserveShare());
        set(Figure.NEEDED, at, needed.pressurePa());
        set(Figure.RUNNING, at, tired.gaugePa());
        set(Figure.GIVES, at, tired.freeM3PerS());
        set(Figure.DRAWS, at, tired.watts());
        stages[0][at] = chosen.serves();
    }

    private void set(Figure figure, int at, double si) {
        samples(figure)[at] = si;
    }

    private double[] samples(Figure figure) {
        return figures.getOrDefault(figure, new double[0]);
    }

    void candidate(int at, int number, Candidate candidate) {
        served[number][at] = candidate.serves();
        fits[number][at] = candidate.fits();
    }

    /** The chosen blower in a planned stage, counted from 0. */
    void stage(int at, int number, Candidate chosen) {
        stages[number + 1][at] = chosen.serves();
    }

    Band band(Figure figure, double planned) {
        return Band.of(samples(figure), planned);
    }

    /** Of the room as it is, then of each stage. */
    List<Odds> stages() {
        List<Odds> odds = new ArrayList<>();
        for (boolean[] stage : stages) {
            odds.add(odds(stage));
        }
        return odds;
    }

    Odds served(int candidate) {
        return odds(served[candidate]);
    }

    Odds fits(int candidate) {
        return odds(fits[candidate]);
    }

    private static Odds odds(boolean[] each) {
        long holds = IntStream.range(0, each.length).filter(i -> each[i]).count();
        return new Odds((int) holds, each.length);
    }
}
