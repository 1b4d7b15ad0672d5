package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shell;

/** Finds a place for a rack: along a wall first, away from doors and other racks. */
final class FreeFloor {
    /** A place, and how the rack stands there. */
    record Spot(double xM, double yM, Rack.Turn turn) {}

    private static final double STEP_M = 0.1;
    private static final double TOUCHING_M = 1e-6;

    private FreeFloor() {}

    /** The first free place for a rack so wide and deep, m. */
    static Optional<Spot> spot(Room room, double widthM, double depthM) {
        Shell shell = room.shell();
        Box floor = new Box(0, 0, shell.lengthM(), shell.widthM());
        List<Box> taken = Stream.concat(
                        room.racks().stream().map(Box::of),
                        shell.doors().stream().map(door -> swing(door, shell)))
                .toList();
        return spots(shell, widthM, depthM)
                .filter(spot -> isFree(box(spot, widthM, depthM), floor, taken))
                .findFirst();
    }

    private static boolean isFree(Box box, Box floor, List<Box> taken) {
        boolean inside = floor.moved(0, 0).overlaps(box, 0)
                && box.fromXM() >= -TOUCHING_M
                && box.fromYM() >= -TOUCHING_M
                && box.toXM() <= floor.toXM() + TOUCHING_M
                && box.toYM() <= floor.toYM() + TOUCHING_M;
        return inside && taken.stream().noneMatch(other -> other.overlaps(box, TOUCHING_M));
    }

    private static Box box(Spot spot, double widthM, double depthM) {
        boolean alongX = spot.turn() == Rack.Turn.NONE || spot.turn() == Rack.Turn.HALF;
        return new Box(
                spot.xM(), spot.yM(), spot.xM() + (alongX ? widthM : depthM), spot.yM() + (alongX ? depthM : widthM));
    }

    private static Stream<Spot> spots(Shell shell, double widthM, double depthM) {
        List<Spot> spots = new ArrayList<>();
        for (double x : steps(shell.lengthM() - widthM)) {
            spots.add(new Spot(x, 0, Rack.Turn.NONE));
        }
        for (double x : steps(shell.lengthM() - widthM)) {
            spots.add(new Spot(x, Metres.clean(shell.widthM() - depthM), Rack.Turn.HALF));
        }
        for (double y : steps(shell.widthM() - widthM)) {
            spots.add(new Spot(0, y, Rack.Turn.THREE_QUARTERS));
        }
        for (double y : steps(shell.widthM() - widthM)) {
            spots.add(new Spot(Metres.clean(shell.lengthM() - depthM), y, Rack.Turn.QUARTER));
        }
        for (double y : steps(shell.widthM() - depthM)) {
            steps(shell.lengthM() - widthM).forEach(x -> spots.add(new Spot(x, y, Rack.Turn.NONE)));
        }
        return spots.stream();
    }

    /** From a wall to as far as it goes. */
    private static List<Double> steps(double mostM) {
        List<Double> steps = new ArrayList<>();
        for (int i = 0; i * STEP_M <= mostM + TOUCHING_M; i++) {
            steps.add(Metres.clean(i * STEP_M));
        }
        return steps;
    }

    /** The floor that a door sweeps: as deep as it is wide. */
    private static Box swing(Shell.Door door, Shell shell) {
        if (WallMoves.inSideWall(door.xM(), door.yM(), shell)) {
            double fromXM = door.xM() > shell.lengthM() / 2 ? shell.lengthM() - door.widthM() : 0;
            return new Box(fromXM, door.yM(), fromXM + door.widthM(), door.yM() + door.widthM());
        }
        double fromYM = door.yM() > shell.widthM() / 2 ? shell.widthM() - door.widthM() : 0;
        return new Box(door.xM(), fromYM, door.xM() + door.widthM(), fromYM + door.widthM());
    }
}
