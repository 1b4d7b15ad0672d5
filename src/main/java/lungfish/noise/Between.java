package lungfish.noise;

import static lungfish.reason.Assumable.DOOR_HEIGHT;
import static lungfish.reason.Assumable.DOOR_REDUCTION;
import static lungfish.reason.Assumable.WALL_REDUCTION;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.noise.Walls.Part;
import lungfish.room.Point;
import lungfish.room.Shell;
import lungfish.room.Shell.Door;

/** What stands between a machine outside and the room: the wall on its side, with the doors in it. */
record Between(Shell shell, Catalogue catalogue) {
    /** The sides of the box; the first four stand, and doors are in them. */
    private enum Side {
        LEFT,
        RIGHT,
        FRONT,
        BACK,
        CEILING
    }

    /** Reduction where the keeper does not say, dB: of the side where the machine stands, or of the weakest. */
    double assumedDb(Optional<Point> place) {
        return place.map(point -> sideDb(sideOf(point))).orElseGet(this::weakestDb);
    }

    /** What that takes for granted. */
    List<AssumedValue> assumed() {
        return shell.doors().isEmpty()
                ? List.of(catalogue.assumed(WALL_REDUCTION))
                : Stream.of(WALL_REDUCTION, DOOR_REDUCTION, DOOR_HEIGHT)
                        .map(catalogue::assumed)
                        .toList();
    }

    private double weakestDb() {
        return Arrays.stream(Side.values()).mapToDouble(this::sideDb).min().orElseThrow();
    }

    private double sideDb(Side side) {
        double area = areaM2(side);
        double doors = Math.min(area, doorsM2(side));
        return Walls.togetherDb(List.of(
                new Part(area - doors, catalogue.assumed(WALL_REDUCTION).si()),
                new Part(doors, catalogue.assumed(DOOR_REDUCTION).si())));
    }

    private double doorsM2(Side side) {
        double heightM =
                Math.min(shell.heightM(), catalogue.assumed(DOOR_HEIGHT).si());
        return shell.doors().stream()
                .filter(door -> sideOf(door) == side)
                .mapToDouble(door -> door.widthM() * heightM)
                .sum();
    }

    private double areaM2(Side side) {
        return switch (side) {
            case LEFT, RIGHT -> shell.widthM() * shell.heightM();
            case FRONT, BACK -> shell.lengthM() * shell.heightM();
            case CEILING -> shell.lengthM() * shell.widthM();
        };
    }

    private Side sideOf(Door door) {
        return sideOf(new Point(door.xM(), door.yM(), 0));
    }

    /** The side that a point has gone furthest beyond, or is nearest to. */
    private Side sideOf(Point point) {
        double[] beyondM = {
            -point.xM(),
            point.xM() - shell.lengthM(),
            -point.yM(),
            point.yM() - shell.widthM(),
            point.zM() - shell.heightM()
        };
        int furthest = 0;
        for (int i = 1; i < beyondM.length; i++) {
            furthest = beyondM[i] > beyondM[furthest] ? i : furthest;
        }
        return Side.values()[furthest];
    }
}
