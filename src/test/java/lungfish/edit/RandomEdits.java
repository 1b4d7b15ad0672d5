package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.catalogue.TankSize;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Tank;

/** Asks for edits of every kind, with sound numbers and slips, as a keeper in a hurry would. */
final class RandomEdits {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double FAR_M = 7;

    private static final List<BiFunction<AnyOf, Room, Attempt>> KINDS = List.of(
            (any, room) -> RackEdits.place(room, any.rack(), any.number(0, FAR_M), any.number(0, FAR_M)),
            (any, room) -> RackEdits.resize(room, any.rack(), any.number(0.5, 3), any.number(0.3, 0.8)),
            (any, room) -> RackEdits.stretch(room, any.rack(), box(any)),
            (any, room) -> RackEdits.rename(room, any.rack(), any.one(List.of("Fry", "Rack B", " ", "a\nb"))),
            (any, room) -> RackEdits.markPlanned(room, any.racks()),
            (any, room) -> RackEdits.markInPlace(room, any.racks()),
            (any, room) -> RackEdits.weigh(room, any.racks(), any.maybe(20, 90)),
            (any, room) -> RackEdits.turn(room, any.racks(), any.below(9) - 4),
            (any, room) -> RackDrawing.draw(room, template(any), box(any), CATALOGUE.tankSizes()),
            (any, room) -> RackDrawing.add(
                    room, template(any), any.number(0, FAR_M), any.number(0, FAR_M), any.one(Rack.Turn.class)),
            (any, room) -> Arranging.align(room, any.racks(), any.one(Arranging.Edge.class)),
            (any, room) -> Arranging.distribute(room, any.racks(), any.one(Arranging.Axis.class)),
            (any, room) -> Moves.by(room, any.selection(), any.number(-1, 1), any.number(-1, 1)),
            (any, room) -> Moves.by(room, any.selection(), any.number(-1, 1), 0),
            (any, room) -> Deleting.of(room, any.selection()),
            (any, room) -> Copies.duplicate(room, any.selection()),
            (any, room) -> Clip.of(room, any.selection()).ontoFloor(room, any.number(-2, 2), any.number(-2, 2)),
            (any, room) -> Clip.of(room, any.selection()).ontoShelf(room, any.shelf()),
            (any, room) -> Clip.of(room, any.selection()).intoTanks(room, any.tanks()),
            (any, room) -> ShelfEdits.add(room, any.rack()),
            (any, room) -> ShelfEdits.add(room, any.rack(), any.number(0, 2)),
            (any, room) -> ShelfEdits.raise(room, any.shelf(), any.number(0, 2)),
            (any, room) -> TankEdits.add(room, any.shelf(), size(any), device(any)),
            (any, room) -> TankEdits.add(room, any.shelf(), outside(any), any.number(0.1, 0.4), device(any)),
            (any, room) -> TankEdits.slide(room, any.tanks(), any.number(-0.2, 0.2)),
            (any, room) -> TankEdits.place(room, any.tank(), any.number(0, 2)),
            (any, room) -> TankEdits.carry(room, any.tank(), any.shelf()),
            (any, room) -> TankEdits.carry(room, any.tank(), any.shelf(), any.number(0, 2)),
            (any, room) -> TankEdits.resize(room, any.tanks(), outside(any)),
            (any, room) -> TankEdits.fill(room, any.tanks(), any.number(0.05, 0.5)),
            (any, room) -> TankEdits.rename(room, any.tank(), any.one(List.of("Fry 3", ""))),
            (any, room) -> TankEdits.makeKind(room, any.tanks(), any.one(Tank.Kind.class)),
            (any, room) -> ContentEdits.temperatureK(room, any.tanks(), any.maybe(280, 310)),
            (any, room) -> ContentEdits.salinity(room, any.tanks(), any.maybe(0, 0.04)),
            (any, room) -> ContentEdits.survivalS(room, any.tanks(), any.maybe(60, 1e6)),
            (any, room) -> ContentEdits.fish(
                    room, any.tanks(), List.of(new Tank.Fish("Guppy", any.below(30), any.number(0.001, 0.1)))),
            (any, room) -> ContentEdits.feeding(
                    room, any.tanks(), Optional.of(new Tank.Feeding(any.number(0, 0.01), any.maybe(0.2, 0.5)))));

    private RandomEdits() {}

    /** An edit of a room, or why not. */
    static Attempt next(Random random, Room room) {
        AnyOf any = new AnyOf(random, room);
        return any.one(KINDS).apply(any, room);
    }

    private static Box box(AnyOf any) {
        return Box.between(any.between(0, FAR_M), any.between(0, FAR_M), any.between(0, FAR_M), any.between(0, FAR_M));
    }

    private static RackTemplate template(AnyOf any) {
        return new RackTemplate(1 + any.below(4), 1 + any.below(4), size(any), device(any));
    }

    private static TankSize size(AnyOf any) {
        return any.one(CATALOGUE.tankSizes());
    }

    private static Tank.Size outside(AnyOf any) {
        return new Tank.Size(any.number(0.2, 1), any.number(0.2, 0.5), any.number(0.2, 0.5));
    }

    private static Optional<String> device(AnyOf any) {
        return any.one(List.of(Optional.<String>empty(), Optional.of("sponge-medium"), Optional.of("stone-fine")));
    }
}
