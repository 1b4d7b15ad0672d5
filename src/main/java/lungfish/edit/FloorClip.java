package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shell;

/** Of what was copied, all that stands on the floor, hangs above it, or is a part of the walls. */
public record FloorClip(
        List<Rack> racks,
        List<Run> runs,
        List<Gang> gangs,
        List<Blower> blowers,
        List<Shell.Door> doors,
        List<Shell.Wall> walls) {
    public FloorClip {
        racks = List.copyOf(racks);
        runs = List.copyOf(runs);
        gangs = List.copyOf(gangs);
        blowers = List.copyOf(blowers);
        doors = List.copyOf(doors);
        walls = List.copyOf(walls);
    }

    /** What of it is chosen; and the gangs that feed nothing but what is in the chosen racks. */
    static FloorClip of(Room room, Selection chosen) {
        List<Rack> racks = kept(room.racks(), rack -> Part.rack(rack.id()), chosen);
        return new FloorClip(
                racks,
                kept(room.runs(), run -> Part.run(run.id()), chosen),
                room.gangs().stream()
                        .filter(gang -> chosen.has(Part.gang(gang.id())) || feedsOnly(room, gang, racks))
                        .toList(),
                kept(room.blowers(), blower -> Part.blower(blower.id()), chosen),
                numbered(room.shell().doors(), Part::door, chosen),
                numbered(room.shell().walls(), Part::wall, chosen));
    }

    private static <T> List<T> kept(List<T> all, Function<T, Part> part, Selection chosen) {
        return all.stream().filter(each -> chosen.has(part.apply(each))).toList();
    }

    private static <T> List<T> numbered(List<T> all, Function<Integer, Part> part, Selection chosen) {
        return IntStream.range(0, all.size())
                .filter(i -> chosen.has(part.apply(i)))
                .mapToObj(all::get)
                .toList();
    }

    private static boolean feedsOnly(Room room, Gang gang, List<Rack> racks) {
        List<Rack> fed = room.seats().stream()
                .filter(seat -> seat.outlet().tap().orElse(null) instanceof Outlet.OnGang on
                        && on.gang().equals(gang.id()))
                .map(seat -> seat.rack())
                .distinct()
                .toList();
        return !fed.isEmpty() && racks.containsAll(fed);
    }

    boolean isEmpty() {
        return count() == 0;
    }

    /** Neither rack nor pipe: nothing shows where it would be in the way. */
    boolean isLoose() {
        return racks.isEmpty() && runs.isEmpty();
    }

    private int count() {
        return racks.size() + runs.size() + gangs.size() + blowers.size() + doors.size() + walls.size();
    }

    /** "rack B", "2 pipes", "5 parts"; gangs that come with their rack are not counted. */
    String words() {
        int withoutGangs = count() - gangs.size();
        int all = withoutGangs == 0 ? gangs.size() : withoutGangs;
        if (racks.size() == all) {
            return Words.racks(racks);
        }
        if (runs.size() == all) {
            return PartWords.runs(runs);
        }
        return blowers.size() == all
                ? Words.count(all, "blower")
                : doors.size() == all
                        ? Words.count(all, "door")
                        : walls.size() == all
                                ? Words.count(all, "inner wall")
                                : withoutGangs == 0 ? Words.count(all, "gang") : all + " parts";
    }

    /** So far from where it was copied; doors go to the nearest wall. */
    Room pasted(Room room, double dxM, double dyM) {
        Copier copier = new Copier(room);
        List<Gang> allGangs =
                with(room.gangs(), gangs, gang -> copier.gang(gang).at(Moves.moved(gang.place(), dxM, dyM)));
        Room step = room.withGangs(allGangs)
                .withRacks(with(room.racks(), racks, rack -> Moves.moved(copier.rack(rack), dxM, dyM)))
                .withRuns(with(room.runs(), runs, run -> moved(copier.run(run), dxM, dyM)))
                .withBlowers(with(room.blowers(), blowers, blower -> moved(copier.blower(blower), dxM, dyM)));
        return doors.isEmpty() && walls.isEmpty() ? step : step.withShell(pasted(step.shell(), dxM, dyM));
    }

    private static <T> List<T> with(List<T> there, List<T> copied, Function<T, T> copy) {
        List<T> all = new ArrayList<>(there);
        copied.forEach(each -> all.add(copy.apply(each)));
        return all;
    }

    private Shell pasted(Shell shell, double dxM, double dyM) {
        return shell.withDoors(with(shell.doors(), doors, door -> beside(shell, door, dxM, dyM)))
                .withWalls(with(shell.walls(), walls, wall -> WallMoves.moved(wall, dxM, dyM)));
    }

    private static Shell.Door beside(Shell shell, Shell.Door door, double dxM, double dyM) {
        Box gap = WallMoves.gap(door, shell).moved(dxM, dyM);
        return WallMoves.nearest(shell, gap.midXM(), gap.midYM(), door.widthM());
    }

    private static Run moved(Run run, double dxM, double dyM) {
        return run.through(
                run.points().stream().map(point -> Moves.moved(point, dxM, dyM)).toList(), run.closed());
    }

    private static Blower moved(Blower blower, double dxM, double dyM) {
        return blower.sited(blower.siting().at(blower.siting().place().map(point -> Moves.moved(point, dxM, dyM))));
    }
}
