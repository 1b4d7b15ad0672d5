package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lungfish.edit.Attempt;
import lungfish.edit.Part;
import lungfish.edit.RoomEdits;
import lungfish.edit.Selection;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Shell;

/** What can be said of one door, or of one inner wall. */
final class WallProperties {
    private final int number;

    private WallProperties(int number) {
        this.number = number;
    }

    /** Several walls have nothing in common that could be typed. */
    static List<Property> ofWall(Selection chosen) {
        return one(chosen).map(WallProperties::wall).orElse(List.of());
    }

    static List<Property> ofDoor(Selection chosen) {
        return one(chosen).map(WallProperties::door).orElse(List.of());
    }

    private static Optional<WallProperties> one(Selection chosen) {
        return chosen.parts().size() == 1 ? chosen.lead().map(Part::number).map(WallProperties::new) : Optional.empty();
    }

    private List<Property> door() {
        return List.of(
                amount(
                        "Width of the door",
                        this::doors,
                        (room, door) -> door.widthM(),
                        (room, door) -> m -> RoomEdits.doorWidth(room, number, m)),
                amount(
                        "From the corner of its wall",
                        this::doors,
                        (room, door) -> RoomEdits.doorFromM(room.shell(), door),
                        (room, door) -> m -> RoomEdits.slideDoor(room, number, m)));
    }

    private List<Property> wall() {
        return List.of(
                end("Begins from the left wall", Shell.Wall::fromXM, (wall, m) -> ends(m, wall.fromYM(), wall, true)),
                end("Begins from the upper wall", Shell.Wall::fromYM, (wall, m) -> ends(wall.fromXM(), m, wall, true)),
                end("Ends from the left wall", Shell.Wall::toXM, (wall, m) -> ends(m, wall.toYM(), wall, false)),
                end("Ends from the upper wall", Shell.Wall::toYM, (wall, m) -> ends(wall.toXM(), m, wall, false)),
                end("Length of the wall", WallProperties::lengthM, WallProperties::stretched));
    }

    /** The same wall with one end there. */
    private static Shell.Wall ends(double xM, double yM, Shell.Wall wall, boolean isFirst) {
        return isFirst
                ? new Shell.Wall(xM, yM, wall.toXM(), wall.toYM(), wall.build())
                : new Shell.Wall(wall.fromXM(), wall.fromYM(), xM, yM, wall.build());
    }

    private static double lengthM(Shell.Wall wall) {
        return Math.hypot(wall.toXM() - wall.fromXM(), wall.toYM() - wall.fromYM());
    }

    /** As long, from where it begins, the way it goes. */
    private static Shell.Wall stretched(Shell.Wall wall, double toM) {
        double share = toM / lengthM(wall);
        double toX = wall.fromXM() + share * (wall.toXM() - wall.fromXM());
        double toY = wall.fromYM() + share * (wall.toYM() - wall.fromYM());
        return ends(toX, toY, wall, false);
    }

    private Property end(
            String label, ToDoubleFunction<Shell.Wall> now, BiFunction<Shell.Wall, Double, Shell.Wall> changed) {
        return amount(label, this::walls, (room, wall) -> now.applyAsDouble(wall), (room, wall) -> m -> {
            Shell.Wall after = changed.apply(wall, m);
            return RoomEdits.placeWall(room, number, after.fromXM(), after.fromYM(), after.toXM(), after.toYM());
        });
    }

    private <T> Property amount(
            String label,
            Function<Room, Stream<T>> things,
            BiFunction<Room, T, Double> now,
            BiFunction<Room, T, Function<Double, Attempt>> say) {
        return new Property.Amount(
                label,
                Dimension.LENGTH,
                Property.Usual.NONE,
                room -> Properties.said(things.apply(room), thing -> Optional.of(now.apply(room, thing))),
                (room, si) -> things.apply(room)
                        .findFirst()
                        .map(thing -> say.apply(room, thing).apply(si.orElse(now.apply(room, thing))))
                        .orElseThrow());
    }

    private Stream<Shell.Door> doors(Room room) {
        return room.shell().doors().stream().skip(number).limit(1);
    }

    private Stream<Shell.Wall> walls(Room room) {
        return room.shell().walls().stream().skip(number).limit(1);
    }
}
