package lungfish.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Place;
import lungfish.growth.Span;
import lungfish.room.Point;
import lungfish.room.Run;

/** How many more outlets fit along one run, from its beginning to its end, in pieces where a shut valve parts it. */
final class GrowthProfile {
    private static final double SAME_M = 0.002;

    private final HeadroomMap map;
    private final Run run;

    /** A point of the run, and how many fit there; between two of them it is taken as straight. */
    record Mark(double alongM, Point at, double outlets) {}

    GrowthProfile(HeadroomMap map, Run run) {
        this.map = map;
        this.run = run;
    }

    /** The pieces, each with its corners among its marks. */
    List<List<Mark>> pieces() {
        List<List<Mark>> pieces = new ArrayList<>();
        List<Mark> piece = new ArrayList<>();
        double end = Double.NaN;
        for (Span span : spans()) {
            if (!(Math.abs(span.fromM() - end) <= SAME_M)) { // so too at the first, where there is no end yet
                piece = new ArrayList<>();
                pieces.add(piece);
            }
            add(piece, span);
            end = span.toM();
        }
        pieces.removeIf(each -> each.size() < 2);
        return pieces;
    }

    private List<Span> spans() {
        return map.spans().stream()
                .filter(span -> span.run().equals(run.id()))
                .sorted(Comparator.comparingDouble(Span::fromM))
                .toList();
    }

    private void add(List<Mark> piece, Span span) {
        Place from = map.places().get(span.from());
        Place to = map.places().get(span.to());
        if (piece.isEmpty()) {
            piece.add(mark(span.fromM(), from.outlets()));
        }
        for (double corner : corners()) {
            if (corner > span.fromM() + SAME_M && corner < span.toM() - SAME_M) {
                double share = (corner - span.fromM()) / (span.toM() - span.fromM());
                piece.add(mark(corner, from.outlets() + share * (to.outlets() - from.outlets())));
            }
        }
        piece.add(mark(span.toM(), to.outlets()));
    }

    private Mark mark(double alongM, double outlets) {
        double length = run.lengthM();
        double at = run.closed() && alongM > length ? alongM - length : alongM;
        return new Mark(alongM, run.at(at), outlets);
    }

    /** Where the corners lie; those of a closed run once more on the second way round. */
    private List<Double> corners() {
        List<Double> at = new ArrayList<>();
        List<Point> corners = run.corners();
        double along = 0;
        for (int i = 1; i < corners.size(); i++) {
            along += corners.get(i - 1).distanceM(corners.get(i));
            at.add(along);
        }
        if (run.closed()) {
            at.addAll(at.stream().map(each -> each + run.lengthM()).toList());
        }
        return at;
    }
}
