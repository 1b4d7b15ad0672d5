package lungfish.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.network.Answer;
import lungfish.network.Conditions;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.piping.PipedRoom;

/** Runs the room as its valves are set: blowers, main, bleed and drops solved together. */
public final class Trial {
    private final PipedRoom room;
    private final Fleet fleet;
    private final Tuned tuned;
    private final Running running;

    /**
     * A trial of a room.
     *
     * @param tuned what each blower was asked for
     * @param running where they run when tuned, and so how far their bleeds stand open
     */
    public Trial(PipedRoom room, Fleet fleet, Tuned tuned, Running running) {
        this.room = room;
        this.fleet = fleet;
        this.tuned = tuned;
        this.running = running;
    }

    /** The network as set: outlets in their order first, then the bleeds. */
    public Network network(Wear wear, Upkeep upkeep, double[] valveK) {
        Network base = room.network(upkeep, fleet.sources(wear));
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < valveK.length; i++) {
            drops.add(base.drops().get(i).withValveK(valveK[i]));
        }
        drops.addAll(bleeds(base.conditions(), wear));
        return base.withDrops(drops);
    }

    /** Solved. */
    public Answer asSet(Wear wear, Upkeep upkeep, double[] valveK) {
        return Solver.of(network(wear, upkeep, valveK)).asSet();
    }

    /** A bleed is a valve to the open air, set once so that its blower stands at the running pressure. */
    private List<Drop> bleeds(Conditions conditions, Wear wear) {
        List<Drop> bleeds = new ArrayList<>();
        for (int i = 0; i < fleet.placed().size(); i++) {
            Fleet.Placed placed = fleet.placed().get(i);
            double gives = fleet.freeAt(i, running.gaugePa(), wear);
            double bled = gives - tuned.source(i).askedM3PerS();
            if (bled > 1e-9 * gives && running.bledM3PerS() > 0) {
                bleeds.add(bleed(conditions, placed, running.gaugePa(), bled));
            }
        }
        return bleeds;
    }

    /** The bleed of a machine that lets out so much free air at this pressure. */
    public static Drop bleed(Conditions conditions, Fleet.Placed placed, double gaugePa, double freeM3PerS) {
        double ambient = conditions.ambientPa();
        double flow = freeM3PerS * conditions.airDensityKgPerM3();
        double k = Valve.kTaking(ambient + gaugePa, ambient, flow, conditions.pipeTemperatureK());
        return new Drop(
                "bleed " + placed.machine().part().id(),
                placed.node(),
                k,
                k,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty());
    }
}
