package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.ValveClass;

/** Makes random racks full of tanks and outlets. */
final class RackMaker {
    private final Dice dice;
    private final Catalogue catalogue;
    private final Supplier<Outlet.OnRun> onRun;
    private final List<Gang> gangs;

    RackMaker(Dice dice, Catalogue catalogue, Supplier<Outlet.OnRun> onRun, List<Gang> gangs) {
        this.dice = dice;
        this.catalogue = catalogue;
        this.onRun = onRun;
        this.gangs = gangs;
    }

    Rack rack(int number) {
        String id = "ABC".substring(number, number + 1);
        double widthM = dice.between(1, 2);
        return new Rack(
                new RackId(id),
                dice.name(),
                dice.one(Rack.Stage.class),
                step(),
                dice.between(0, 6),
                dice.between(0, 4),
                dice.one(Rack.Turn.class),
                widthM,
                dice.between(0.3, 0.6),
                dice.maybe(20, 200),
                dice.some(1, 3, i -> shelf(id + "-" + i, 0.2 + 0.6 * i, widthM)));
    }

    private Step step() {
        OptionalInt number = dice.heads() ? OptionalInt.of(dice.whole(1, Step.LAST)) : OptionalInt.empty();
        return new Step(number, dice.maybe(dice::name));
    }

    private Shelf shelf(String id, double heightM, double widthM) {
        List<Tank> tanks = new ArrayList<>();
        double fromM = 0;
        double lengthM = dice.between(0.2, 0.5);
        while (fromM + lengthM < widthM) {
            tanks.add(tank(id + "-" + tanks.size(), fromM, lengthM));
            fromM += lengthM + dice.between(0, 0.05);
            lengthM = dice.between(0.2, 0.5);
        }
        return new Shelf(new ShelfId(id), heightM, tanks);
    }

    private Tank tank(String id, double xM, double lengthM) {
        double waterM = dice.between(0.15, 0.3);
        return new Tank(
                new TankId(id),
                dice.name(),
                dice.one(Tank.Kind.class),
                xM,
                new Tank.Size(lengthM, dice.between(0.2, 0.4), dice.between(0.31, 0.4)),
                waterM,
                dice.maybe(290, 303),
                dice.maybe(0, 0.035),
                dice.maybe(100, 1e5),
                dice.some(1, 2, i -> new Tank.Fish(dice.name(), dice.whole(1, 60), dice.between(0.0005, 0.2))),
                dice.maybe(() -> new Tank.Feeding(dice.between(0, 0.02), dice.maybe(0.2, 0.5))),
                dice.maybeTruth(),
                dice.some(1, 2, i -> outlet(id + "-" + i, waterM)));
    }

    private Outlet outlet(String id, double waterM) {
        return new Outlet(
                new OutletId(id),
                dice.one(Catalogue.ids(catalogue.devices(), DeviceClass::id)),
                flow(),
                dice.maybe(0, waterM),
                dice.maybe(() -> airline(dice, catalogue)),
                dice.maybe(this::valve),
                dice.maybe(() -> dice.one(Stream.concat(
                                Stream.of(Outlet.NO_CHECK_VALVE),
                                catalogue.checkValves().stream().map(CheckValveClass::id))
                        .toList())),
                dice.one(Outlet.Use.class),
                dice.maybeTruth(),
                dice.maybe(this::tap));
    }

    private Outlet.Flow flow() {
        boolean byTarget = dice.heads();
        OptionalDouble none = OptionalDouble.empty();
        return new Outlet.Flow(
                dice.maybe(0, 1e-5),
                byTarget ? dice.maybe(1.1e-5, 4e-5) : none,
                dice.maybe(5e-5, 1e-4),
                byTarget ? none : dice.maybe(1e-4, 2e-3));
    }

    static Outlet.Airline airline(Dice dice, Catalogue catalogue) {
        return new Outlet.Airline(
                dice.maybe(() -> dice.one(Catalogue.ids(catalogue.airlines(), AirlineSize::id))), dice.maybe(0, 3));
    }

    private Outlet.Valve valve() {
        return new Outlet.Valve(dice.one(Catalogue.ids(catalogue.valves(), ValveClass::id)), dice.maybe(0, 1));
    }

    private Outlet.Tap tap() {
        return dice.heads() ? onRun.get() : new Outlet.OnGang(dice.one(gangs).id());
    }
}
