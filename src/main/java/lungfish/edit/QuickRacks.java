package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import lungfish.catalogue.TankSize;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Shell;

/**
 * Racks along the walls of a room, as one would push them there: one wall after the other, each rack as wide as fits, with
 * room to stand before it and the door left free. All measures are common practice, no source.
 */
final class QuickRacks {
    /** Behind a rack, for the pipe. */
    private static final double BEHIND_M = 0.15;
    /** Between two racks. */
    private static final double BETWEEN_M = 0.1;
    /** In front of a rack, to stand and to carry a bucket. */
    private static final double AISLE_M = 0.6;
    /** Along its front; a wider one sags, or is two. */
    private static final double WIDEST_M = 1.9;
    /** A fourth is out of reach. */
    private static final int MOST_SHELVES = 3;

    private static final double DOOR_M = 0.8;
    private static final double STEP_M = 0.05;

    private final Shell shell;
    private final TankSize size;
    private final String device;
    private final int shelves;
    private final List<Box> bodies = new ArrayList<>();
    private final List<Box> aisles = new ArrayList<>();
    private Room room;
    private int left;

    private QuickRacks(Shell shell, int tanks, TankSize size, String device) {
        this.shell = shell;
        this.left = tanks;
        this.size = size;
        this.device = device;
        this.shelves = shelvesIn(shell, size);
        this.room = QuickStart.emptyRoom("", DisplayUnits.METRIC);
        shell.doors()
                .forEach(door ->
                        aisles.add(new Box(door.xM(), shell.widthM() - DOOR_M, door.xM() + DOOR_M, shell.widthM())));
    }

    /** So many tanks on racks; fewer where no more fit. */
    static List<Rack> along(Shell shell, int tanks, TankSize size, String device) {
        QuickRacks racks = new QuickRacks(shell, tanks, size, device);
        racks.alongX(racks.depthM() + BEHIND_M, Rack.Turn.NONE);
        racks.alongY(racks.depthM() + BEHIND_M, Rack.Turn.THREE_QUARTERS);
        racks.alongX(shell.widthM(), Rack.Turn.HALF);
        racks.alongY(shell.lengthM(), Rack.Turn.QUARTER);
        return racks.room.racks();
    }

    /** Under this ceiling. */
    static int shelvesIn(Shell shell, TankSize size) {
        return Math.min(MOST_SHELVES, new RackTemplate(1, 1, size, Optional.empty()).shelvesUnder(shell.heightM()));
    }

    /** With a door at the end of the last long wall, where that is long enough. */
    static Shell withDoor(Shell shell) {
        double xM = Metres.clean(shell.lengthM() - DOOR_M - BEHIND_M);
        return xM < DOOR_M
                ? shell.withDoors(List.of()).withWalls(List.of())
                : shell.withDoors(List.of(new Shell.Door(xM, shell.widthM(), DOOR_M)))
                        .withWalls(List.of());
    }

    /** The same place, or the nearest within the walls. */
    static Point inside(Shell shell, Point place) {
        return new Point(
                Math.min(place.xM(), shell.lengthM()),
                Math.min(place.yM(), shell.widthM()),
                Math.min(place.zM(), shell.heightM()));
    }

    private double depthM() {
        return template(1).depthM();
    }

    private RackTemplate template(int tanksEach) {
        return new RackTemplate(shelves, tanksEach, size, Optional.of(device));
    }

    /** Along a wall that runs with the room's length; {@code endYM} is the far side of its racks, or the wall. */
    private void alongX(double endYM, Rack.Turn turn) {
        double yM = turn == Rack.Turn.NONE ? BEHIND_M : endYM - BEHIND_M - depthM();
        fill(shell.lengthM(), turn, (at, widthM) -> new Box(at, yM, at + widthM, yM + depthM()));
    }

    private void alongY(double endXM, Rack.Turn turn) {
        double xM = turn == Rack.Turn.THREE_QUARTERS ? BEHIND_M : endXM - BEHIND_M - depthM();
        fill(shell.widthM(), turn, (at, widthM) -> new Box(xM, at, xM + depthM(), at + widthM));
    }

    private void fill(double wallM, Rack.Turn turn, BiFunction<Double, Double, Box> place) {
        double at = BEHIND_M;
        while (left > 0 && at < wallM) {
            double from = at;
            Optional<RackTemplate> fitting = widestFirst()
                    .filter(each -> isFree(place.apply(from, each.widthM()), turn))
                    .findFirst();
            fitting.ifPresent(each -> put(each, place.apply(from, each.widthM()), turn));
            at += fitting.map(each -> each.widthM() + BETWEEN_M).orElse(STEP_M);
        }
    }

    private Stream<RackTemplate> widestFirst() {
        int most = Math.max(1, template(1).tanksAlong(WIDEST_M));
        int needed = (left + shelves - 1) / shelves;
        return Stream.iterate(Math.min(most, needed), each -> each >= 1, each -> each - 1)
                .map(this::template);
    }

    private boolean isFree(Box body, Rack.Turn turn) {
        Box aisle = aisle(body, turn);
        Box floor = new Box(BEHIND_M / 2, BEHIND_M / 2, shell.lengthM() - BEHIND_M / 2, shell.widthM() - BEHIND_M / 2);
        return floor.holds(body)
                && new Box(0, 0, shell.lengthM(), shell.widthM()).holds(aisle)
                && bodies.stream().noneMatch(other -> other.touches(body) || other.overlaps(aisle, 0))
                && aisles.stream().noneMatch(other -> other.overlaps(body, 0));
    }

    private static Box aisle(Box body, Rack.Turn turn) {
        return switch (turn) {
            case NONE -> new Box(body.fromXM(), body.toYM(), body.toXM(), body.toYM() + AISLE_M);
            case HALF -> new Box(body.fromXM(), body.fromYM() - AISLE_M, body.toXM(), body.fromYM());
            case THREE_QUARTERS -> new Box(body.toXM(), body.fromYM(), body.toXM() + AISLE_M, body.toYM());
            case QUARTER -> new Box(body.fromXM() - AISLE_M, body.fromYM(), body.fromXM(), body.toYM());
        };
    }

    private void put(RackTemplate template, Box body, Rack.Turn turn) {
        Rack full = template.rack(room, body.fromXM(), body.fromYM(), turn, template.widthM(), template.depthM());
        Rack rack = full.withShelves(filled(full.shelves()));
        bodies.add(body);
        aisles.add(aisle(body, turn));
        room = RackDrawing.with(room, rack);
    }

    /** From the lowest shelf up, until there are no more tanks. */
    private List<Shelf> filled(List<Shelf> full) {
        List<Shelf> filled = new ArrayList<>();
        for (Shelf shelf : full) {
            int here = Math.min(left, shelf.tanks().size());
            filled.add(shelf.withTanks(shelf.tanks().subList(0, here)));
            left -= here;
        }
        return filled;
    }
}
