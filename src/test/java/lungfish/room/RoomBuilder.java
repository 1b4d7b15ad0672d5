package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fills a room for a test. */
public final class RoomBuilder {
    private final Room base = Rooms.empty();
    private final List<Rack> racks = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();
    private final List<Gang> gangs = new ArrayList<>();
    private final List<Blower> blowers = new ArrayList<>();
    private final List<Circuit> circuits = new ArrayList<>();
    private final List<Stirrer> stirrers = new ArrayList<>();
    private Climate climate = base.climate();
    private Supply supply = base.supply();
    private Wishes wishes = base.wishes();
    private Optional<Listener> listener = Optional.empty();
    private Backup backup = base.backup();
    private OwnClasses own = base.ownClasses();
    private Spreads spreads = Spreads.UNKNOWN;
    private Shell shell = base.shell();

    public RoomBuilder with(Shell that) {
        shell = that;
        return this;
    }

    public RoomBuilder with(RackBuilder rack) {
        racks.add(rack.build());
        return this;
    }

    public RoomBuilder with(Run run) {
        runs.add(run);
        return this;
    }

    public RoomBuilder with(Gang gang) {
        gangs.add(gang);
        return this;
    }

    public RoomBuilder with(BlowerBuilder blower) {
        blowers.add(blower.build());
        return this;
    }

    public RoomBuilder with(Circuit circuit) {
        circuits.add(circuit);
        return this;
    }

    public RoomBuilder with(Stirrer stirrer) {
        stirrers.add(stirrer);
        return this;
    }

    public RoomBuilder with(Climate that) {
        climate = that;
        return this;
    }

    public RoomBuilder with(Supply that) {
        supply = that;
        return this;
    }

    public RoomBuilder with(Wishes that) {
        wishes = that;
        return this;
    }

    public RoomBuilder with(Listener that) {
        listener = Optional.of(that);
        return this;
    }

    public RoomBuilder with(Backup that) {
        backup = that;
        return this;
    }

    public RoomBuilder with(OwnClasses that) {
        own = that;
        return this;
    }

    public RoomBuilder with(Spreads that) {
        spreads = that;
        return this;
    }

    public Room build() {
        return new Room(
                base.name(),
                base.notes(),
                base.displayUnits(),
                shell,
                climate,
                supply,
                wishes,
                listener,
                circuits,
                racks,
                runs,
                gangs,
                blowers,
                backup,
                stirrers,
                own,
                spreads,
                base.building(),
                base.log());
    }
}
