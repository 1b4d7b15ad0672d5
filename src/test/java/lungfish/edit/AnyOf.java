package lungfish.edit;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Draws at random from what is in a room, and now and then what is not. */
final class AnyOf {
    private final Random random;
    private final Room room;

    AnyOf(Random random, Room room) {
        this.random = random;
        this.room = room;
    }

    int below(int most) {
        return random.nextInt(most);
    }

    <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    <E extends Enum<E>> E one(Class<E> kinds) {
        return one(List.of(kinds.getEnumConstants()));
    }

    /** One of them; one in twenty times, or where there is none, the stranger. */
    <T> T oneOr(List<T> all, T stranger) {
        return all.isEmpty() || random.nextInt(20) == 0 ? stranger : one(all);
    }

    /** Up to four of them, in any order, perhaps none. */
    <T> List<T> some(List<T> all) {
        List<T> some = new ArrayList<>();
        IntStream.range(0, all.isEmpty() ? 0 : random.nextInt(5)).forEach(i -> some.add(one(all)));
        return some;
    }

    /** A number as a keeper would mean it, plain half of the time. */
    double between(double least, double most) {
        double x = least + random.nextDouble() * (most - least);
        return random.nextBoolean() ? Math.rint(x * 100) / 100 : x;
    }

    /** Mostly a sound number, now and then a slip. */
    double number(double least, double most) {
        return random.nextInt(12) == 0
                ? one(List.of(0.0, -1.0, 1e-9, 1e7, Double.NaN, Double.POSITIVE_INFINITY))
                : between(least, most);
    }

    OptionalDouble maybe(double least, double most) {
        return random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(number(least, most));
    }

    RackId rack() {
        return oneOr(room.racks().stream().map(Rack::id).toList(), new RackId("no-rack"));
    }

    List<RackId> racks() {
        return some(room.racks().stream().map(Rack::id).toList());
    }

    ShelfId shelf() {
        return oneOr(Find.shelves(room).map(Shelf::id).toList(), new ShelfId("no-shelf"));
    }

    TankId tank() {
        return oneOr(Find.tanks(room).map(Tank::id).toList(), new TankId("no-tank"));
    }

    List<TankId> tanks() {
        return some(Find.tanks(room).map(Tank::id).toList());
    }

    List<OutletId> outlets() {
        return some(Find.outlets(room).map(Outlet::id).toList());
    }

    RunId run() {
        return oneOr(room.runs().stream().map(Run::id).toList(), new RunId("no-run"));
    }

    GangId gang() {
        return oneOr(room.gangs().stream().map(Gang::id).toList(), new GangId("no-gang"));
    }

    BlowerId blower() {
        return oneOr(room.blowers().stream().map(Blower::id).toList(), new BlowerId("no-blower"));
    }

    /** A place on a run, or a little beyond. */
    /** Some outlets, each at a depth, m. */
    Map<OutletId, Double> depths() {
        return outlets().stream().distinct().collect(toMap(id -> id, id -> number(0, 0.4)));
    }

    Outlet.OnRun onRun() {
        return new Outlet.OnRun(run(), number(0, 8));
    }

    Point point() {
        return new Point(number(0, 6), number(0, 4), number(0, 2.4));
    }

    /** A few corners, now and then a loop. */
    List<Point> line() {
        List<Point> corners = new ArrayList<>();
        IntStream.range(0, random.nextInt(6)).forEach(i -> corners.add(point()));
        if (corners.size() > 2 && random.nextBoolean()) {
            corners.add(corners.get(0));
        }
        return corners;
    }

    <T> Optional<T> maybeOne(List<T> all) {
        return random.nextInt(4) == 0 ? Optional.empty() : Optional.of(one(all));
    }

    /** Anything that can be chosen, of any kind. */
    Selection selection() {
        List<Part> parts = new ArrayList<>();
        int kinds = 1 + random.nextInt(3);
        for (int i = 0; i < kinds; i++) {
            parts.addAll(some(Parts.of(room, one(Part.Kind.class))));
        }
        return new Selection(parts);
    }
}
