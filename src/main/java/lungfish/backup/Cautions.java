package lungfish.backup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Backup.Inverter;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Tank;

/** What to mind about batteries, inverter and the vessels that fail first. */
final class Cautions {
    private static final PartId INVERTER = new PartId(PartId.Kind.INVERTER, "");

    private Cautions() {}

    static List<Finding> of(Room room, List<Store> stores, Load load) {
        List<Finding> findings = new ArrayList<>();
        if (nothingHelps(room)) {
            findings.add(Finding.of(Code.NO_BACKUP, PartId.ROOM));
        }
        if (!stores.isEmpty()) {
            findings.addAll(inverter(room.backup().inverter(), load));
            stores.forEach(store -> findings.addAll(battery(store)));
            if (tanks(room).flatMap(tank -> tank.outlets().stream()).noneMatch(Cautions::isEssential)) {
                findings.add(Finding.of(Code.ESSENTIALS_NOT_MARKED, PartId.ROOM));
            }
        }
        if (room.backup().generator().isPresent()) {
            findings.add(Finding.of(Code.GENERATOR, PartId.ROOM));
        }
        findings.addAll(Circuits.of(room));
        failsFirst(room).ifPresent(findings::add);
        return findings;
    }

    private static boolean nothingHelps(Room room) {
        return room.backup().batteries().isEmpty()
                && room.backup().generator().isEmpty()
                && room.backup().batteryPumps().isEmpty()
                && room.blowers().stream().noneMatch(blower -> blower.role() == Blower.Role.STANDBY);
    }

    private static List<Finding> inverter(Optional<Inverter> fitted, Load load) {
        if (fitted.isEmpty()) {
            return List.of(Finding.of(Code.INVERTER_MISSING, PartId.ROOM));
        }
        Inverter inverter = fitted.get();
        List<Finding> findings = new ArrayList<>();
        if (inverter.ratedW().orElse(Double.MAX_VALUE) < load.runningW()) {
            findings.add(power(
                    Code.INVERTER_TOO_SMALL, load.runningW(), inverter.ratedW().orElseThrow()));
        }
        if (inverter.surgeW().orElse(Double.MAX_VALUE) < load.startingW()) {
            findings.add(power(
                    Code.STARTING_SURGE, load.startingW(), inverter.surgeW().orElseThrow()));
        }
        if (inverter.wave().filter(Inverter.Wave.STEPPED::equals).isPresent()) {
            findings.add(Finding.of(Code.WAVEFORM, INVERTER));
        }
        if (saysTooLittle(inverter, load)) {
            findings.add(
                    Finding.of(Code.INVERTER_UNSAID, INVERTER, new Amount("found", load.startingW(), Dimension.POWER)));
        }
        return findings;
    }

    /** One that gives the starting power for ever bears it for a moment. */
    private static boolean saysTooLittle(Inverter inverter, Load load) {
        boolean bears = inverter.surgeW().isPresent() || inverter.ratedW().orElse(0) >= load.startingW();
        return !bears || inverter.wave().isEmpty();
    }

    private static Finding power(Code code, double foundW, double allowedW) {
        return Finding.of(
                code,
                INVERTER,
                new Amount("found", foundW, Dimension.POWER),
                new Amount("allowed", allowedW, Dimension.POWER));
    }

    private static List<Finding> battery(Store store) {
        PartId part = store.battery().id().part();
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.of(Code.BATTERY_FUSE, part));
        double m3PerHour = ChargingAir.m3PerHour(store.battery(), store.kind());
        if (m3PerHour > 0) {
            findings.add(Finding.of(
                    Code.BATTERY_VENTILATION, part, new Amount("found", m3PerHour / 3600, Dimension.AIR_FLOW)));
        }
        if (store.temperatureK().si() < store.kind().coldestChargeK()) {
            findings.add(Finding.of(
                    Code.BATTERY_COLD_CHARGE,
                    part,
                    new Amount("found", store.temperatureK().si(), Dimension.TEMPERATURE),
                    new Amount("allowed", store.kind().coldestChargeK(), Dimension.TEMPERATURE)));
        }
        return findings;
    }

    private static Optional<Finding> failsFirst(Room room) {
        return tanks(room)
                .filter(tank -> tank.survivalS().isPresent())
                .min(Comparator.comparingDouble(tank -> tank.survivalS().orElseThrow()))
                .map(tank -> Finding.of(
                        Code.FAILS_FIRST,
                        tank.id().part(),
                        new Amount("found", tank.survivalS().orElseThrow(), Dimension.DURATION)));
    }

    private static Stream<Tank> tanks(Room room) {
        return room.racks().stream().filter(rack -> !rack.isPlanned()).flatMap(Rack::tanks);
    }

    private static boolean isEssential(Outlet outlet) {
        return outlet.essential().orElse(false);
    }
}
