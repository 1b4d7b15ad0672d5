package lungfish.edit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import org.jspecify.annotations.Nullable;

/**
 * A place on a pipe as it is seen from above, whatever its height.
 *
 * @param distanceM on the drawing
 * @param legFrom the leg that it lies on
 */
record SeenPipe(Outlet.OnRun seat, Point place, double distanceM, Point legFrom, Point legTo, String words) {
    /**
     * The nearest place on any pipe that does not move itself, near enough.
     *
     * @param cornersM a corner so near wins over what lies between
     */
    static Optional<SeenPipe> nearest(Room room, Selection moving, Point point, double toleranceM, double cornersM) {
        Point eye = flat(point);
        SeenPipe best = null;
        for (Run run : room.runs()) {
            if (Sound.isLine(run) && !moves(run, moving)) {
                best = nearer(best, nearest(run, eye, cornersM));
            }
        }
        return Optional.ofNullable(best).filter(pipe -> pipe.distanceM <= toleranceM);
    }

    /** The other end of an open pipe of which one end alone moves, and which has corners enough for a loop. */
    static Optional<Point> otherEnd(Room room, Selection moving) {
        return moving.parts().size() == 1 && moving.isOnly(Part.Kind.CORNER)
                ? moving.lead().flatMap(corner -> Find.run(room, corner.id())
                        .flatMap(run -> MainEdits.otherEnd(run, corner.number())))
                : Optional.empty();
    }

    private static boolean moves(Run run, Selection moving) {
        return moving.parts().stream()
                .anyMatch(part -> part.id().equals(run.id().text())
                        && (part.kind() == Part.Kind.RUN || part.kind() == Part.Kind.CORNER));
    }

    private static SeenPipe nearer(@Nullable SeenPipe one, SeenPipe other) {
        return one == null || other.distanceM < one.distanceM ? other : one;
    }

    private static SeenPipe nearest(Run run, Point eye, double cornersM) {
        List<Point> corners = run.corners();
        SeenPipe best = null;
        double before = 0;
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            best = nearer(best, onLeg(run, from, to, before, eye, cornersM));
            before += from.distanceM(to);
        }
        return Objects.requireNonNull(best);
    }

    private static SeenPipe onLeg(Run run, Point from, Point to, double beforeM, Point eye, double cornersM) {
        double share = eye.footShare(flat(from), flat(to));
        if (flat(from).distanceM(eye) <= cornersM) {
            share = 0;
        } else if (flat(to).distanceM(eye) <= cornersM) {
            share = 1;
        }
        Point place = Metres.clean(from.towards(to, share));
        double alongM = Metres.clean(beforeM + share * from.distanceM(to));
        return new SeenPipe(
                new Outlet.OnRun(run.id(), Math.min(alongM, run.lengthM())),
                place,
                flat(place).distanceM(eye),
                from,
                to,
                "the " + Words.midSentence(run.name()));
    }

    private static Point flat(Point point) {
        return new Point(point.xM(), point.yM(), 0);
    }

    /** The leg, as what explains it. */
    Guide guide() {
        return new Guide(Guide.Reason.PIPE, legFrom.xM(), legFrom.yM(), legTo.xM(), legTo.yM(), words);
    }
}
