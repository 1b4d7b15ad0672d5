package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import lungfish.room.Listener;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Shell;

/** Edits of the room itself: its size, doors and inner walls, and who listens. */
public final class RoomEdits {
    private static final double LOUDEST_DB = 200;

    private RoomEdits() {}

    public static Attempt rename(Room room, String name) {
        Optional<Refused> trouble = Names.trouble(name);
        return trouble.isPresent() ? trouble.get() : new Edit("Rename the room", before -> before.withName(name));
    }

    /** This long, wide and high, m. Doors in the far walls go with them; racks and pipe stay, and must stay within. */
    public static Attempt resize(Room room, double lengthM, double widthM, double heightM) {
        return Edit.tried(room, "Resize the room", before -> {
            Shell old = before.shell();
            Shell sized = old.sized(lengthM, widthM, heightM);
            return before.withShell(sized.withDoors(
                    old.doors().stream().map(door -> kept(door, old, sized)).toList()));
        });
    }

    /** A door stays in its wall, and its middle as near to where it was as the wall allows. */
    private static Shell.Door kept(Shell.Door door, Shell old, Shell sized) {
        boolean side = WallMoves.inSideWall(door.xM(), door.yM(), old);
        boolean farX = side && door.xM() > old.lengthM() / 2;
        boolean farY = !side && door.yM() > old.widthM() / 2;
        double xM = farX ? sized.lengthM() : door.xM();
        double yM = farY ? sized.widthM() : door.yM();
        return new Shell.Door(
                side ? xM : within(xM, sized.lengthM() - door.widthM()),
                side ? within(yM, sized.widthM() - door.widthM()) : yM,
                door.widthM());
    }

    private static double within(double at, double most) {
        return at > most ? Metres.clean(Math.max(0, most)) : at;
    }

    /** A door so wide, m, in the outer wall that is nearest to a point. */
    public static Attempt addDoor(Room room, double xM, double yM, double doorM) {
        return shell(room, "Add a door", shell -> {
            List<Shell.Door> doors = new ArrayList<>(shell.doors());
            doors.add(WallMoves.nearest(shell, xM, yM, doorM));
            return shell.withDoors(doors);
        });
    }

    /** How wide a door is, m. */
    public static Attempt doorWidth(Room room, int number, double doorM) {
        return number < 0 || number >= room.shell().doors().size()
                ? Refused.nothing("door")
                : shell(
                        room,
                        "Resize a door",
                        shell ->
                                shell.withDoors(IntStream.range(0, shell.doors().size())
                                        .mapToObj(i -> i == number
                                                ? new Shell.Door(
                                                        shell.doors().get(i).xM(),
                                                        shell.doors().get(i).yM(),
                                                        doorM)
                                                : shell.doors().get(i))
                                        .toList()));
    }

    /** An inner wall from one point to another, m. */
    public static Attempt addWall(Room room, double fromXM, double fromYM, double toXM, double toYM) {
        return Math.hypot(toXM - fromXM, toYM - fromYM) < PipeSound.LEAST_M
                ? Refused.because("A wall needs two ends that lie apart.", "Draw it longer.")
                : shell(room, "Add an inner wall", shell -> {
                    List<Shell.Wall> walls = new ArrayList<>(shell.walls());
                    walls.add(new Shell.Wall(
                            Metres.clean(fromXM),
                            Metres.clean(fromYM),
                            Metres.clean(toXM),
                            Metres.clean(toYM),
                            Optional.empty()));
                    return shell.withWalls(walls);
                });
    }

    private static Attempt shell(Room room, String done, UnaryOperator<Shell> change) {
        return Edit.tried(room, done, before -> before.withShell(change.apply(before.shell())));
    }

    /** The keeper listens there, in the room. */
    public static Attempt listen(Room room, Point place) {
        return Edit.tried(
                room,
                "Move the listener",
                before -> before.withListener(Optional.of(before.listener()
                        .map(ear -> ear.at(place))
                        .orElse(new Listener("Listener", place, Optional.empty())))));
    }

    /** What stands between the machines and the ear; empty: nothing. */
    public static Attempt partition(Room room, Optional<Listener.Partition> behind) {
        boolean sound = behind.stream()
                .allMatch(each -> Names.trouble(each.name()).isEmpty()
                        && each.reductionDb() >= 0
                        && each.reductionDb() <= LOUDEST_DB);
        if (!sound || room.listener().isEmpty()) {
            return Refused.because(
                    sound ? "Nobody listens yet." : "No wall takes that off a sound.",
                    sound ? "Place the listener first." : "Type its rating in decibels.");
        }
        return Edit.tried(
                room,
                "Set the listener's wall",
                before -> before.withListener(
                        before.listener().map(ear -> new Listener(ear.name(), ear.place(), behind))));
    }
}
