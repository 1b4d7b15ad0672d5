package lungfish.choice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lungfish.blower.Wear;
import lungfish.cost.Bill;
import lungfish.plan.Basis;
import lungfish.room.Listener;
import lungfish.room.Room;
import lungfish.room.Wishes.Wish;
import lungfish.sizing.Asked;
import lungfish.sizing.Candidate;
import lungfish.sizing.Needed;
import lungfish.sizing.PumpDuty;
import lungfish.sizing.Pumps;
import lungfish.sizing.Ranking;

/**
 * Every blower that could serve a room, own ones among them, ranked by the keeper's order of wishes, with the figures that
 * one buys by.
 *
 * @param needed what the room needs with devices due for cleaning
 * @param asked what is wished beyond that
 * @param order every wish, the one that matters most first
 * @param rows the best first
 */
public record BlowerBench(Room room, Needed needed, Asked asked, List<Wish> order, List<BenchRow> rows) {
    /** Over which what a machine costs is counted: long enough for rebuilds and power to tell, short enough to imagine. */
    public static final int YEARS = 5;

    public BlowerBench {
        order = List.copyOf(order);
        rows = List.copyOf(rows);
    }

    /** The bench of a room, against the pumps that it has today. */
    public static BlowerBench of(Basis basis) {
        return of(basis, Pumps.of(basis.room(), basis.demand(), basis.catalogue()));
    }

    /**
     * The bench of a room.
     *
     * @param pumps of today, against which a blower pays back
     */
    public static BlowerBench of(Basis basis, List<PumpDuty> pumps) {
        List<Candidate> ranked = basis.ranked();
        Ranking ranking = basis.bench().ranking(ranked);
        Reasons reasons = new Reasons(ranked, ranking, basis::perYear);
        List<BenchRow> rows = ranked.stream()
                .map(candidate -> row(candidate, basis, pumps, reasons.of(candidate)))
                .toList();
        return new BlowerBench(basis.room(), basis.needed(), basis.asked(), ranking.order(), rows);
    }

    private static BenchRow row(Candidate candidate, Basis basis, List<PumpDuty> pumps, BenchReason reason) {
        double gaugePa = candidate.tired().gaugePa();
        Bill bill = basis.costOfMachines(candidate.fleet(), gaugePa, YEARS);
        OptionalInt payback = basis.cost(candidate.fleet(), gaugePa, pumps).paybackYear();
        boolean isOwn = basis.room().ownClasses().blowers().contains(candidate.kind());
        return new BenchRow(
                candidate, reserveNew(candidate, basis), bill, basis.perYear(candidate), payback, isOwn, reason);
    }

    private static double reserveNew(Candidate candidate, Basis basis) {
        Needed clean = basis.neededClean();
        double gives = candidate.fleet().freeAt(clean.pressurePa(), Wear.NEW);
        return clean.freeM3PerS() > 0 ? gives / clean.freeM3PerS() - 1 : 0;
    }

    /** How many keep every wish, of those made for the room's mains. */
    public long fitting() {
        return rows.stream().filter(row -> row.candidate().fits()).count();
    }

    /** How many serve the room, be they short of a wish. */
    public long serving() {
        return rows.stream()
                .filter(row -> row.candidate().suitsMains() && row.candidate().serves())
                .count();
    }

    /** How many are made for the room's mains. */
    public long ofThisMains() {
        return rows.stream().filter(row -> row.candidate().suitsMains()).count();
    }

    /** Where the level is heard, in the keeper's words: "the desk"; absent: assumed. */
    public Optional<String> listener() {
        return room.listener().map(Listener::name);
    }

    /** The row of a class. */
    public Optional<BenchRow> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }
}
