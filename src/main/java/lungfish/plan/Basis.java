package lungfish.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.cost.Bill;
import lungfish.cost.CostAnswer;
import lungfish.demand.Demand;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.headroom.Headroom;
import lungfish.headroom.Newcomer;
import lungfish.headroom.Search;
import lungfish.network.Refused;
import lungfish.noise.NoiseAnswer;
import lungfish.piping.PipedRoom;
import lungfish.piping.Stretch;
import lungfish.room.Room;
import lungfish.room.Wishes;
import lungfish.sizing.Asked;
import lungfish.sizing.Bench;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;
import lungfish.sizing.Needs;
import lungfish.sizing.PumpDuty;
import lungfish.sizing.Running;
import org.jspecify.annotations.Nullable;

/**
 * What choosing rests on: a room solved tuned, before any blower is chosen, and the bench on which every class is judged.
 * Much less work than a whole {@link Plan}; whoever looks at many variants of a room asks for this.
 */
public final class Basis {
    private final Setup setup;
    private final PipedRoom piped;
    private final Choosing choosing;
    private final Fleet places;
    private final Needed needed;
    private final Needed neededClean;
    private final Bench bench;
    /** Worked out when it is first asked for, as the ranking is; whoever works it out again finds the same. */
    private @Nullable AirSpeed speed;

    private @Nullable List<Candidate> ranked;

    private Basis(Setup setup, PipedRoom piped, Choosing choosing, Fleet places, Needed needed, Needed neededClean) {
        this.setup = setup;
        this.piped = piped;
        this.choosing = choosing;
        this.places = places;
        this.needed = needed;
        this.neededClean = neededClean;
        this.bench = choosing.bench(needed);
    }

    /**
     * The basis of a room.
     *
     * @param told why the network cannot be solved
     * @return empty where it cannot
     */
    static Optional<Basis> of(Setup setup, PipedRoom piped, Consumer<Refused> told) {
        Choosing choosing = new Choosing(setup, piped);
        Fleet places = choosing.places();
        return needed(piped, places, Upkeep.DUE, told).flatMap(due -> needed(piped, places, Upkeep.CLEAN, told)
                .map(clean -> new Basis(setup, piped, choosing, places, due, clean)));
    }

    private static Optional<Needed> needed(PipedRoom room, Fleet places, Upkeep upkeep, Consumer<Refused> told) {
        return Needs.of(room, places, upkeep, Optional::of, refused -> {
            told.accept(refused);
            return Optional.empty();
        });
    }

    Choosing choosing() {
        return choosing;
    }

    public Room room() {
        return setup.room();
    }

    public Catalogue catalogue() {
        return setup.catalogue();
    }

    public Demand demand() {
        return setup.demand();
    }

    public PipedRoom piped() {
        return piped;
    }

    /** With the devices due for cleaning: what headline answers take. */
    public Needed needed() {
        return needed;
    }

    public Needed neededClean() {
        return neededClean;
    }

    public Asked asked() {
        return choosing.asked();
    }

    /** The room's places, taken by the machines that it names, or by any class where it is silent. */
    public Fleet places() {
        return places;
    }

    /** Candidates: the room's own classes, and all of the catalogue that are more than small pumps. */
    public List<BlowerClass> classes() {
        return choosing.classes();
    }

    /**
     * The classes of which the open places can be filled by buying. One at no price stands at hand, but there is one of it
     * and no more can be bought: where several machines are wanted it is left out.
     */
    public List<BlowerClass> buyable() {
        return classes().stream()
                .filter(kind -> !kind.isAtHand() || places.openMachines() <= 1)
                .toList();
    }

    public Bench bench() {
        return bench;
    }

    /** The verdict on a class in the room's places. */
    public Candidate judge(BlowerClass kind) {
        return bench.verdict(places.as(kind));
    }

    /** All candidates, ranked by the keeper's wishes. */
    public List<Candidate> ranked() {
        List<Candidate> known = ranked;
        if (known == null) {
            known = bench.rank(places, classes());
            ranked = known;
        }
        return known;
    }

    /** Whether the room names every machine itself. */
    public boolean isChosen() {
        return choosing.isChosen();
    }

    /** The blower that the room names, or else the first of the ranking. */
    public Candidate chosen() {
        return isChosen() ? bench.verdict(places) : ranked().get(0);
    }

    /** The blower that the same room has in another state, judged in this one. */
    public Candidate like(Candidate there) {
        return isChosen() ? bench.verdict(places) : judge(there.kind());
    }

    /**
     * The same room, of which this is wished. Wishes change nothing that is solved, so nothing is solved again.
     */
    public Basis wishing(Wishes wishes) {
        Setup wished = new Setup(
                setup.room().withWishes(wishes),
                setup.catalogue(),
                setup.surroundings(),
                setup.demand(),
                setup.planned());
        return new Basis(wished, piped, new Choosing(wished, piped), places, needed, neededClean);
    }

    /**
     * Every limit and wish that a candidate misses in this room: those of the bench, and those that need the room to be
     * judged: each place's own share of the air, the spare at the index outlet, the speed in the pipe.
     */
    public List<Limit.Broken> missed(Candidate candidate) {
        return Misses.of(this, candidate);
    }

    /** How fast the air goes in the drawn pipe, at the targets. */
    public AirSpeed speed() {
        AirSpeed known = speed;
        if (known == null) {
            Set<Integer> drawn = piped.stretches().stream().map(Stretch::pipe).collect(Collectors.toSet());
            known = AirSpeed.of(needed.tuned(), drawn::contains);
            speed = known;
        }
        return known;
    }

    /** What a fleet costs with its pipe, where it runs, against the pumps of today. */
    public CostAnswer cost(Fleet fleet, double gaugePa, List<PumpDuty> pumps) {
        return Money.of(setup, fleet, gaugePa, pumps);
    }

    /** What a fleet costs in its first years where it runs, without the pipe. */
    public Bill costOfMachines(Fleet fleet, double gaugePa, int years) {
        return Money.ofMachines(setup, fleet, gaugePa, years);
    }

    /** Energy and rebuilds of a candidate in a year, averaged over its life. */
    public double perYear(Candidate candidate) {
        return choosing.perYear(candidate);
    }

    /** What a class costs to buy in the room's places, with filters and silencers; that of the pipe is apart. */
    public double priceOf(BlowerClass kind) {
        return Money.price(places.as(kind));
    }

    public NoiseAnswer noise(Fleet fleet) {
        return choosing.noise(fleet);
    }

    /** How many more outlets fit with a candidate. */
    public Headroom headroom(Candidate candidate) {
        Fleet fleet = candidate.fleet();
        double fresh = fleet.freeAt(neededClean.pressurePa(), Wear.NEW) - neededClean.freeM3PerS();
        return search(candidate).find(needed, fresh);
    }

    /** Looks for room for outlets like the commonest with a candidate; can be asked again with other numbers of the room. */
    public Search search(Candidate candidate) {
        return search(candidate, Newcomer.commonest(piped.needs()));
    }

    /** The same room with some of its outlets hung at one node; empty where it cannot be solved so. */
    public Optional<Basis> rehung(Predicate<Need> which, String node) {
        return of(setup, piped.rehung(which, node), refused -> {});
    }

    /** Looks for room for outlets of a kind with a candidate, at any node. */
    public Search search(Candidate candidate, Newcomer newcomer) {
        return new Search(piped, candidate.fleet(), needed, asked(), running -> further(candidate, running), newcomer);
    }

    /** The limits of a growing room that lie outside its pipe: noise, and the battery where a runtime is asked of it. */
    public Optional<Limit.Broken> further(Candidate candidate, Running running) {
        Optional<Limit.Broken> noise = candidate.broken().stream()
                .filter(each -> each.limit() == Limit.NOISE)
                .findFirst();
        return noise.or(() -> runtime(running.watts()));
    }

    /** The battery is a limit only where there is one, and a runtime was asked of it. */
    public Optional<Limit.Broken> runtime(double watts) {
        return choosing.runtime(watts);
    }
}
