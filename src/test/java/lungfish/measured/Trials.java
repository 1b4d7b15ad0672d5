package lungfish.measured;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Outlet;

/** Lets a keeper find out what happened, many times, and counts. */
final class Trials {
    static final int MOST_READINGS = 3;

    /** How a trial ended. */
    enum End {
        RIGHT,
        WRONG,
        CANNOT_TELL
    }

    /**
     * One trial.
     *
     * @param first what was said of the first readings
     * @param last what was said once the advice was followed
     * @param followed how often it was
     */
    record Told(End first, End last, int followed) {}

    private final Plan plan;

    Trials(Plan plan) {
        this.plan = plan;
    }

    Told told(Fault fault, long seed) {
        SplittableRandom random = new SplittableRandom(31 * seed + fault.draw);
        TrueRoom room = new TrueRoom(plan, fault, random.split());
        Keeper keeper = new Keeper(room, random.split());
        MeasuredRoom measured = measured(keeper);
        End first = end(room, measured);
        int followed = 0;
        while (goesOn(measured) && followed < MOST_READINGS && measured.next().isPresent()) {
            keeper.follow(measured.next().get());
            measured = measured(keeper);
            followed++;
        }
        return new Told(first, end(room, measured), followed);
    }

    /** Whether a leak is found between the right valves, by doing as advised until that is sure, for so many readings at most. */
    End located(long seed, int most) {
        SplittableRandom random = new SplittableRandom(31 * seed + Fault.LEAK.draw);
        TrueRoom room = new TrueRoom(plan, Fault.LEAK, random.split());
        Keeper keeper = new Keeper(room, random.split());
        MeasuredRoom measured = measured(keeper);
        for (int i = 0; i < most && !isPlaced(measured) && measured.next().isPresent(); i++) {
            keeper.follow(measured.next().get());
            measured = measured(keeper);
        }
        if (!isPlaced(measured)) {
            return End.CANNOT_TELL;
        }
        boolean isThere = measured.places().get(0).stretches().stream()
                .anyMatch(stretch -> room.leakPipes().contains(stretch.pipe()) && !hasValve(stretch.pipe()));
        return isThere ? End.RIGHT : End.WRONG;
    }

    private boolean hasValve(int pipe) {
        return Watched.isShut(
                plan,
                plan.piped().orElseThrow(),
                pipe,
                plan.room().runs().stream()
                        .flatMap(run -> run.fittings().stream()
                                .filter(fitting -> fitting.kind().contains("valve"))
                                .map(fitting -> new Outlet.OnRun(run.id(), fitting.atM())))
                        .toList());
    }

    private static boolean isPlaced(MeasuredRoom measured) {
        return !measured.places().isEmpty() && measured.places().get(0).probability() >= Verdict.SURE;
    }

    private static boolean goesOn(MeasuredRoom measured) {
        return measured.verdict() == Verdict.CANNOT_TELL || measured.verdict() == Verdict.CONTRADICTION;
    }

    private static MeasuredRoom measured(Keeper keeper) {
        Plan read = new Planner(DemoPlans.CATALOGUE).plan(keeper.file());
        return MeasuredRoom.of(read, DemoPlans.CATALOGUE, Keeper.TODAY).orElseThrow();
    }

    /** That nothing is wrong is a wrong answer where something is. */
    private static End end(TrueRoom room, MeasuredRoom measured) {
        return switch (measured.verdict()) {
            case CANNOT_TELL, CONTRADICTION -> End.CANNOT_TELL;
            case NOTHING_WRONG -> room.fault == Fault.NOTHING ? End.RIGHT : End.WRONG;
            case LIKELY -> isRight(room, measured.likeliest().culprit()) ? End.RIGHT : End.WRONG;
        };
    }

    private static boolean isRight(TrueRoom room, Culprit culprit) {
        return switch (culprit.kind()) {
            case NOTHING -> false;
            case BLOWER -> room.fault == Fault.WEAR;
            case LEAK -> room.fault == Fault.LEAK;
            case CLOG ->
                room.fault == Fault.CLOG
                        && room.needs
                                .get(room.clogged)
                                .id()
                                .equals(culprit.outlet().orElseThrow());
        };
    }

    /**
     * Trials of one fault, counted.
     *
     * @param first by what was said of the first readings
     * @param last by what was said in the end
     * @param followed readings in all that were advised
     */
    record Counted(Map<End, Integer> first, Map<End, Integer> last, int followed) {
        int first(End end) {
            return first.getOrDefault(end, 0);
        }

        int last(End end) {
            return last.getOrDefault(end, 0);
        }
    }

    Counted counted(Fault fault, int seeds) {
        Map<End, Integer> first = new EnumMap<>(End.class);
        Map<End, Integer> last = new EnumMap<>(End.class);
        int followed = 0;
        for (long seed = 0; seed < seeds; seed++) {
            Told told = told(fault, seed);
            first.merge(told.first(), 1, Integer::sum);
            last.merge(told.last(), 1, Integer::sum);
            followed += told.followed();
        }
        return new Counted(first, last, followed);
    }

    /** Prints the table of docs/measured.md: the name of a demo room, and how many rooms of each fault. */
    public static void main(String[] args) {
        Trials trials = new Trials(DemoPlans.plan(args[0]));
        int seeds = Integer.parseInt(args[1]);
        for (Fault fault : Fault.values()) {
            Counted counted = trials.counted(fault, seeds);
            System.out.println(fault + " | " + counted.first() + " | " + counted.last() + " | " + counted.followed());
        }
        Map<End, Integer> places = new EnumMap<>(End.class);
        for (long seed = 0; seed < seeds; seed++) {
            places.merge(trials.located(seed, MOST_READINGS + 2), 1, Integer::sum);
        }
        System.out.println("place of the leak | " + places);
    }
}
