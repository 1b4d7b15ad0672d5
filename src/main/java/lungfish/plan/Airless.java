package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.oxygen.Balance;
import lungfish.oxygen.Balances;
import lungfish.oxygen.Breath;
import lungfish.oxygen.Case;
import lungfish.oxygen.Levels;
import lungfish.oxygen.TankTime;
import lungfish.room.Room;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * How long the tanks of a room last when all air stops, nothing stirs and nothing helps: the closed form of what an outage
 * plays through.
 *
 * @param tanks those in place of which something is known, in the order drawn
 * @param unknown how many tanks in place nothing is known of
 */
public record Airless(Levels levels, List<TankTime> tanks, int unknown) {
    public Airless {
        tanks = List.copyOf(tanks);
    }

    /** The tank that is first in danger, at worst; empty where none ever is. */
    public Optional<TankTime> first() {
        return tanks.stream()
                .filter(tank -> tank.cautiousS().isPresent())
                .min(Comparator.<TankTime>comparingDouble(
                                tank -> tank.cautiousS().orElseThrow())
                        .thenComparingDouble(tank -> tank.likelyS().orElse(Double.POSITIVE_INFINITY)));
    }

    /** The times of a room whose outlets get so much air while all is well. */
    static Airless of(Setup setup, List<OutletPlan> outlets, boolean keepPumps) {
        return new Asking(setup, outlets, keepPumps).answer();
    }

    private static final class Asking {
        private final Room room;
        private final Balances balances;
        private final Levels levels;
        private final Map<TankId, List<OutletPlan>> byTank = new HashMap<>();
        private final boolean keepPumps;

        Asking(Setup setup, List<OutletPlan> outlets, boolean keepPumps) {
            this.room = setup.room();
            this.balances = new Balances(room, setup.catalogue());
            this.levels = Levels.of(room, setup.catalogue());
            this.keepPumps = keepPumps;
            outlets.forEach(
                    outlet -> byTank.computeIfAbsent(outlet.need().seat().tank().id(), each -> new ArrayList<>())
                            .add(outlet));
        }

        Airless answer() {
            List<Tank> all = room.racks().stream()
                    .filter(rack -> !rack.isPlanned())
                    .flatMap(rack -> rack.tanks())
                    .toList();
            List<TankTime> known =
                    all.stream().flatMap(tank -> time(tank).stream()).toList();
            return new Airless(levels, known, all.size() - known.size());
        }

        private Optional<TankTime> time(Tank tank) {
            if (tank.survivalS().isPresent()) {
                return Optional.of(new TankTime(tank, tank.survivalS(), tank.survivalS(), tank.survivalS(), true));
            }
            return balances.of(tank, Case.LIKELY).flatMap(likely -> balances.of(tank, Case.CAUTIOUS)
                    .map(cautious -> new TankTime(
                            tank,
                            seconds(tank, likely, Case.LIKELY, levels.dangerGPerM3()),
                            seconds(tank, cautious, Case.CAUTIOUS, levels.dangerGPerM3()),
                            seconds(tank, cautious, Case.CAUTIOUS, levels.alarmGPerM3()),
                            false)));
        }

        private OptionalDouble seconds(Tank tank, Balance balance, Case how, double gPerM3) {
            double start = balance.atRest().steadyGPerM3(usual(tank, how));
            return balance.downToS(start, gPerM3, Breath.NONE);
        }

        private Breath usual(Tank tank, Case how) {
            List<OutletPlan> own = byTank.getOrDefault(tank.id(), List.of());
            List<Need> needs = own.stream().map(OutletPlan::need).toList();
            List<Double> air = own.stream().map(this::airM3PerS).toList();
            boolean stirred =
                    room.stirrers().stream().anyMatch(stirrer -> stirrer.tank().equals(tank.id()));
            return balances.breath(needs, air, how, stirred);
        }

        private double airM3PerS(OutletPlan outlet) {
            OptionalDouble first = keepPumps ? outlet.todayM3PerS() : outlet.predictedM3PerS();
            return first.orElse(outlet.todayM3PerS().orElse(0));
        }
    }
}
