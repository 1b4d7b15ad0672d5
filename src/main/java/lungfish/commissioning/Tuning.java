package lungfish.commissioning;

import static lungfish.commissioning.Expected.GAUGE_PA;
import static lungfish.commissioning.Expected.JAR_SHARE;
import static lungfish.commissioning.Expected.near;
import static lungfish.commissioning.Expected.together;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.build.SettingOrder;
import lungfish.catalogue.Catalogue;
import lungfish.commissioning.FirstStep.Kind;
import lungfish.commissioning.HeldRoom.Stand;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.piping.PipedRoom;
import lungfish.piping.ValveMaker;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.room.OutletId;
import lungfish.room.Spread;
import lungfish.sizing.Fleet;
import lungfish.sizing.Setting;

/**
 * The outlets set one by one: at first all valves at their coarse start, then each as its jar says. Where the bleed cannot hold
 * the pressure yet, since valves that are still at their start take too much, the gauge and the jar of that moment are told, so
 * that the valve comes to stand where it belongs when all are set.
 *
 * <p>How far a reading may be off: the gauge by its own error; where the bleed does not hold it, by what a blower that gives more
 * or less air than its data sheet makes of it, too; at a tap, by the error of the gauge at the blower and by what the jars' error
 * makes of the loss in the pipe between, which grows with the square of the flow.
 */
final class Tuning {
    private final Plan plan;
    private final PipedRoom piped;
    private final Fleet fleet;
    private final double holdPa;
    private final double curveShare;
    private final HeldRoom room;
    private final HeldRoom strong;
    private final List<Valve> valves;
    private final double[] startK;
    private final double[] setK;
    private final List<FirstStep> steps = new ArrayList<>();

    Tuning(Plan plan, PipedRoom piped, Fleet fleet, double holdPa, Catalogue catalogue) {
        this.plan = plan;
        this.piped = piped;
        this.fleet = fleet;
        this.holdPa = holdPa;
        this.curveShare = plan.room()
                .spreads()
                .of(Spread.CURVE)
                .orElse(catalogue.assumed(Spread.CURVE.usual()).si());
        this.room = new HeldRoom(piped, fleet, holdPa);
        this.strong = new HeldRoom(piped, strong(fleet), holdPa);
        this.valves = piped.needs().stream()
                .map(need -> ValveMaker.of(need.seat().outlet(), catalogue))
                .toList();
        this.startK = startK();
        this.setK = Setting.all(plan.duty().orElseThrow().neededClean().tuned(), holdPa, valves).stream()
                .mapToDouble(Setting::valveK)
                .toArray();
    }

    private Fleet strong(Fleet usual) {
        return usual.with(kind -> kind.giving(1 + curveShare, kind.tiredShare()));
    }

    private double[] startK() {
        Map<OutletId, Double> openings = new HashMap<>();
        for (OutletPlan outlet : plan.outlets()) {
            outlet.setting().ifPresent(setting -> openings.put(outlet.need().id(), setting.opening()));
        }
        return IntStream.range(0, valves.size())
                .mapToDouble(i -> Math.min(
                        Drop.SHUT_K,
                        valves.get(i)
                                .kAt(openings.getOrDefault(piped.needs().get(i).id(), 1.0))))
                .toArray();
    }

    /** The coefficients of the valves when all are set, in the order of the drops, 1/m⁴. */
    double[] setK() {
        return setK.clone();
    }

    /** The room when all are set; empty where it cannot be solved. */
    Optional<Stand> last() {
        return room.at(setK);
    }

    /** From the first turn of the bleed to the last; none where a state between cannot be solved. */
    List<FirstStep> steps() {
        double[] k = startK.clone();
        Optional<Stand> first = room.at(k);
        if (first.isEmpty()) {
            return List.of();
        }
        steps.add(FirstStep.running("bleed-first", Kind.BLEED_FIRST, Reads.gauge(gauge(first.get(), k))));
        boolean held = true;
        for (SettingOrder.Turn turn : SettingOrder.of(plan)) {
            int drop = drop(turn.need());
            if (drop >= 0 && turn.targetM3PerS() > 0) {
                k[drop] = setK[drop];
                Optional<Stand> stand = room.at(k);
                if (stand.isEmpty()) {
                    return List.of();
                }
                held &= stand.get().held();
                steps.add(valve(turn, drop, stand.get(), k));
            }
        }
        if (!held) {
            steps.add(FirstStep.running("jars-again", Kind.JARS_AGAIN, Reads.gauge(near(holdPa, GAUGE_PA))));
        }
        steps.add(FirstStep.running("bleed-last", Kind.BLEED_LAST, settled()));
        return steps;
    }

    private int drop(Need need) {
        return IntStream.range(0, piped.needs().size())
                .filter(i -> piped.needs().get(i).id().equals(need.id()))
                .findFirst()
                .orElse(-1);
    }

    private FirstStep valve(SettingOrder.Turn turn, int drop, Stand stand, double[] k) {
        double flow = stand.set().drop(drop).freeM3PerS();
        double jarS = stand.held() ? turn.jarS() : turn.jarS() * turn.targetM3PerS() / flow;
        double tapPa = stand.set().drop(drop).tapGaugePa();
        double pipePa = Math.max(0, stand.gaugePa() - tapPa);
        Expected gauge = gauge(stand, k);
        Reads reads = Reads.gauge(gauge)
                .withTap(near(tapPa, together(GAUGE_PA, gauge.giveOrTake(), 2 * JAR_SHARE * pipePa)))
                .withJar(near(jarS, JAR_SHARE * jarS));
        return FirstStep.running(FirstStep.valveKey(turn.need().id().text()), Kind.VALVE, reads)
                .at(turn.need().id().part());
    }

    private Expected gauge(Stand stand, double[] k) {
        double offPa = stand.held()
                ? 0
                : strong.at(k)
                        .map(other -> Math.abs(other.gaugePa() - stand.gaugePa()))
                        .orElse(0.0);
        return near(stand.gaugePa(), together(GAUGE_PA, offPa));
    }

    /** Gauge and watts when all is set. */
    Reads settled() {
        double watts = fleet.watts(holdPa, Wear.NEW);
        double byGauge = fleet.watts(holdPa + GAUGE_PA, Wear.NEW) - watts;
        return Reads.gauge(near(holdPa, GAUGE_PA)).withWatts(near(watts, together(curveShare * watts, byGauge)));
    }

    /** The gauge at the blowers with every tap open to the air and nothing hung on it, the bleed shut, Pa. */
    double openPa() {
        List<Drop> open = piped.network().drops().stream().map(Tuning::open).toList();
        Network network =
                piped.network(Upkeep.CLEAN, strong(fleet).sources(Wear.NEW)).withDrops(open);
        return HeldRoom.solved(network)
                .map(set -> IntStream.range(0, fleet.placed().size())
                        .mapToDouble(i -> set.source(i).gaugePa())
                        .max()
                        .orElse(0))
                .orElse(holdPa);
    }

    private static Drop open(Drop drop) {
        return new Drop(
                drop.id(),
                drop.node(),
                drop.valveKOpen(),
                drop.valveKOpen(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty());
    }
}
