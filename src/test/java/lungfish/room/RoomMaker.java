package lungfish.room;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.FittingClass;
import lungfish.catalogue.PipeSize;
import lungfish.quantity.DisplayUnits;

/** Makes one random room that keeps every rule between its parts. */
final class RoomMaker {
    private static final double LENGTH_M = 8;
    private static final double WIDTH_M = 5;
    private static final double HEIGHT_M = 2.5;

    private final Dice dice;
    private final Catalogue catalogue;
    private final List<Run> runs;
    private final List<CircuitId> circuits = List.of(new CircuitId("c1"), new CircuitId("c2"));
    private final List<Gang> gangs;
    private final RackMaker racks;
    private final OwnClassMaker own;

    RoomMaker(Random random, Catalogue catalogue, double presence) {
        this.dice = new Dice(random, presence);
        this.catalogue = catalogue;
        this.runs = dice.some(1, 3, this::run);
        this.gangs = dice.some(1, 2, this::gang);
        this.own = new OwnClassMaker(dice);
        this.racks = new RackMaker(dice, catalogue, this::onRun, gangs);
    }

    Room room() {
        List<Rack> filled = dice.some(1, 3, racks::rack);
        List<OutletId> outlets = filled.stream()
                .flatMap(Rack::tanks)
                .flatMap(tank -> tank.outlets().stream())
                .map(Outlet::id)
                .toList();
        TankId tank =
                filled.stream().flatMap(Rack::tanks).findFirst().orElseThrow().id();
        LogMaker history = new LogMaker(dice, outlets, this::onRun);
        return new Room(
                dice.name(),
                dice.maybe(() -> "two\nlines of " + dice.name()),
                dice.one(DisplayUnits.class),
                shell(),
                new Climate(dice.maybe(280, 310), dice.maybe(0, 1), dice.maybe(-100, 3000), dice.maybe(270, 300)),
                new Supply(dice.maybe(100, 240), dice.maybe(50, 60), dice.maybe(1e-8, 3e-7), dice.maybe(dice::name)),
                wishes(),
                dice.maybe(this::listener),
                circuits.stream().map(this::circuit).toList(),
                filled,
                runs,
                gangs,
                dice.some(1, 3, i -> blower(i, outlets)),
                backup(),
                dice.some(1, 2, i -> stirrer(i, tank)),
                own.classes(),
                spreads(),
                history.building(),
                history.log());
    }

    private Shell shell() {
        return new Shell(
                LENGTH_M,
                WIDTH_M,
                HEIGHT_M,
                dice.maybe(0, 1),
                dice.some(1, 2, i -> new Shell.Door(dice.between(0, 7), 0, dice.between(0.6, 1))),
                dice.some(
                        1,
                        2,
                        i -> new Shell.Wall(
                                dice.between(0, 8),
                                0,
                                dice.between(0, 8),
                                dice.between(0, 5),
                                dice.maybe(dice::name))));
    }

    private Wishes wishes() {
        return new Wishes(
                dice.maybe(0, 1),
                dice.maybe(0, 2000),
                dice.maybe(30, 60),
                dice.maybe(1, 1e5),
                dice.maybe(0.0005, 0.002),
                dice.maybe(0.0035, 0.006), // above what is assumed of the danger level, and the other way round
                dice.maybe(0.001, 0.0025),
                List.of(Wishes.Wish.QUIETEST, Wishes.Wish.SMALLEST));
    }

    private Spreads spreads() {
        Spreads spreads = Spreads.UNKNOWN;
        for (Spread spread : Spread.values()) {
            spreads = spreads.with(spread, dice.maybe(0, 0.2));
        }
        return spreads;
    }

    private Listener listener() {
        return new Listener(
                dice.name(), point(), dice.maybe(() -> new Listener.Partition(dice.name(), dice.between(10, 50))));
    }

    private Circuit circuit(CircuitId id) {
        return new Circuit(id, dice.name(), dice.maybeTruth(), dice.maybeTruth());
    }

    private Point point() {
        return new Point(dice.between(0, LENGTH_M), dice.between(0, WIDTH_M), dice.between(0, HEIGHT_M));
    }

    private Run run(int number) {
        boolean closed = dice.heads();
        List<Point> corners = dice.some(3, 5, i -> point());
        double lengthM = new Run(new RunId("r"), "r", Run.Role.MAIN, "x", closed, corners, List.of()).lengthM();
        return new Run(
                new RunId("run" + number),
                dice.name(),
                dice.one(Run.Role.class),
                dice.one(Catalogue.ids(catalogue.pipes(), PipeSize::id)),
                closed,
                corners,
                dice.some(1, 2, i -> fitting(lengthM)),
                dice.maybe(270, 310));
    }

    private Run.Fitting fitting(double lengthM) {
        FittingClass kind = dice.one(catalogue.fittings());
        OptionalDouble opening = kind.valve() ? dice.maybe(0, 1) : OptionalDouble.empty();
        return new Run.Fitting(kind.id(), dice.between(0, lengthM), opening);
    }

    private Outlet.OnRun onRun() {
        Run run = dice.one(runs);
        return new Outlet.OnRun(run.id(), dice.between(0, run.lengthM()));
    }

    private Gang gang(int number) {
        return new Gang(
                new GangId("gang" + number),
                dice.one(Gang.Kind.class),
                point(),
                dice.maybe(this::onRun),
                dice.maybe(() -> RackMaker.airline(dice, catalogue)));
    }

    private Blower blower(int number, List<OutletId> outlets) {
        return new Blower(
                new BlowerId("blower" + number),
                dice.name(),
                dice.one(Blower.Role.class),
                dice.maybe(() -> dice.one(Catalogue.ids(catalogue.blowers(), BlowerClass::id))),
                dice.whole(1, 3),
                new Blower.Siting(dice.maybe(this::point), dice.heads(), dice.maybe(0, 50), dice.maybe(270, 310)),
                fittings(),
                dice.one(List.of(new Blower.Unbled(), new Blower.BledTo(dice.maybe(1000, 20000)), new Blower.Unsaid())),
                dice.maybe(() -> dice.one(circuits)),
                dice.maybe(0, 1e8),
                outlets.stream().limit(dice.whole(1, 3)).toList(),
                dice.maybe(this::onRun));
    }

    private Blower.Fittings fittings() {
        return new Blower.Fittings(
                dice.maybe(() -> dice.one(accessories(true))),
                dice.maybe(() -> dice.one(accessories(false))),
                dice.maybe(0, 3),
                dice.maybe(0.01, 0.05),
                dice.maybe(1000, 60000));
    }

    private List<String> accessories(boolean filters) {
        return catalogue.accessories().stream()
                .filter(each -> filters == (each.kind() == AccessoryClass.Kind.INLET_FILTER))
                .map(AccessoryClass::id)
                .toList();
    }

    private Backup backup() {
        return new Backup(
                dice.some(1, 2, this::battery),
                dice.maybe(this::inverter),
                dice.maybe(() -> new Backup.Alarm(dice.maybe(500, 10000), dice.maybe(() -> dice.one(circuits)))),
                dice.maybe(() -> new Backup.Shedding(dice.name(), dice.name())),
                dice.maybe(
                        () -> new Backup.Generator(dice.maybe(500, 5000), dice.maybe(3600, 1e5), dice.maybe(0, 3600))),
                dice.maybe(() -> new Backup.BatteryPumps(dice.one(batteryPumps()), dice.whole(1, 20))),
                dice.maybe(() -> new Backup.Standby(dice.one(Backup.Standby.Start.class), dice.maybe(0, 3600))),
                dice.maybe(0, 1e5),
                dice.maybe(3600, 1e6),
                dice.maybe(50, 1000));
    }

    private List<String> batteryPumps() {
        return catalogue.backupGear(BackupClass.Kind.BATTERY_PUMP).stream()
                .map(BackupClass::id)
                .toList();
    }

    private Backup.Battery battery(int number) {
        return new Backup.Battery(
                new BatteryId("battery" + number),
                dice.one(Catalogue.ids(catalogue.batteries(), BatteryClass::id)),
                dice.whole(1, 4),
                12,
                dice.between(1e5, 1e6),
                dice.maybe(270, 310),
                dice.maybe(0.5, 1),
                dice.maybe(() -> dice.one(circuits)));
    }

    private Backup.Inverter inverter() {
        return new Backup.Inverter(
                dice.maybe(0.7, 0.95),
                dice.maybe(1, 20),
                dice.maybe(100, 2000),
                dice.maybe(200, 4000),
                dice.maybe(() -> dice.one(Backup.Inverter.Wave.class)));
    }

    private Stirrer stirrer(int number, TankId tank) {
        return new Stirrer(
                new StirrerId("stirrer" + number),
                tank,
                dice.one(Stirrer.Kind.class),
                dice.maybe(2, 20),
                dice.maybe(() -> dice.one(circuits)));
    }
}
