package lungfish.drawing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.drawing.SceneParts.FittingPart;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/** Finds where the fittings of all runs sit, and which way their pipe goes there. */
final class FittingMaker {
    private static final double A_LITTLE_M = 0.005;

    private FittingMaker() {}

    static List<FittingPart> of(Room room) {
        return room.runs().stream()
                .filter(run -> run.points().size() > 1)
                .flatMap(FittingMaker::of)
                .toList();
    }

    private static Stream<FittingPart> of(Run run) {
        return IntStream.range(0, run.fittings().size())
                .mapToObj(i -> part(run, i, run.fittings().get(i).atM()));
    }

    private static FittingPart part(Run run, int number, double atM) {
        Point at = run.at(atM);
        Point before = run.at(Math.max(0, atM - A_LITTLE_M));
        Point after = run.at(atM + A_LITTLE_M);
        double dx = after.xM() - before.xM();
        double dy = after.yM() - before.yM();
        double length = Math.hypot(dx, dy);
        boolean rises = length < 1e-9; // seen from its end: drawn as if it went across
        return new FittingPart(run, number, at.xM(), at.yM(), rises ? 1 : dx / length, rises ? 0 : dy / length);
    }
}
