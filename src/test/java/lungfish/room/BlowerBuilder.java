package lungfish.room;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fills a blower for a test. */
public final class BlowerBuilder {
    private final String id;
    private Blower.Role role = Blower.Role.PLANNED;
    private Optional<String> machine = Optional.empty();
    private int count = 1;
    private Optional<Point> place = Optional.empty();
    private boolean outside;
    private OptionalDouble intakeK = OptionalDouble.empty();
    private Blower.Fittings fittings = Blower.Fittings.UNKNOWN;
    private Blower.Bleed bleed = new Blower.Unsaid();
    private Optional<CircuitId> circuit = Optional.empty();
    private List<OutletId> serves = List.of();
    private Optional<Outlet.OnRun> feeds = Optional.empty();

    BlowerBuilder(String id) {
        this.id = id;
    }

    /** A pump of today that feeds these outlets. */
    public BlowerBuilder today(String... outlets) {
        role = Blower.Role.TODAY;
        serves = Arrays.stream(outlets).map(OutletId::new).toList();
        return this;
    }

    public BlowerBuilder standby() {
        role = Blower.Role.STANDBY;
        return this;
    }

    public BlowerBuilder machine(String kind) {
        machine = Optional.of(kind);
        return this;
    }

    public BlowerBuilder count(int many) {
        count = many;
        return this;
    }

    public BlowerBuilder at(double xM, double yM, double zM) {
        place = Optional.of(new Point(xM, yM, zM));
        return this;
    }

    public BlowerBuilder outside() {
        outside = true;
        return this;
    }

    /** Air of this temperature goes into it, K. */
    public BlowerBuilder intakeK(double temperature) {
        intakeK = OptionalDouble.of(temperature);
        return this;
    }

    public BlowerBuilder fitted(Blower.Fittings that) {
        fittings = that;
        return this;
    }

    public BlowerBuilder bleed(Blower.Bleed that) {
        bleed = that;
        return this;
    }

    public BlowerBuilder circuit(String name) {
        circuit = Optional.of(new CircuitId(name));
        return this;
    }

    public BlowerBuilder feeds(String run, double atM) {
        feeds = Optional.of(new Outlet.OnRun(new RunId(run), atM));
        return this;
    }

    public Blower build() {
        return new Blower(
                new BlowerId(id),
                "Blower " + id,
                role,
                machine,
                count,
                new Blower.Siting(place, outside, OptionalDouble.empty(), intakeK),
                fittings,
                bleed,
                circuit,
                OptionalDouble.empty(),
                serves,
                feeds);
    }
}
