package lungfish.outage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lungfish.blower.Machine;
import lungfish.blower.Machines;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.piping.PipedRoom;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import lungfish.sizing.Fleet;

/**
 * The blowers of a plan on their pipe, tired, the devices due for cleaning, as in all trials. Whatever stops or breaks, the
 * network is solved again with every other valve as it stands.
 */
final class Central implements Plant {
    private final Plan plan;
    private final PipedRoom piped;
    private final Fleet fleet;
    private final AsSet well;
    private final List<Source> standby;
    private final Catalogue catalogue;
    private final Map<State, List<Double>> known = new HashMap<>();

    private Central(Plan plan, PipedRoom piped, Fleet fleet, AsSet well, List<Source> standby, Catalogue catalogue) {
        this.plan = plan;
        this.piped = piped;
        this.fleet = fleet;
        this.well = well;
        this.standby = standby;
        this.catalogue = catalogue;
    }

    /** The blowers of a plan; empty where nothing could be solved. */
    static Optional<Plant> of(Plan plan, AsSet trial, Catalogue catalogue) {
        return plan.piped().flatMap(piped -> plan.duty().map(duty -> {
            Fleet fleet = duty.candidate().fleet();
            return new Central(plan, piped, fleet, trial, standby(plan.room(), piped, fleet, catalogue), catalogue);
        }));
    }

    /**
     * A standby joins the pipe where a planned blower does that feeds the same place, else where the first does; where it names
     * no class, it is of the same.
     */
    private static List<Source> standby(Room room, PipedRoom piped, Fleet fleet, Catalogue catalogue) {
        List<Source> sources = new ArrayList<>();
        for (Blower blower : room.blowers(Blower.Role.STANDBY)) {
            Machine machine = Machines.chosen(blower, room, catalogue)
                    .orElseGet(() -> Machines.as(fleet.kind(), blower, catalogue));
            sources.add(new Source.Blower(
                    blower.id().text(),
                    node(blower, room, piped, fleet),
                    machine.curve(Wear.TIRED, fleet.room()),
                    machine.count()));
        }
        return sources;
    }

    private static String node(Blower standby, Room room, PipedRoom piped, Fleet fleet) {
        return room.blowers(Blower.Role.PLANNED).stream()
                .filter(planned -> planned.feeds().equals(standby.feeds()))
                .flatMap(planned -> Optional.ofNullable(piped.blowerNodes().get(planned.id())).stream())
                .findFirst()
                .orElse(fleet.placed().get(0).node());
    }

    @Override
    public Plant standingBy(Room room) {
        return new Central(plan, piped, fleet, well, standby(room, piped, fleet, catalogue), catalogue);
    }

    @Override
    public List<Need> needs() {
        return piped.needs();
    }

    @Override
    public List<Double> airM3PerS(State state) {
        return known.computeIfAbsent(state.withoutBatteryPumps(), this::gives);
    }

    private List<Double> gives(State state) {
        List<Source> running = running(state);
        if (!state.powered() || running.isEmpty()) {
            return none();
        }
        if (state.essentialsOnly()) {
            return needs().stream()
                    .map(need -> need.essential() ? need.targetM3PerS().si() : 0)
                    .toList();
        }
        return state.equals(State.WELL) ? flows(well) : solved(state, running);
    }

    private List<Double> none() {
        return Collections.nCopies(needs().size(), 0.0);
    }

    private List<Source> running(State state) {
        List<Source> running = new ArrayList<>();
        for (int i = 0; i < fleet.placed().size(); i++) {
            Machine machine = fleet.placed().get(i).machine();
            boolean isStopped =
                    state.stopped().stream().anyMatch(id -> id.part().equals(machine.part()));
            Source source = well.network().sources().get(i);
            if (!isStopped) {
                running.add(source);
            } else if (machine.count() > 1 && source instanceof Source.Blower blower) {
                running.add(new Source.Blower(blower.id(), blower.node(), blower.curve(), machine.count() - 1));
            }
        }
        if (state.standby()) {
            standby.stream()
                    .filter(source ->
                            state.stopped().stream().noneMatch(id -> id.text().equals(source.id())))
                    .forEach(running::add);
        }
        return running;
    }

    private List<Double> solved(State state, List<Source> running) {
        Network broken = new Broken(well.network().withSources(running), piped).by(state.broken());
        if (broken.sources().isEmpty()) {
            return none();
        }
        return Solver.of(broken).asSet().match(this::flows, tuned -> none(), refused -> none());
    }

    /** By name: a network of which a part is shut off has fewer drops. */
    private List<Double> flows(AsSet set) {
        List<Double> flows = new ArrayList<>(none());
        List<String> ids = set.network().drops().stream().map(drop -> drop.id()).toList();
        for (int i = 0; i < flows.size(); i++) {
            int at = i < ids.size() && ids.get(i).equals(needs().get(i).id().text())
                    ? i
                    : ids.indexOf(needs().get(i).id().text());
            flows.set(
                    i,
                    at < 0 || Broken.isOpenEnd(set.network().drops().get(at))
                            ? 0
                            : set.drop(at).freeM3PerS());
        }
        return flows;
    }

    @Override
    public double watts() {
        return plan.duty().orElseThrow().candidate().tired().watts();
    }

    @Override
    public OptionalDouble essentialWatts() {
        return plan.essential().stream()
                .mapToDouble(duty -> duty.running().watts())
                .findFirst();
    }

    @Override
    public double startingWatts() {
        double surge = IntStream.range(0, fleet.placed().size())
                .mapToDouble(i -> fleet.placed().get(i).machine().kind().surgeFactor())
                .max()
                .orElse(1);
        return watts() * surge;
    }

    @Override
    public Set<BlowerId> blowers() {
        return fleet.placed().stream()
                .map(each -> new BlowerId(each.machine().part().id()))
                .collect(Collectors.toSet());
    }
}
