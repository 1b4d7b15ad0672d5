package lungfish.edit;

import java.util.List;
import java.util.stream.IntStream;
import lungfish.room.Shell;

/** Moves doors along the wall that they stand in, and inner walls anywhere. */
final class WallMoves {
    private WallMoves() {}

    static Shell moved(Shell shell, Selection chosen, double dxM, double dyM) {
        List<Shell.Door> doors = IntStream.range(0, shell.doors().size())
                .mapToObj(i -> chosen.has(Part.door(i))
                        ? slid(shell.doors().get(i), shell, dxM, dyM)
                        : shell.doors().get(i))
                .toList();
        List<Shell.Wall> walls = IntStream.range(0, shell.walls().size())
                .mapToObj(i -> chosen.has(Part.wall(i))
                        ? moved(shell.walls().get(i), dxM, dyM)
                        : shell.walls().get(i))
                .toList();
        Shell after = shell.withDoors(doors).withWalls(walls);
        return after.equals(shell) ? shell : after;
    }

    private static Shell.Door slid(Shell.Door door, Shell shell, double dxM, double dyM) {
        return inSideWall(door.xM(), door.yM(), shell)
                ? new Shell.Door(door.xM(), along(door.yM() + dyM, shell.widthM(), door.widthM()), door.widthM())
                : new Shell.Door(along(door.xM() + dxM, shell.lengthM(), door.widthM()), door.yM(), door.widthM());
    }

    /** A door with its middle at the place of the nearest outer wall that is nearest to a point. */
    static Shell.Door nearest(Shell shell, double xM, double yM, double doorM) {
        if (inSideWall(xM, yM, shell)) {
            double wall = xM > shell.lengthM() / 2 ? shell.lengthM() : 0;
            return new Shell.Door(wall, along(yM - doorM / 2, shell.widthM(), doorM), doorM);
        }
        double wall = yM > shell.widthM() / 2 ? shell.widthM() : 0;
        return new Shell.Door(along(xM - doorM / 2, shell.lengthM(), doorM), wall, doorM);
    }

    private static double along(double fromM, double wallM, double doorM) {
        return Metres.clean(Math.max(0, Math.min(fromM, wallM - doorM)));
    }

    /** Where a door opens its wall. */
    static Box gap(Shell.Door door, Shell shell) {
        boolean side = inSideWall(door.xM(), door.yM(), shell);
        return new Box(
                door.xM(), door.yM(), door.xM() + (side ? 0 : door.widthM()), door.yM() + (side ? door.widthM() : 0));
    }

    /** How long the wall is that a door stands in, m. */
    static double wallM(Shell.Door door, Shell shell) {
        return inSideWall(door.xM(), door.yM(), shell) ? shell.widthM() : shell.lengthM();
    }

    /** Whether a door ends where its wall ends, at the latest. */
    static boolean isWithin(Shell.Door door, Shell shell) {
        double fromM = inSideWall(door.xM(), door.yM(), shell) ? door.yM() : door.xM();
        return fromM >= 0 && fromM + door.widthM() <= wallM(door, shell) + RackSound.ROUNDING_M;
    }

    /** Whether a point is nearer to a wall across the room's length than to one along it. */
    static boolean inSideWall(double xM, double yM, Shell shell) {
        double toSides = Math.min(Math.abs(xM), Math.abs(xM - shell.lengthM()));
        double toEnds = Math.min(Math.abs(yM), Math.abs(yM - shell.widthM()));
        return toSides < toEnds;
    }

    static Shell.Wall moved(Shell.Wall wall, double dxM, double dyM) {
        return new Shell.Wall(
                Metres.clean(wall.fromXM() + dxM),
                Metres.clean(wall.fromYM() + dyM),
                Metres.clean(wall.toXM() + dxM),
                Metres.clean(wall.toYM() + dyM),
                wall.build());
    }
}
