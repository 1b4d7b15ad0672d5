package lungfish.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.outage.Drill;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.room.TankId;

/** An outage that was played through, as pictures ask for it: made once, off the event thread. Immutable. */
public final class OutagePlayed {
    private final Drill drill;
    private final Map<TankId, TankDrill> byTank = new HashMap<>();
    private final OxygenBand band;

    private OutagePlayed(Drill drill) {
        this.drill = drill;
        drill.tanks().forEach(tank -> byTank.put(tank.tank().id(), tank));
        this.band = OxygenBand.of(drill);
    }

    public static OutagePlayed of(Drill drill) {
        return new OutagePlayed(drill);
    }

    public Drill drill() {
        return drill;
    }

    /** The least and the most oxygen of all tanks, at worst. */
    OxygenBand band() {
        return band;
    }

    /** What becomes of a tank; empty for one that is only planned. */
    public Optional<TankDrill> tank(TankId id) {
        return Optional.ofNullable(byTank.get(id));
    }

    /** The oxygen of a tank at a time, g/m³; empty where none was followed. */
    public static OptionalDouble levelGPerM3(TankDrill tank, Case how, double atS) {
        return tank.courses().stream()
                .mapToDouble(both -> both.of(how).atS(atS))
                .findFirst();
    }

    /** How a tank stands at a time. A time that is typed for it goes before what its oxygen says. */
    public static OxygenState state(TankDrill tank, Case how, double atS) {
        if (!tank.isJudged()) {
            return OxygenState.UNKNOWN;
        }
        if (tank.tank().survivalS().isPresent()) {
            return tank.typed().orElse(Double.POSITIVE_INFINITY) <= atS ? OxygenState.DANGER : OxygenState.FINE;
        }
        double level = levelGPerM3(tank, how, atS).orElse(0);
        return level <= tank.levels().dangerGPerM3()
                ? OxygenState.DANGER
                : level <= tank.levels().alarmGPerM3() ? OxygenState.ALARM : OxygenState.FINE;
    }

    /** The worst that becomes of a tank in this time, at worst. */
    public static OxygenState worst(TankDrill tank) {
        if (!tank.isJudged()) {
            return OxygenState.UNKNOWN;
        }
        boolean alarms = tank.alarmS(Case.CAUTIOUS).isPresent();
        return tank.dangerS(Case.CAUTIOUS).isPresent()
                ? OxygenState.DANGER
                : alarms ? OxygenState.ALARM : OxygenState.FINE;
    }

    /** All tanks: the first in trouble first, then those that are fine, then those that nobody can judge. */
    public List<TankDrill> inOrder() {
        List<TankDrill> order = new ArrayList<>(drill.inTrouble());
        Set<TankId> there = order.stream().map(each -> each.tank().id()).collect(Collectors.toSet());
        drill.tanks().stream()
                .filter(each -> !there.contains(each.tank().id()))
                .sorted(Comparator.comparing(each -> !each.isJudged()))
                .forEach(order::add);
        return order;
    }

    /** How many tanks stand so at a time. */
    public int count(OxygenState state, Case how, double atS) {
        return (int) drill.tanks().stream()
                .filter(tank -> state(tank, how, atS) == state)
                .count();
    }

    /**
     * The tank whose oxygen at worst is nearest to a level at a time.
     *
     * @param reachGPerM3 how far off still counts
     */
    public Optional<TankDrill> near(double atS, double gPerM3, double reachGPerM3) {
        Optional<TankDrill> nearest = Optional.empty();
        double least = reachGPerM3;
        for (TankDrill tank : drill.tanks()) {
            double off = Math.abs(levelGPerM3(tank, Case.CAUTIOUS, atS).orElse(Double.POSITIVE_INFINITY) - gPerM3);
            if (off <= least) {
                least = off;
                nearest = Optional.of(tank);
            }
        }
        return nearest;
    }

    /** The tank that is looked at where none is chosen: the first in trouble, else the one that comes lowest. */
    public Optional<TankDrill> first() {
        return drill.inTrouble().stream().findFirst().or(() -> lowest(drill.tanks()));
    }

    private static Optional<TankDrill> lowest(List<TankDrill> tanks) {
        return tanks.stream()
                .filter(tank -> tank.courses().isPresent())
                .min((a, b) -> Double.compare(lowestGPerM3(a), lowestGPerM3(b)));
    }

    private static double lowestGPerM3(TankDrill tank) {
        return tank.courses().map(both -> both.cautious().lowestGPerM3()).orElse(Double.POSITIVE_INFINITY);
    }
}
