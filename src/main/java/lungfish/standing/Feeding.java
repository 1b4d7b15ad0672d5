package lungfish.standing;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Seat;
import lungfish.room.TankId;

/**
 * Which small pumps feed which tank. Where no pump says what it feeds, each tank is supposed to have one of its own.
 *
 * @param byTank the pumps of each tank that has one
 */
record Feeding(boolean drawn, Map<TankId, List<Pump>> byTank) {
    /** Machines alike, side by side, each giving its share. */
    record Pump(BlowerId id, int count, Optional<CircuitId> circuit) {}

    static Feeding of(Room room) {
        List<Seat> seats = room.seats().stream().filter(seat -> !seat.planned()).toList();
        Map<TankId, List<Pump>> said = new HashMap<>();
        for (Blower pump : room.blowers(Blower.Role.TODAY)) {
            Set<OutletId> serves = new HashSet<>(pump.serves());
            seats.stream()
                    .filter(seat -> serves.contains(seat.outlet().id()))
                    .map(seat -> seat.tank().id())
                    .distinct()
                    .forEach(tank -> said.merge(tank, List.of(pump(pump)), Feeding::joined));
        }
        return said.isEmpty() ? supposed(seats) : new Feeding(true, said);
    }

    private static Feeding supposed(List<Seat> seats) {
        return new Feeding(
                false,
                seats.stream()
                        .map(seat -> seat.tank().id())
                        .distinct()
                        .collect(Collectors.toMap(
                                tank -> tank,
                                tank -> List.of(new Pump(new BlowerId(tank.text()), 1, Optional.empty())))));
    }

    private static Pump pump(Blower blower) {
        return new Pump(blower.id(), blower.count(), blower.circuit());
    }

    private static List<Pump> joined(List<Pump> some, List<Pump> more) {
        return java.util.stream.Stream.concat(some.stream(), more.stream()).toList();
    }

    int tanks() {
        return byTank.size();
    }

    int machines() {
        return byTank.values().stream()
                .flatMap(Collection::stream)
                .distinct()
                .mapToInt(Pump::count)
                .sum();
    }

    /** How many machines give the air of a tank, for every tank. */
    List<Integer> machinesByTank() {
        return byTank.values().stream().map(Feeding::count).toList();
    }

    /** The worst that one machine can do: most tanks without air, then most with less. */
    Loss worst(double forS) {
        return byTank.values().stream()
                .flatMap(Collection::stream)
                .distinct()
                .map(pump -> loss(pump, forS))
                .max(Comparator.comparingInt(Loss::tanks).thenComparingInt(Loss::less))
                .orElseGet(() -> new Loss(0, 0, 1, forS));
    }

    private Loss loss(Pump gone, double forS) {
        List<Integer> hurt = byTank.values().stream()
                .filter(pumps -> pumps.contains(gone))
                .map(Feeding::count)
                .toList();
        int without = (int) hurt.stream().filter(count -> count == 1).count();
        double left = hurt.stream()
                .filter(count -> count > 1)
                .mapToDouble(count -> (count - 1.0) / count)
                .min()
                .orElse(1);
        return new Loss(without, hurt.size() - without, left, forS);
    }

    /** The most tanks that one circuit takes. A pump of which nobody says the circuit is counted to each: the cautious side. */
    int byOneCircuit() {
        Set<Optional<CircuitId>> circuits = byTank.values().stream()
                .flatMap(Collection::stream)
                .map(Pump::circuit)
                .collect(Collectors.toSet());
        return circuits.stream().mapToInt(this::on).max().orElse(0);
    }

    private int on(Optional<CircuitId> circuit) {
        return (int) byTank.values().stream()
                .filter(pumps -> pumps.stream()
                        .allMatch(pump ->
                                pump.circuit().isEmpty() || pump.circuit().equals(circuit)))
                .count();
    }

    private static int count(List<Pump> pumps) {
        return pumps.stream().mapToInt(Pump::count).sum();
    }
}
