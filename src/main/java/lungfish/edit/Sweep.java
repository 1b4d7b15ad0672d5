package lungfish.edit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Takes away every name that leads to a thing that is gone. */
final class Sweep {
    private final Set<RunId> runs;
    private final Set<GangId> gangs;
    private final Set<TankId> tanks;
    private final Set<OutletId> outlets;
    private final Set<CircuitId> circuits;

    private Sweep(Room room) {
        runs = room.runs().stream().map(Run::id).collect(Collectors.toCollection(HashSet::new));
        gangs = room.gangs().stream().map(Gang::id).collect(Collectors.toCollection(HashSet::new));
        tanks = Find.tanks(room).map(Tank::id).collect(Collectors.toCollection(HashSet::new));
        outlets = Find.outlets(room).map(Outlet::id).collect(Collectors.toCollection(HashSet::new));
        circuits = room.circuits().stream().map(Circuit::id).collect(Collectors.toCollection(HashSet::new));
    }

    static Room of(Room room) {
        Sweep sweep = new Sweep(room);
        Room step = Deleting.untapped(room, sweep::leadsNowhere);
        step = step.withGangs(
                Each.changed(step.gangs(), gang -> gang.tappedAt(gang.tap().filter(sweep::isThere))));
        step = step.withBlowers(Each.changed(step.blowers(), sweep::swept));
        step = step.withStirrers(Each.kept(step.stirrers(), stirrer -> sweep.tanks.contains(stirrer.tank())));
        return sweep.wired(step);
    }

    /** What hung on a circuit that is gone hangs on an unknown one. */
    private Room wired(Room room) {
        Room step = room.withStirrers(Each.changed(
                room.stirrers(), stirrer -> stirrer.on(stirrer.circuit().filter(circuits::contains))));
        step = step.withBlowers(Each.changed(
                step.blowers(), blower -> blower.on(blower.circuit().filter(circuits::contains))));
        Backup backup = step.backup();
        return step.withBackup(backup.withAlarm(
                        backup.alarm().map(alarm -> alarm.on(alarm.circuit().filter(circuits::contains))))
                .withBatteries(Each.changed(
                        backup.batteries(),
                        battery -> battery.chargedFrom(battery.chargedFrom().filter(circuits::contains)))));
    }

    private boolean leadsNowhere(Outlet outlet) {
        Optional<Outlet.Tap> tap = outlet.tap();
        return tap.isPresent() && !isThere(tap.get());
    }

    private boolean isThere(Outlet.Tap tap) {
        return tap instanceof Outlet.OnRun onRun
                ? runs.contains(onRun.run())
                : tap instanceof Outlet.OnGang onGang && gangs.contains(onGang.gang());
    }

    private Blower swept(Blower blower) {
        return blower.feeding(blower.feeds().filter(this::isThere))
                .serving(Each.kept(blower.serves(), outlets::contains));
    }
}
