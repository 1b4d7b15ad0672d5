package lungfish.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.backup.BackupAnswer;
import lungfish.backup.BatteryRuntime;
import lungfish.backup.Load;
import lungfish.blower.Wear;
import lungfish.headroom.Headroom;
import lungfish.headroom.Search;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/** Asks how many more outlets fit, with the limits that the search itself does not know: noise and the battery. */
final class RoomToGrow {
    private final Setup setup;
    private final AirSide air;

    RoomToGrow(Setup setup, AirSide air) {
        this.setup = setup;
        this.air = air;
    }

    Headroom find() {
        Needed needed = air.duty().needed();
        Needed clean = air.duty().neededClean();
        double fresh = air.fleet().freeAt(clean.pressurePa(), Wear.NEW) - clean.freeM3PerS();
        return new Search(air.piped(), air.fleet(), needed, air.asked(), this::further).find(needed, fresh);
    }

    private Optional<Limit.Broken> further(Running running) {
        Optional<Limit.Broken> noise = air.duty().candidate().broken().stream()
                .filter(each -> each.limit() == Limit.NOISE)
                .findFirst();
        return noise.or(() -> runtime(running.watts()));
    }

    /** The battery is a limit only where there is one, and a runtime was asked of it. */
    private Optional<Limit.Broken> runtime(double watts) {
        OptionalDouble wished = setup.room().wishes().runtimeS();
        if (wished.isEmpty() || setup.room().backup().batteries().isEmpty()) {
            return Optional.empty();
        }
        BackupAnswer answer =
                BatteryRuntime.of(setup.room(), setup.catalogue(), new Load(watts, watts, OptionalDouble.empty()));
        double holds = answer.runtimeS().orElse(Double.MAX_VALUE);
        return holds < wished.getAsDouble()
                ? Optional.of(Limit.RUNTIME.broken(holds, wished.getAsDouble()))
                : Optional.empty();
    }
}
