package lungfish.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.blower.Machine;
import lungfish.catalogue.BlowerClass.Kind;
import lungfish.network.Pipe;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Seat;

/**
 * Where the blowers stand and what is fitted to them.
 *
 * @param waterLineM highest water line of the tanks in place, above the floor; absent without tanks with outlets
 * @param runsAtPa gauge pressure where they run with the valves set, tired; absent where nothing is solved
 * @param bled whether surplus air is let out to hold that pressure
 * @param alarmPa where a low-pressure alarm is set
 * @param drains where water gathers in the pipe
 */
public record Placing(
        List<Standing> machines,
        OptionalDouble waterLineM,
        OptionalDouble runsAtPa,
        boolean bled,
        OptionalDouble alarmPa,
        List<Drain> drains) {
    /**
     * One place with its machines.
     *
     * @param heightM above the floor; absent: not drawn
     * @param count machines side by side
     * @param portM bore of the port of each
     * @param hoseM length of each hose
     * @param pipe size of the pipe that the hoses come to; absent where it is not known
     * @param reliefPa at which a relief valve opens; absent: none is needed
     * @param rebuildS running time until its rebuild kit is due
     */
    public record Standing(
            PartId part,
            Machine machine,
            OptionalDouble heightM,
            int count,
            double portM,
            double hoseM,
            Optional<String> pipe,
            OptionalDouble reliefPa,
            double rebuildS) {
        /** The higher of two that must not see water; absent where its height is not drawn. */
        public OptionalDouble aboveM(OptionalDouble waterLineM) {
            return heightM.isPresent() && waterLineM.isPresent()
                    ? OptionalDouble.of(heightM.getAsDouble() - waterLineM.getAsDouble())
                    : OptionalDouble.empty();
        }
    }

    /** A place where a drain valve goes. */
    public record Drain(RunId run, Point place) {}

    public Placing {
        machines = List.copyOf(machines);
        drains = List.copyOf(drains);
    }

    static Placing of(Plan plan, Optional<Hung> hung) {
        Room room = plan.room();
        List<Standing> machines = plan.duty()
                .map(duty -> duty.candidate().fleet().placed().stream()
                        .map(placed -> standing(plan, placed.machine(), placed.node(), hung))
                        .toList())
                .orElse(List.of());
        OptionalDouble water = room.seats().stream()
                .filter(seat -> !seat.planned())
                .mapToDouble(Seat::waterLineM)
                .max();
        return new Placing(
                machines,
                water,
                plan.duty()
                        .map(duty -> OptionalDouble.of(duty.candidate().tired().gaugePa()))
                        .orElse(OptionalDouble.empty()),
                plan.duty()
                        .map(duty -> !(duty.candidate().fleet().bleed() instanceof Blower.Unbled))
                        .orElse(false),
                plan.alarmPa(),
                drains(room, hung.map(Hung::feeds).orElse(List.of())));
    }

    private static Standing standing(Plan plan, Machine machine, String node, Optional<Hung> hung) {
        Optional<Blower> drawn = plan.room().blowers().stream()
                .filter(blower -> blower.id().part().equals(machine.part()))
                .findFirst();
        Optional<Pipe> hose = hung.flatMap(each ->
                each.hoses().stream().filter(pipe -> pipe.from().equals(node)).findFirst());
        return new Standing(
                machine.part(),
                machine,
                drawn.flatMap(blower -> blower.siting().place())
                        .map(place -> OptionalDouble.of(place.zM()))
                        .orElse(OptionalDouble.empty()),
                machine.count(),
                drawn.map(blower -> blower.fittings().portM())
                        .orElse(OptionalDouble.empty())
                        .orElse(machine.kind().portM()),
                hose.map(Pipe::lengthM).orElse(0.0),
                hose.flatMap(pipe -> hung.flatMap(each -> each.run(pipe.to())))
                        .flatMap(run -> run(plan.room(), run))
                        .map(Run::size),
                reliefPa(machine, drawn),
                machine.kind().rebuildS());
    }

    private static Optional<Run> run(Room room, RunId id) {
        return room.runs().stream().filter(run -> run.id().equals(id)).findFirst();
    }

    /**
     * Where the relief valve of a machine opens: what is said; else, for one that is harmed by a shut pipe, the pressure that it
     * bears for ever; absent where none is needed.
     *
     * @param drawn the blower of the room whose machine it is
     */
    public static OptionalDouble reliefPa(Machine machine, Optional<Blower> drawn) {
        OptionalDouble said = drawn.map(blower -> blower.fittings().reliefPa()).orElse(OptionalDouble.empty());
        boolean isHarmed = machine.kind().leastShare() > 0 || machine.kind().kind() == Kind.ROTARY_VANE;
        return said.isPresent() || !isHarmed
                ? said
                : OptionalDouble.of(machine.kind().continuousPa());
    }

    /** The foot of each run that a hose comes to from below; where there is none, the lowest place of the pipe. */
    private static List<Drain> drains(Room room, List<Outlet.OnRun> feeds) {
        List<Drain> drains = new ArrayList<>();
        for (Run run : room.runs()) {
            boolean isFed = feeds.stream().anyMatch(feed -> feed.run().equals(run.id()));
            double topM = run.points().stream().mapToDouble(Point::zM).max().orElse(0);
            if (isFed && run.lowestM() < topM) {
                drains.add(lowest(run));
            }
        }
        return !drains.isEmpty()
                ? drains
                : room.runs().stream()
                        .filter(run -> run.points().size() >= 2)
                        .min(Comparator.comparingDouble(Run::lowestM))
                        .map(run -> List.of(lowest(run)))
                        .orElse(List.of());
    }

    private static Drain lowest(Run run) {
        return new Drain(
                run.id(),
                run.points().stream().min(Comparator.comparingDouble(Point::zM)).orElseThrow());
    }
}
