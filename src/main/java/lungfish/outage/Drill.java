package lungfish.outage;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.oxygen.Case;
import lungfish.oxygen.Levels;
import lungfish.reason.Assumption;

/**
 * An outage played through: what runs in each stretch of it, and what becomes of every tank.
 *
 * @param scene what was asked
 * @param backS when all is well again; absent: not in this time
 * @param plannedBlower whether the air is that of the blower as planned, not of the pumps of today
 * @param needs the outlets, in the order of each stretch's air
 * @param stretches one after the other, from 0 to the end
 * @param tanks those in place, in the order drawn
 * @param assumptions what people do, where the room does not say it
 */
public record Drill(
        Scene scene,
        OptionalDouble backS,
        boolean plannedBlower,
        Levels levels,
        List<Need> needs,
        List<Stretch> stretches,
        List<TankDrill> tanks,
        List<Assumption> assumptions) {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    public Drill {
        needs = List.copyOf(needs);
        stretches = List.copyOf(stretches);
        tanks = List.copyOf(tanks);
        assumptions = List.copyOf(assumptions);
    }

    /** The tank that is first in danger, by the cautious figure; empty where none is in this time. */
    public Optional<TankDrill> first() {
        return tanks.stream()
                .filter(tank -> tank.dangerS(Case.CAUTIOUS).isPresent())
                .min(Comparator.<TankDrill>comparingDouble(
                                tank -> tank.dangerS(Case.CAUTIOUS).orElseThrow())
                        .thenComparingDouble(tank -> tank.dangerS(Case.LIKELY).orElse(Double.POSITIVE_INFINITY)));
    }

    /** The tanks that come into danger in this time, the first first. */
    public List<TankDrill> inDanger(Case how) {
        return tanks.stream()
                .filter(tank -> tank.dangerS(how).isPresent())
                .sorted(Comparator.comparingDouble(tank -> tank.dangerS(how).orElseThrow()))
                .toList();
    }

    /**
     * The tanks that come down to the alarm level by the cautious figure or the likely one: the first in danger first, then
     * those that only alarm.
     */
    public List<TankDrill> inTrouble() {
        return tanks.stream()
                .filter(tank -> alarmS(tank, Case.CAUTIOUS) < NEVER || alarmS(tank, Case.LIKELY) < NEVER)
                .sorted(Comparator.<TankDrill>comparingDouble(tank -> dangerS(tank, Case.CAUTIOUS))
                        .thenComparingDouble(tank -> dangerS(tank, Case.LIKELY))
                        .thenComparingDouble(tank -> alarmS(tank, Case.CAUTIOUS))
                        .thenComparingDouble(tank -> alarmS(tank, Case.LIKELY)))
                .toList();
    }

    private static double dangerS(TankDrill tank, Case how) {
        return tank.dangerS(how).orElse(NEVER);
    }

    private static double alarmS(TankDrill tank, Case how) {
        return tank.alarmS(how).orElse(NEVER);
    }

    /** What runs at a time. */
    public Stretch at(double seconds) {
        return stretches.stream()
                .filter(stretch -> seconds < stretch.toS())
                .findFirst()
                .orElseGet(() -> stretches.get(stretches.size() - 1));
    }

    /** Whether a tank that is followed does not say if it was just fed. */
    public boolean isMealUnsaid() {
        return tanks.stream()
                .filter(tank -> tank.courses().isPresent())
                .anyMatch(tank -> tank.tank().justFed().isEmpty());
    }

    /** Tanks of which something is known, so that they could be judged. */
    public List<TankDrill> judged() {
        return tanks.stream().filter(TankDrill::isJudged).toList();
    }
}
