package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
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

    /** Puts a door with its middle at the place of the outer walls that is nearest to a point. */
    public static Attempt placeDoor(Room room, int number, double xM, double yM) {
        return door(room, number, "Move a door", (door, shell) -> WallMoves.nearest(shell, xM, yM, door.widthM()));
    }

    /** Puts a door so far, m, from where its wall begins: from the left corner, or the upper one. */
    public static Attempt slideDoor(Room room, int number, double fromM) {
        return door(
                room,
                number,
                "Move a door",
                (door, shell) -> WallMoves.inSideWall(door.xM(), door.yM(), shell)
                        ? new Shell.Door(door.xM(), Metres.clean(fromM), door.widthM())
                        : new Shell.Door(Metres.clean(fromM), door.yM(), door.widthM()));
    }

    /** How far a door is from where its wall begins, m. */
    public static double doorFromM(Shell shell, Shell.Door door) {
        return WallMoves.inSideWall(door.xM(), door.yM(), shell) ? door.yM() : door.xM();
    }

    private static Attempt door(Room room, int number, String done, BiFunction<Shell.Door, Shell, Shell.Door> change) {
        Shell now = room.shell();
        if (number < 0 || number >= now.doors().size()) {
            return Refused.nothing("door");
        }
        Shell.Door after = change.apply(now.doors().get(number), now);
        return WallMoves.isWithin(after, now)
                ? shell(room, done, shell -> shell.withDoors(replaced(shell.doors(), number, after)))
                : Refused.because(
                        "The door would reach beyond its wall.",
                        "Its wall is {most} long; place it nearer, or make it narrower.",
                        Refused.length("most", WallMoves.wallM(after, now)));
    }

    private static <T> List<T> replaced(List<T> all, int number, T with) {
        List<T> after = new ArrayList<>(all);
        after.set(number, with);
        return after;
    }

    /** How wide a door is, m. */
    public static Attempt doorWidth(Room room, int number, double doorM) {
        return door(room, number, "Resize a door", (door, shell) -> new Shell.Door(door.xM(), door.yM(), doorM));
    }

    /** An inner wall from one point to another, m. */
    public static Attempt addWall(Room room, double fromXM, double fromYM, double toXM, double toYM) {
        Optional<Refused> trouble = wallTrouble(room.shell(), Box.between(fromXM, fromYM, toXM, toYM));
        return trouble.isPresent()
                ? trouble.get()
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

    /** Puts the two ends of an inner wall there, m. */
    public static Attempt placeWall(Room room, int number, double fromXM, double fromYM, double toXM, double toYM) {
        if (number < 0 || number >= room.shell().walls().size()) {
            return Refused.nothing("wall");
        }
        Optional<Refused> trouble = wallTrouble(room.shell(), Box.between(fromXM, fromYM, toXM, toYM));
        return trouble.isPresent()
                ? trouble.get()
                : shell(
                        room,
                        "Move an inner wall",
                        shell -> shell.withWalls(replaced(
                                shell.walls(),
                                number,
                                new Shell.Wall(
                                        Metres.clean(fromXM),
                                        Metres.clean(fromYM),
                                        Metres.clean(toXM),
                                        Metres.clean(toYM),
                                        shell.walls().get(number).build()))));
    }

    private static Optional<Refused> wallTrouble(Shell shell, Box wall) {
        if (Math.hypot(wall.spanXM(), wall.spanYM()) < PipeSound.LEAST_M) {
            return Optional.of(
                    Refused.because("A wall needs two ends that lie apart.", "Make it longer, or delete it."));
        }
        double slackM = Shell.WALL_M;
        Box room = new Box(-slackM, -slackM, shell.lengthM() + slackM, shell.widthM() + slackM);
        return room.holds(wall)
                ? Optional.empty()
                : Optional.of(Refused.because(
                        "An inner wall stands between the outer ones.",
                        "End it at an outer wall, at the latest; make the room larger first, if it is."));
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
