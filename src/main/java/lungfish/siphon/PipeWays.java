package lungfish.siphon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Spot;
import lungfish.piping.Stretch;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.jspecify.annotations.Nullable;

/** Finds what is open to water in the pipe of a room, with its heights. Shut valves in the pipe are gaps in it already. */
final class PipeWays {
    private final Room room;
    private final PipedRoom piped;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<Point> places = new ArrayList<>();

    private PipeWays(Room room, PipedRoom piped) {
        this.room = room;
        this.piped = piped;
        for (String node : piped.network().nodes()) {
            Spot spot = piped.spots().get(node);
            if (spot == null) {
                throw new IllegalStateException("node '" + node + "' has no place");
            }
            numbers.put(node, places.size());
            places.add(spot.place());
        }
    }

    static Waterways of(Room room, PipedRoom piped, List<Blower> blowers) {
        PipeWays own = new PipeWays(room, piped);
        return new Waterways(own.places, own.links(), own.outlets(), own.machines(blowers));
    }

    private int number(String node) {
        Integer number = numbers.get(node);
        if (number == null) {
            throw new IllegalStateException("no node '" + node + "'");
        }
        return number;
    }

    private List<Link> links() {
        Map<RunId, Corners> corners = new HashMap<>();
        room.runs().forEach(run -> corners.put(run.id(), new Corners(run)));
        Network network = piped.network();
        @Nullable Stretch[] stretches = new Stretch[network.pipes().size()];
        piped.stretches().forEach(stretch -> stretches[stretch.pipe()] = stretch);
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < stretches.length; i++) {
            Stretch stretch = stretches[i];
            Corners line = stretch == null ? null : corners.get(stretch.run());
            links.add(link(network.pipes().get(i), stretch, line));
        }
        return links;
    }

    private Link link(Pipe pipe, @Nullable Stretch stretch, @Nullable Corners line) {
        int from = number(pipe.from());
        int to = number(pipe.to());
        List<Point> points = new ArrayList<>();
        points.add(places.get(from));
        if (stretch != null && line != null) {
            points.addAll(line.between(stretch.fromM(), stretch.toM()));
        }
        points.add(places.get(to));
        return new Link(from, to, points);
    }

    private List<Waterways.Hung> outlets() {
        List<Waterways.Hung> hung = new ArrayList<>();
        for (int i = 0; i < piped.needs().size(); i++) {
            Drop drop = piped.network().drops().get(i);
            if (drop.valveK() < Drop.SHUT_K) {
                hung.add(new Waterways.Hung(piped.needs().get(i), number(drop.node())));
            }
        }
        return hung;
    }

    private List<Waterways.Standing> machines(List<Blower> blowers) {
        List<Waterways.Standing> standing = new ArrayList<>();
        for (Blower blower : blowers) {
            String node = piped.blowerNodes().get(blower.id());
            if (node != null) {
                blower.siting()
                        .place()
                        .ifPresent(place -> standing.add(new Waterways.Standing(blower, place, number(node))));
            }
        }
        return standing;
    }

    /** The corners of a run, and how far along it each lies. */
    private static final class Corners {
        /** Places along a run are kept to the millimetre. */
        private static final double END_M = 1e-3;

        private final List<Point> points;
        private final double[] alongM;
        private final boolean isClosed;

        Corners(Run run) {
            points = run.corners();
            isClosed = run.closed();
            alongM = new double[points.size()];
            for (int i = 1; i < alongM.length; i++) {
                alongM[i] = alongM[i - 1] + points.get(i - 1).distanceM(points.get(i));
            }
        }

        /** Those inside a stretch, which may pass the start of a closed run. */
        List<Point> between(double fromM, double toM) {
            List<Point> inside = new ArrayList<>();
            double lengthM = alongM[alongM.length - 1];
            int rounds = isClosed && toM > lengthM - END_M ? 2 : 1;
            for (int round = 0; round < rounds; round++) {
                for (int i = round; i < alongM.length; i++) {
                    double at = alongM[i] + round * lengthM;
                    if (at > fromM + END_M && at < toM - END_M) {
                        inside.add(points.get(i));
                    }
                }
            }
            return inside;
        }
    }
}
