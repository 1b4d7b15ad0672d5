package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import lungfish.room.OutletId;

/**
 * All that may have happened, each in steps of its size, and how probable each is before anything is read. Devices clog far more
 * often than pipes leak or blowers fail early: common practice, no source.
 */
final class Candidates {
    static final double NOTHING = 0.5;
    private static final double WEAR = 0.12;
    private static final double LEAK = 0.12;
    private static final double CLOG = 0.26;

    private static final double[] LOST = {0.1, 0.13, 0.17, 0.21, 0.26, 0.32, 0.4, 0.5, 0.62};
    private static final double[] LEAKS = {0.04, 0.06, 0.09, 0.12, 0.16, 0.21, 0.27, 0.35, 0.45, 0.6};
    /** Of an outlet that nobody read all sizes look alike. */
    private static final double[] LEFT_UNREAD = {0.25};

    private static final double[] LEFT = {0.55, 0.48, 0.4, 0.32, 0.24, 0.16, 0.1, 0.05};

    /**
     * One of them.
     *
     * @param lnPrior natural logarithm of its probability before anything is read
     */
    record Candidate(Happening happening, double lnPrior) {}

    private Candidates() {}

    /**
     * All of a room.
     *
     * @param read numbers of the outlets whose jars were read
     */
    static List<Candidate> of(Ground ground, Sections sections, Set<Integer> read) {
        List<Candidate> all = new ArrayList<>();
        all.add(new Candidate(new Happening.Nothing(), Math.log(NOTHING)));
        DoubleStream.of(LOST)
                .forEach(lost -> all.add(new Candidate(new Happening.Wear(lost), Math.log(WEAR / LOST.length))));
        for (int section = 0; section < sections.count(); section++) {
            double each = LEAK / LEAKS.length * sections.share(section);
            int here = section;
            DoubleStream.of(LEAKS)
                    .forEach(share -> all.add(new Candidate(new Happening.Leak(here, share), Math.log(each))));
        }
        for (int i = 0; i < ground.needs().size(); i++) {
            OutletId id = ground.needs().get(i).id();
            double[] sizes = read.contains(i) ? LEFT : LEFT_UNREAD;
            int outlet = i;
            double each = CLOG / ground.needs().size() / sizes.length;
            DoubleStream.of(sizes)
                    .forEach(left -> all.add(new Candidate(new Happening.Clog(outlet, id, left), Math.log(each))));
        }
        return all;
    }
}
