package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shell;

/**
 * The one gate that every edit passes: whether the room that it makes can stand, told in the keeper's words. Only what is
 * new is looked at, so that a drag costs what it moves. The file's own checks hold for everything else.
 */
final class Sound {
    private final Room after;
    private final List<Refused> troubles = new ArrayList<>();

    private Sound(Room after) {
        this.after = after;
    }

    /** The first thing that is in the way; empty where the room can stand. */
    static Optional<Refused> trouble(Room before, Room after) {
        Sound sound = new Sound(after);
        sound.look(before);
        return sound.troubles.stream().findFirst();
    }

    private void look(Room before) {
        boolean otherShell = !after.shell().equals(before.shell());
        if (otherShell) {
            shell(after.shell());
        }
        fresh(otherShell ? List.of() : before.racks(), after.racks()).forEach(this::rack);
        PipeSound pipe = new PipeSound(after, troubles);
        boolean otherLimits = otherShell || !before.blowers().equals(after.blowers());
        fresh(otherLimits ? List.of() : before.runs(), after.runs()).forEach(pipe::run);
        fresh(otherShell ? List.of() : before.gangs(), after.gangs()).forEach(this::gang);
        fresh(otherShell ? List.of() : before.blowers(), after.blowers()).forEach(this::blower);
        if (!after.wishes().equals(before.wishes())) {
            OxygenLevels.trouble(after.wishes()).ifPresent(troubles::add);
        }
        after.listener().ifPresent(listener -> PlaceSound.of(after.shell(), troubles)
                .point(listener.place(), listener.behind().isPresent() ? Shell.NEXT_ROOM_M : Shell.WALL_M));
    }

    /** Those that are not the very same as before. */
    private static <T> List<T> fresh(Collection<T> before, List<T> after) {
        Set<T> known = Collections.newSetFromMap(new IdentityHashMap<>());
        known.addAll(before);
        return after.stream().filter(each -> !known.contains(each)).toList();
    }

    private void shell(Shell shell) {
        Sizes.span("The room's length", shell.lengthM(), troubles);
        Sizes.span("The room's width", shell.widthM(), troubles);
        Sizes.span("The room's height", shell.heightM(), troubles);
        shell.doors().forEach(door -> {
            Sizes.span("A door's width", door.widthM(), troubles);
            Sizes.place(door.xM(), troubles);
            Sizes.place(door.yM(), troubles);
        });
        shell.walls().forEach(wall -> {
            Sizes.place(wall.fromXM(), troubles);
            Sizes.place(wall.fromYM(), troubles);
            Sizes.place(wall.toXM(), troubles);
            Sizes.place(wall.toYM(), troubles);
        });
    }

    private void rack(Rack rack) {
        new RackSound(rack, troubles).look();
        PlaceSound.of(after.shell(), troubles).rack(rack);
    }

    private void gang(Gang gang) {
        PlaceSound.of(after.shell(), troubles).point(gang.place(), Shell.WALL_M);
    }

    private void blower(Blower blower) {
        double slackM = blower.siting().outside() ? Shell.NEXT_ROOM_M : Shell.WALL_M;
        MachineSound.look(blower, troubles);
        PlaceSound place = PlaceSound.of(after.shell(), troubles);
        blower.siting().place().ifPresent(at -> place.point(at, slackM));
    }

    /** How far out of the room pipe may run: to the blower, where that stands outside. */
    static double pipeSlackM(Room room) {
        boolean outside =
                room.blowers().stream().anyMatch(blower -> blower.siting().outside());
        return outside ? Shell.NEXT_ROOM_M : Shell.WALL_M;
    }

    /** All runs have the corners and the length that what sits on them asks for. */
    static boolean isLine(Run run) {
        return run.points().size() >= (run.closed() ? 3 : 2);
    }
}
