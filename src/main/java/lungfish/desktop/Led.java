package lungfish.desktop;

import java.util.Optional;
import lungfish.drawing.WaterLaid;
import lungfish.reason.Finding;
import lungfish.siphon.SiphonFindings;

/** The finding that led to what is chosen, until something else is chosen: the drawing shows what it is about. */
final class Led {
    private final View view;
    private Optional<Finding> by = Optional.empty();

    Led(View view) {
        this.view = view;
        view.onMark(this::look);
    }

    /** This finding has just led to its place. */
    void by(Finding finding) {
        by = Optional.of(finding);
        view.refresh();
    }

    private void look() {
        boolean isElsewhere = by.isPresent() && !view.chosen().equals(by.map(Finding::where));
        if (isElsewhere) {
            by = Optional.empty();
            view.refresh();
        }
    }

    /** The way of water that it is about, as the newest plan has it. */
    Optional<WaterLaid> water() {
        return by.flatMap(finding -> view.plan().flatMap(plan -> SiphonFindings.way(finding, plan.siphons())
                .map(way -> new WaterLaid(way, plan.siphons().path(way)))));
    }
}
