package lungfish.room;

import java.util.Optional;
import java.util.OptionalDouble;

/** Fills an outlet for a test. */
public final class OutletBuilder {
    private final String id;
    private String device = "sponge-medium";
    private OptionalDouble least = OptionalDouble.empty();
    private OptionalDouble target = OptionalDouble.empty();
    private OptionalDouble most = OptionalDouble.empty();
    private OptionalDouble turnover = OptionalDouble.empty();
    private OptionalDouble depthM = OptionalDouble.of(0.25);
    private Optional<Outlet.Airline> airline = Optional.empty();
    private Optional<Outlet.Valve> valve = Optional.of(new Outlet.Valve("needle-brass", OptionalDouble.empty()));
    private Optional<String> checkValve = Optional.empty();
    private Outlet.Use use = Outlet.Use.ALWAYS;
    private Optional<Boolean> essential = Optional.empty();
    private Optional<Outlet.Tap> tap = Optional.empty();

    OutletBuilder(String id) {
        this.id = id;
    }

    public OutletBuilder device(String kind) {
        device = kind;
        return this;
    }

    public OutletBuilder leastM3PerS(double flow) {
        least = OptionalDouble.of(flow);
        return this;
    }

    public OutletBuilder targetM3PerS(double flow) {
        target = OptionalDouble.of(flow);
        return this;
    }

    public OutletBuilder mostM3PerS(double flow) {
        most = OptionalDouble.of(flow);
        return this;
    }

    public OutletBuilder turnoverPerS(double turns) {
        turnover = OptionalDouble.of(turns);
        return this;
    }

    public OutletBuilder depthM(double depth) {
        depthM = OptionalDouble.of(depth);
        return this;
    }

    public OutletBuilder depthUnknown() {
        depthM = OptionalDouble.empty();
        return this;
    }

    public OutletBuilder airline(String size, double lengthM) {
        airline = Optional.of(new Outlet.Airline(Optional.of(size), OptionalDouble.of(lengthM)));
        return this;
    }

    public OutletBuilder valve(String kind, double opening) {
        valve = Optional.of(new Outlet.Valve(kind, OptionalDouble.of(opening)));
        return this;
    }

    public OutletBuilder checkValve(String kind) {
        checkValve = Optional.of(kind);
        return this;
    }

    public OutletBuilder sometimes() {
        use = Outlet.Use.SOMETIMES;
        return this;
    }

    public OutletBuilder essential() {
        essential = Optional.of(true);
        return this;
    }

    public OutletBuilder onRun(String run, double atM) {
        tap = Optional.of(new Outlet.OnRun(new RunId(run), atM));
        return this;
    }

    public OutletBuilder onGang(String gang) {
        tap = Optional.of(new Outlet.OnGang(new GangId(gang)));
        return this;
    }

    public Outlet build() {
        return new Outlet(
                new OutletId(id),
                device,
                new Outlet.Flow(least, target, most, turnover),
                depthM,
                airline,
                valve,
                checkValve,
                use,
                essential,
                tap);
    }
}
