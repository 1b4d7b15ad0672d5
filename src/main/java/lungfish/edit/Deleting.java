package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shell;

/**
 * Deletes whatever is chosen, with what stands in it. What led to it leads nowhere afterwards: an outlet whose tap or pipe
 * is gone leaves the pipe at the nearest point again.
 */
public final class Deleting {
    private Deleting() {}

    /** Deletes what is chosen. */
    public static Attempt of(Room room, Selection chosen) {
        if (chosen.isEmpty()) {
            return Refused.because("Nothing is chosen.", "Choose what to delete.");
        }
        return Edit.tried(room, "Delete " + Words.of(room, chosen), before -> without(before, chosen));
    }

    private static Room without(Room room, Selection chosen) {
        Room step = room.withRacks(Each.kept(room.racks(), rack -> !chosen.has(Part.rack(rack.id()))));
        step = Each.rack(
                step,
                rack -> rack.withShelves(Each.kept(rack.shelves(), shelf -> !chosen.has(Part.shelf(shelf.id())))));
        step = Each.tanks(step, tanks -> Each.kept(tanks, tank -> !chosen.has(Part.tank(tank.id()))));
        step = Each.outlets(step, outlets -> Each.kept(outlets, outlet -> !chosen.has(Part.outlet(outlet.id()))));
        step = taps(step, chosen);
        step = step.withGangs(Each.kept(step.gangs(), gang -> !chosen.has(Part.gang(gang.id()))));
        step = step.withBlowers(Each.kept(step.blowers(), blower -> !chosen.has(Part.blower(blower.id()))));
        step = chosen.has(Part.listener()) ? step.withListener(Optional.empty()) : step;
        return Sweep.of(pipes(step.withShell(walls(step.shell(), chosen)), chosen));
    }

    private static Room taps(Room room, Selection chosen) {
        Room outlets = Each.outlet(
                room,
                Each.where(outlet -> chosen.has(Part.tap(outlet.id())), outlet -> outlet.tappedAt(Optional.empty())));
        Room gangs = outlets.withGangs(Each.changed(
                outlets.gangs(),
                Each.where(gang -> chosen.has(Part.gangTap(gang.id())), gang -> gang.tappedAt(Optional.empty()))));
        return gangs.withBlowers(Each.changed(
                gangs.blowers(),
                Each.where(blower -> chosen.has(Part.feed(blower.id())), blower -> blower.feeding(Optional.empty()))));
    }

    private static Shell walls(Shell shell, Selection chosen) {
        Shell after = shell.withDoors(left(shell.doors(), i -> chosen.has(Part.door(i))))
                .withWalls(left(shell.walls(), i -> chosen.has(Part.wall(i))));
        return after.equals(shell) ? shell : after;
    }

    private static Room pipes(Room room, Selection chosen) {
        Room step = room.withRuns(Each.kept(room.runs(), run -> !chosen.has(Part.run(run.id()))));
        step = step.withRuns(Each.changed(
                step.runs(), run -> run.fitted(left(run.fittings(), i -> chosen.has(Part.fitting(run.id(), i))))));
        List<Run> shorter = new ArrayList<>();
        List<Run> gone = new ArrayList<>();
        for (Run run : step.runs()) {
            List<Point> points = left(run.points(), i -> chosen.has(Part.corner(run.id(), i)));
            Run after = run.through(points, run.closed() && points.size() >= 3);
            if (points.size() < run.points().size()) {
                (isPipe(after) ? shorter : gone).add(after);
            }
        }
        Room reshaped = shorter.isEmpty() ? step : Reshaping.of(step, shorter);
        List<RunId> ids = gone.stream().map(Run::id).toList();
        return reshaped.withRuns(Each.kept(reshaped.runs(), run -> !ids.contains(run.id())));
    }

    private static boolean isPipe(Run run) {
        return Sound.isLine(run) && run.lengthM() >= PipeSound.LEAST_M;
    }

    private static <T> List<T> left(List<T> all, Predicate<Integer> gone) {
        List<T> left = IntStream.range(0, all.size())
                .filter(i -> !gone.test(i))
                .mapToObj(all::get)
                .toList();
        return left.size() == all.size() ? all : left;
    }

    /** The tap of each of these outlets becomes the nearest point of the pipe again. */
    static Room untapped(Room room, Predicate<Outlet> meant) {
        return Each.outlet(room, Each.where(meant, outlet -> outlet.tappedAt(Optional.empty())));
    }
}
