package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import lungfish.catalogue.BatteryClass;
import lungfish.quantity.Dimension;
import lungfish.room.Backup.Battery;
import lungfish.room.BatteryId;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** Edits of batteries, and the numbers that stand on them. How warm and how worn they are: {@link OwnValues}. */
public final class BatteryEdits {
    /** A common block; said otherwise as soon as it is there. */
    private static final double NEW_C = 100 * 3600;

    private static final int MOST = 1000;

    private BatteryEdits() {}

    /** One block of this kind, of 100 Ah. */
    public static Attempt add(Room room, BatteryClass kind) {
        return Edit.tried(room, "Add a battery", before -> {
            List<Battery> batteries = new ArrayList<>(before.backup().batteries());
            batteries.add(new Battery(
                    new BatteryId(Fresh.batteries(before).like("battery")),
                    kind.id(),
                    1,
                    kind.blockV(),
                    NEW_C,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty()));
            return before.withBackup(before.backup().withBatteries(batteries));
        });
    }

    public static Attempt remove(Room room, BatteryId id) {
        return there(room, id).isEmpty()
                ? Refused.nothing("battery")
                : Edit.tried(
                        room,
                        "Remove a battery",
                        before -> before.withBackup(before.backup()
                                .withBatteries(Each.kept(before.backup().batteries(), each -> !each.id()
                                        .equals(id)))));
    }

    public static Attempt kind(Room room, BatteryId id, BatteryClass kind) {
        return change(room, id, "Set the kind of battery", battery -> battery.as(kind.id()));
    }

    /** So many of them. */
    public static Attempt count(Room room, BatteryId id, int many) {
        return many >= 1 && many <= MOST
                ? change(room, id, "Set how many batteries", battery -> battery.times(many))
                : Refused.because(
                        "There cannot be " + many + " of a battery.", "Type a number from 1 to " + MOST + ".");
    }

    /** The circuit that charges it; empty: unknown. */
    public static Attempt chargedFrom(Room room, BatteryId id, Optional<CircuitId> circuit) {
        return CircuitEdits.isThere(room, circuit)
                ? change(room, id, "Set what charges the battery", battery -> battery.chargedFrom(circuit))
                : Refused.nothing("circuit");
    }

    /** The voltage of one. */
    public static OwnValue voltage(BatteryId id) {
        return number(
                id,
                "Voltage of one battery",
                Dimension.VOLTAGE,
                Limits.above(0, 1000),
                Battery::voltageV,
                Battery::withVoltageV);
    }

    /** The rated charge of one. */
    public static OwnValue capacity(BatteryId id) {
        return number(
                id,
                "Capacity of one battery",
                Dimension.CHARGE,
                Limits.above(0, 1e9),
                Battery::capacityC,
                Battery::withCapacityC);
    }

    private static OwnValue number(
            BatteryId id,
            String label,
            Dimension dimension,
            Limits limits,
            Function<Battery, Double> now,
            BiFunction<Battery, Double, Battery> with) {
        return OwnValue.needed(
                label,
                dimension,
                limits,
                room -> there(room, id)
                        .map(battery -> OptionalDouble.of(now.apply(battery)))
                        .orElse(OptionalDouble.empty()),
                (room, si) -> changed(room, id, battery -> with.apply(battery, si)));
    }

    private static Optional<Battery> there(Room room, BatteryId id) {
        return room.backup().batteries().stream()
                .filter(each -> each.id().equals(id))
                .findFirst();
    }

    private static Attempt change(Room room, BatteryId id, String done, UnaryOperator<Battery> change) {
        return there(room, id).isEmpty()
                ? Refused.nothing("battery")
                : Edit.tried(room, done, before -> changed(before, id, change));
    }

    private static Room changed(Room room, BatteryId id, UnaryOperator<Battery> change) {
        return room.withBackup(room.backup()
                .withBatteries(Each.changed(
                        room.backup().batteries(), Each.where(each -> each.id().equals(id), change))));
    }
}
