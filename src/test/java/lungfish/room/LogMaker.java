package lungfish.room;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Random building and history for {@link RoomMaker}. */
final class LogMaker {
    private final Dice dice;
    private final List<OutletId> outlets;
    private final Supplier<Outlet.OnRun> onRun;

    LogMaker(Dice dice, List<OutletId> outlets, Supplier<Outlet.OnRun> onRun) {
        this.dice = dice;
        this.outlets = outlets;
        this.onRun = onRun;
    }

    Building building() {
        return new Building(
                dice.maybe(1, 6),
                dice.maybe(0, 0.005),
                dice.maybe(0, 0.3),
                dice.maybe(() -> "npt-1-8"),
                dice.some(1, 2, i -> new Building.OwnPrice("part " + i, dice.between(0, 50))));
    }

    Log log() {
        return new Log(readings(), dice.some(1, 3, this::service), dice.some(1, 2, i -> new Log.Tick("s:" + i, day())));
    }

    /** One of each kind. */
    private List<Reading> readings() {
        double from = dice.between(5000, 20_000);
        List<Reading.Measured> all = List.of(
                new Reading.Jar(outlet(), dice.between(5, 90), dice.maybe(0.0005, 0.002)),
                new Reading.Gauge(dice.maybe(onRun), dice.between(0, 30_000)),
                new Reading.Watts(dice.maybe(() -> new BlowerId("b1")), dice.between(0, 200)),
                new Reading.Level(dice.between(20, 80)),
                new Reading.Fall(from, dice.between(0, from - 1), dice.between(1, 600)));
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            readings.add(new Reading(new ReadingId("r" + i), day(), all.get(i), shut(), dice.maybe(dice::name)));
        }
        return readings;
    }

    private Reading.Shut shut() {
        return dice.maybe(() -> new Reading.Shut(dice.some(1, 2, i -> outlet()), dice.some(1, 2, i -> onRun.get())))
                .orElse(Reading.Shut.NOTHING);
    }

    private Service service(int number) {
        return new Service(
                new ServiceId("s" + number),
                day(),
                dice.one(Service.Kind.class),
                dice.some(1, 2, i -> outlet()),
                dice.maybe(() -> new BlowerId("gone")),
                dice.maybe(dice::name));
    }

    private OutletId outlet() {
        return outlets.isEmpty() || dice.heads() ? new OutletId("gone") : dice.one(outlets);
    }

    private LocalDate day() {
        return LocalDate.of(dice.whole(2020, 2040), dice.whole(1, 12), dice.whole(1, 28));
    }
}
