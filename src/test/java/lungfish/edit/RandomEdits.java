package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.catalogue.TankSize;
import lungfish.quantity.Quantities;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Listener;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Tank;
import lungfish.room.Wishes;

/** Asks for edits of every kind, with sound numbers and slips, as a keeper in a hurry would. */
public final class RandomEdits {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double FAR_M = 7;

    /** What a keeper types into any cell, right or wrong. */
    private static final List<String> TYPED = List.of(
            "",
            "3 L/min",
            "0.5 cfm",
            "12 in",
            "25 cm",
            "50 %",
            "sometimes",
            "yes",
            "needle-brass",
            "Air stone",
            "-4",
            "none",
            "1e9 m",
            "18\"");

    private static final List<Optional<Integer>> STEPS =
            List.of(Optional.empty(), Optional.of(1), Optional.of(7), Optional.of(21));

    private static final String LIST =
            """
            Tank,Rack,Shelf,Length (cm),Width (cm),Height (cm),Filter
            Fry 1,Left,1,40,25,25,sponge-small
            Fry 2,Left,2,40,25,25,
            Big,B,1,60,30,30,
            """;

    private static final List<BiFunction<AnyOf, Room, Attempt>> KINDS = List.of(
            (any, room) -> RackEdits.place(room, any.rack(), any.number(0, FAR_M), any.number(0, FAR_M)),
            (any, room) -> RackEdits.resize(room, any.rack(), any.number(0.5, 3), any.number(0.3, 0.8)),
            (any, room) -> RackEdits.stretch(room, any.rack(), box(any)),
            (any, room) -> RackEdits.rename(room, any.rack(), any.one(List.of("Fry", "Rack B", " ", "a\nb"))),
            (any, room) -> RackEdits.markPlanned(room, any.racks()),
            (any, room) -> RackEdits.markInPlace(room, any.racks()),
            (any, room) -> StepEdits.come(room, any.racks(), any.one(STEPS)),
            (any, room) -> StepEdits.name(
                    room,
                    any.racks(),
                    any.one(List.of(Optional.empty(), Optional.of("in a year"), Optional.of("a\nb")))),
            (any, room) -> RackEdits.weigh(room, any.racks(), any.maybe(20, 90)),
            (any, room) -> RackEdits.turn(room, any.racks(), any.below(9) - 4),
            (any, room) -> RackDrawing.draw(room, template(any), box(any), CATALOGUE.tankSizes()),
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
            (any, room) -> FrontMoves.tanks(room, any.tanks(), any.number(-0.2, 0.2), any.below(3) - 1),
            (any, room) -> FrontMoves.tankCopies(room, any.tanks(), any.number(-1, 1), any.below(3) - 1),
            (any, room) -> FrontMoves.outlets(room, any.depths(), any.tank()),
            (any, room) -> FrontMoves.outletCopies(room, any.depths(), any.tank()),
            (any, room) -> FrontMoves.shelfCopy(room, any.shelf(), any.number(0, 2)),
            (any, room) -> Copies.fill(room, any.tank()),
            (any, room) -> Clip.of(room, any.selection()).ontoRack(room, any.rack()),
            (any, room) -> TankEdits.resize(room, any.tanks(), outside(any)),
            (any, room) -> TankEdits.fill(room, any.tanks(), any.number(0.05, 0.5)),
            (any, room) -> TankEdits.rename(room, any.tank(), any.one(List.of("Fry 3", ""))),
            (any, room) -> TankEdits.makeKind(room, any.tanks(), any.one(Tank.Kind.class)));

    private static final List<BiFunction<AnyOf, Room, Attempt>> OUTLETS = List.of(
            (any, room) -> OutletEdits.add(room, any.tanks(), any.one(CATALOGUE.devices())),
            (any, room) -> OutletEdits.carry(room, any.outlets(), any.tank()),
            (any, room) -> OutletEdits.device(room, any.outlets(), any.one(CATALOGUE.devices())),
            (any, room) -> OutletEdits.depthM(room, any.outlets(), any.maybe(0.05, 0.4)),
            (any, room) -> OutletEdits.target(room, any.outlets(), any.maybe(1e-6, 1e-4)),
            (any, room) -> OutletEdits.turnover(room, any.outlets(), any.maybe(1e-4, 1e-2)),
            (any, room) -> OutletEdits.least(room, any.outlets(), any.maybe(0, 5e-5)),
            (any, room) -> OutletEdits.most(room, any.outlets(), any.maybe(1e-5, 1e-4)),
            (any, room) -> OutletEdits.use(room, any.outlets(), any.one(Outlet.Use.class)),
            (any, room) ->
                    OutletEdits.essential(room, any.outlets(), any.one(List.of(Optional.of(true), Optional.empty()))),
            (any, room) -> DropEdits.valve(room, any.outlets(), any.maybeOne(CATALOGUE.valves())),
            (any, room) -> DropEdits.opening(room, any.outlets(), any.maybe(0, 1)),
            (any, room) -> DropEdits.airline(room, any.outlets(), any.maybeOne(CATALOGUE.airlines())),
            (any, room) -> DropEdits.airlineLength(room, any.outlets(), any.maybe(0.5, 4)),
            (any, room) -> DropEdits.checkValve(room, any.outlets(), any.one(CATALOGUE.checkValves())),
            (any, room) -> DropEdits.noCheckValve(room, any.outlets()),
            (any, room) -> Block.fillDown(room, any.outlets(), List.of(any.one(Column.class), any.one(Column.class))),
            (any, room) -> pasted(Block.set(room, any.outlets(), any.one(Column.class), any.one(TYPED), reader(room))),
            (any, room) -> pasted(Block.in(
                    room,
                    any.one(TYPED) + "\t" + any.one(TYPED) + "\n" + any.one(TYPED),
                    any.outlets(),
                    List.of(any.one(Column.class), any.one(Column.class)),
                    reader(room))),
            (any, room) -> TankImport.of(
                    room,
                    TankList.read(LIST)
                            .orElseThrow()
                            .preview(TankList.read(LIST).orElseThrow().guess(), reader(room))
                            .items()),
            (any, room) -> Alike.onShelf(room, any.tank()),
            (any, room) -> Alike.onRack(room, any.tank()),
            (any, room) -> TapEdits.hang(room, any.outlets(), any.onRun()),
            (any, room) -> TapEdits.hang(room, any.outlets(), any.gang()),
            (any, room) -> TapEdits.nearest(room, any.outlets()),
            (any, room) -> TapEdits.pin(room, any.outlets()),
            (any, room) -> TapEdits.gang(room, any.outlets(), any.one(Gang.Kind.class), any.point()));

    private static final List<BiFunction<AnyOf, Room, Attempt>> PIPES = List.of(
            (any, room) -> PipeDrawing.draw(room, any.one(CATALOGUE.pipes()), any.line()),
            (any, room) -> PipeDrawing.draw(room, any.one(CATALOGUE.pipes()), any.line()),
            (any, room) -> PipeDrawing.tie(room, any.onRun(), any.onRun(), any.one(CATALOGUE.pipes())),
            (any, room) -> MainEdits.close(room, any.run()),
            (any, room) -> MainEdits.open(room, any.run()),
            (any, room) -> MainEdits.insertCorner(room, any.run(), any.number(0, 8)),
            (any, room) -> MainEdits.placeCorner(room, any.run(), any.below(5), any.point()),
            (any, room) -> MainEdits.level(room, List.of(any.run()), any.number(0, 2.4)),
            (any, room) -> MainEdits.size(room, List.of(any.run()), any.one(CATALOGUE.pipes())),
            (any, room) -> MainEdits.role(room, List.of(any.run()), any.one(Run.Role.class)),
            (any, room) -> MainEdits.rename(room, any.run(), any.one(List.of("North pipe", "\t"))),
            (any, room) -> FittingEdits.insert(room, any.run(), any.number(0, 8), any.one(CATALOGUE.fittings())),
            (any, room) ->
                    FittingEdits.opening(room, any.run(), any.below(4), any.one(CATALOGUE.fittings()), any.maybe(0, 1)),
            (any, room) -> FittingEdits.kind(room, any.run(), any.below(4), any.one(CATALOGUE.fittings())),
            (any, room) -> new ValveEdits(CATALOGUE).turn(room, any.selection()),
            (any, room) -> MainEdits.bend(room, any.run(), any.below(5), any.point()),
            (any, room) -> TapEdits.onto(room, any.outlets(), any.run()),
            (any, room) -> FittingEdits.place(room, any.run(), any.below(4), any.number(0, 8)));

    private static final List<BiFunction<AnyOf, Room, Attempt>> MACHINES = List.of(
            (any, room) -> MachineEdits.place(
                    room, any.one(Blower.Role.class), any.maybeOne(CATALOGUE.blowers()), any.point()),
            (any, room) -> MachineEdits.serve(room, any.blower(), any.outlets()),
            (any, room) -> MachineEdits.machine(room, any.blower(), any.maybeOne(CATALOGUE.blowers())),
            (any, room) -> MachineEdits.place(room, any.blower(), any.point()),
            (any, room) -> MachineEdits.standOutside(room, any.blower(), any.maybe(10, 60)),
            (any, room) -> MachineEdits.standInside(room, any.blower()),
            (any, room) -> MachineEdits.intakeK(room, any.blower(), any.maybe(280, 310)),
            (any, room) -> MachineEdits.fit(
                    room,
                    any.blower(),
                    fitted -> new Blower.Fittings(
                            Optional.of("inlet-filter-small"),
                            Optional.of("inlet-silencer"),
                            fitted.hoseM(),
                            fitted.portM(),
                            fitted.reliefPa())),
            (any, room) -> MachineEdits.bleed(room, any.blower(), new Blower.BledTo(any.maybe(1000, 20000))),
            (any, room) -> MachineEdits.role(room, any.blower(), any.one(Blower.Role.class)),
            (any, room) -> MachineEdits.count(room, any.blower(), any.below(5)),
            (any, room) -> MachineEdits.feed(room, any.blower(), Optional.of(any.onRun())),
            (any, room) -> MachineEdits.rename(room, any.blower(), any.one(List.of("Hum", ""))),
            (any, room) -> BlowerEdits.choose(any.one(CATALOGUE.blowers())),
            (any, room) -> BlowerEdits.bleedAsNeeded(),
            (any, room) -> WishEdits.move(room, any.one(Wishes.Wish.class), any.below(8) - 1),
            (any, room) -> typed(any, room)
                    .map(kind -> OwnBlowerEdits.keep(kind, true))
                    .orElseGet(BlowerEdits::letThePlanChoose),
            (any, room) -> own(any, room).map(BlowerEdits::choose).orElseGet(BlowerEdits::letThePlanChoose),
            (any, room) -> own(any, room).map(OwnBlowerEdits::remove).orElseGet(BlowerEdits::letThePlanChoose),
            (any, room) -> RoomEdits.rename(room, any.one(List.of("Fish room", " "))),
            (any, room) -> RoomEdits.resize(room, any.number(4, 14), any.number(4, 10), any.number(2, 4)),
            (any, room) -> RoomEdits.addDoor(room, any.number(0, 7), any.number(0, 7), any.number(0.6, 1)),
            (any, room) -> RoomEdits.doorWidth(room, any.below(3), any.number(0.6, 1)),
            (any, room) ->
                    RoomEdits.addWall(room, any.number(0, 7), any.number(0, 7), any.number(0, 7), any.number(0, 7)),
            (any, room) -> RoomEdits.placeDoor(room, any.below(3), any.number(0, 7), any.number(0, 7)),
            (any, room) -> RoomEdits.slideDoor(room, any.below(3), any.number(0, 7)),
            (any, room) -> RoomEdits.placeWall(
                    room, any.below(3), any.number(0, 7), any.number(0, 7), any.number(0, 7), any.number(0, 7)),
            (any, room) -> RoomEdits.listen(room, any.point()),
            (any, room) ->
                    RoomEdits.partition(room, Optional.of(new Listener.Partition("Thin wall", any.number(10, 50)))));

    private RandomEdits() {}

    /** An edit of a room, or why not. */
    public static Attempt next(Random random, Room room) {
        AnyOf any = new AnyOf(random, room);
        return any.one(any.one(List.of(KINDS, OUTLETS, PIPES, MACHINES, RandomBackupEdits.ALL, RandomLogEdits.ALL)))
                .apply(any, room);
    }

    private static Optional<BlowerClass> own(AnyOf any, Room room) {
        List<BlowerClass> all = room.ownClasses().blowers();
        return all.isEmpty() ? Optional.empty() : any.maybeOne(all);
    }

    /** From a data sheet, if it is in order; some have the same name. */
    private static Optional<BlowerClass> typed(AnyOf any, Room room) {
        return BlowerDraft.empty()
                .named(any.one(List.of("Mine", "No. 2", "???")))
                .with(0, 0, "0")
                .with(0, 1, any.number(100, 200) + " L/min")
                .with(1, 0, any.number(10, 25) + " kPa")
                .with(1, 1, "2 L/min")
                .with(BlowerSlot.WATTS, "100 W")
                .with(BlowerSlot.PRICE, "99")
                .with(BlowerSlot.CONTINUOUS, "7 kPa")
                .look(room, CATALOGUE, Quantities.in(room.displayUnits()))
                .done();
    }

    static Reader reader(Room room) {
        return new Reader(Quantities.in(room.displayUnits()), room.ownClasses(), CATALOGUE);
    }

    /** The keeper takes what is good. */
    private static Attempt pasted(Pasted pasted) {
        return pasted.good().<Attempt>map(edit -> edit).orElse(Refused.nothing("good cell"));
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
