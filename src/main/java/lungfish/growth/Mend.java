package lungfish.growth;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lungfish.blower.Machine;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.PipeSize;
import lungfish.edit.BlowerEdits;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Room;

/** A step that may mend a room that has outgrown something. */
public sealed interface Mend {
    /** What it costs, in units of money, typical of its class. */
    double price();

    /** The room with it done. */
    Room in(Room room);

    private static Room planned(Room room, UnaryOperator<Blower> change) {
        return room.withBlowers(room.blowers().stream()
                .map(blower -> blower.role() == Blower.Role.PLANNED ? change.apply(blower) : blower)
                .toList());
    }

    /** The surplus of the blower is treated otherwise; it costs nothing. */
    record Bleed(Blower.Bleed to) implements Mend {
        @Override
        public double price() {
            return 0;
        }

        @Override
        public Room in(Room room) {
            return planned(room, blower -> blower.withBleed(to));
        }
    }

    /**
     * Every run of one size is laid anew in another. The taps move over.
     *
     * @param metres of pipe
     * @param fittings what its elbows and tees cost, and what else is drawn in it
     */
    record WiderPipe(String from, PipeSize to, double metres, double fittings) implements Mend {
        @Override
        public double price() {
            return metres * to.pricePerM() + fittings;
        }

        @Override
        public Room in(Room room) {
            return room.withRuns(room.runs().stream()
                    .map(run -> run.size().equals(from) ? run.sized(to.id()) : run)
                    .toList());
        }
    }

    /**
     * All the planned machines are exchanged for others.
     *
     * @param machines how many are bought
     */
    record Exchange(BlowerClass to, int machines) implements Mend {
        @Override
        public double price() {
            return machines * to.price();
        }

        @Override
        public Room in(Room room) {
            return BlowerEdits.choose(to).of(room);
        }
    }

    /** One more machine of the same class beside the first, with the same filter and silencer. */
    record Beside(Machine like) implements Mend {
        @Override
        public double price() {
            return like.kind().price() + like.accessories().price();
        }

        @Override
        public Room in(Room room) {
            Blower first = room.blowers(Blower.Role.PLANNED).get(0);
            return planned(room, blower -> blower.id().equals(first.id()) ? blower.times(blower.count() + 1) : blower);
        }
    }

    /**
     * Every planned place that has no silencer gets one.
     *
     * @param pieces how many are bought
     */
    record Silencer(AccessoryClass kind, int pieces) implements Mend {
        @Override
        public double price() {
            return pieces * kind.price();
        }

        @Override
        public Room in(Room room) {
            return planned(
                    room,
                    blower -> blower.fittings().silencer().isPresent()
                            ? blower
                            : blower.fitted(blower.fittings().withSilencer(Optional.of(kind.id()))));
        }
    }

    /** One more battery like the first. */
    record MoreBattery(Backup.Battery like, BatteryClass kind) implements Mend {
        @Override
        public double price() {
            return like.voltageV() * like.capacityC() * kind.pricePerJ();
        }

        @Override
        public Room in(Room room) {
            Backup backup = room.backup();
            return room.withBackup(backup.withBatteries(backup.batteries().stream()
                    .map(battery -> battery.id().equals(like.id()) ? battery.times(battery.count() + 1) : battery)
                    .toList()));
        }
    }

    /** Several steps at once. */
    record Together(List<Mend> steps) implements Mend {
        public Together {
            steps = List.copyOf(steps);
        }

        @Override
        public double price() {
            return steps.stream().mapToDouble(Mend::price).sum();
        }

        @Override
        public Room in(Room room) {
            Room mended = room;
            for (Mend step : steps) {
                mended = step.in(mended);
            }
            return mended;
        }
    }
}
