package lungfish.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lungfish.backup.BatteryCourse;
import lungfish.backup.Span;

/** The batteries of a room through an outage: full when it begins, charged again when the mains are back. */
final class Charge {
    private final Function<List<Span>, Optional<BatteryCourse>> course;
    private final List<Span> spans = new ArrayList<>();
    private double goneS;

    /**
     * Full batteries.
     *
     * @param course what becomes of them through spans; empty where there are none
     */
    Charge(Function<List<Span>, Optional<BatteryCourse>> course) {
        this.course = course;
    }

    /** Share of what may be drawn that is left; 0 where there are none. */
    double share() {
        return course.apply(spans).map(each -> each.shareAt(goneS)).orElse(0.0);
    }

    /** For how long they carry a power from now on, s, no longer than asked for. */
    double carriesS(double watts, double atMostS) {
        List<Span> further = new ArrayList<>(spans);
        further.add(Span.carrying(atMostS, watts));
        return course.apply(further)
                .map(each -> each.emptyS().orElse(goneS + atMostS) - goneS)
                .orElse(0.0);
    }

    void carry(double watts, double seconds) {
        go(Span.carrying(seconds, watts));
    }

    /** Nothing is drawn and nothing comes. */
    void rest(double seconds) {
        go(Span.resting(seconds));
    }

    void charge(double seconds) {
        go(Span.charging(seconds));
    }

    private void go(Span span) {
        spans.add(span);
        goneS += span.forS();
    }
}
