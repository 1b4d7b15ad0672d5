package lungfish.desktop;

import java.util.Optional;
import lungfish.desk.Later;
import lungfish.drawing.Look;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.sure.Sampling;
import lungfish.sure.Sureness;

/** How sure headroom, running point and stages are, what the doubt comes from, and how far things may be off. */
final class SureSheet extends SideSheet {
    private final transient Later<Asked, Optional<Sureness>> later;
    private final Footing footing;
    private final Stack answer = new Stack();
    private final Stack others = new Stack();
    private final SpreadFields fields;
    private transient Optional<Told> told = Optional.empty();

    /** All that the answer depends on. */
    private record Asked(Room room) {}

    /** All that the sheet shows: it is made anew only when some of it changes. */
    private record Told(
            Optional<Sureness> sure,
            boolean isCurrent,
            boolean isWaiting,
            boolean keepsPumps,
            Look look,
            int widthPx) {}

    SureSheet(View view, Side side) {
        super(view, side, "How sure");
        this.later = asking(this::answered, this::tell);
        this.footing = new Footing(view, later);
        this.fields = new SpreadFields(view, this::contentPx);
        Stack stack = new Stack();
        stack.add(answer, "growx");
        stack.add(fields, "growx, gaptop " + view.px(8));
        stack.add(others, "growx");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        add(footing, "growx");
        view.follow(this, this::ask);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private Optional<Sureness> answered(Asked asked, Progress progress) {
        return Sampling.of(
                new Planner(view().desk().shared().catalogue()),
                asked.room(),
                Sampling.USUAL_SAMPLES,
                Sampling.USUAL_SEED,
                progress);
    }

    private void ask() {
        later.ask(new Asked(view().desk().room()));
        tell();
    }

    private void tell() {
        footing.tell(
                view().quantities().show(Sampling.USUAL_SAMPLES, Dimension.COUNT) + " rooms like it were looked at.");
        fields.setVisible(later.answer().isPresent() || !later.isRunning()); // the first answer would push them away
        boolean keepsPumps = view().plan().map(Plan::keepPumps).orElse(false);
        Optional<Sureness> sure = later.answer().flatMap(found -> found);
        Told now = new Told(
                sure, later.isCurrent(), sure.isEmpty() && later.isRunning(), keepsPumps, view().look(), contentPx());
        if (!told.equals(Optional.of(now))) {
            told = Optional.of(now);
            show(now);
        }
    }

    private void show(Told now) {
        answer.removeAll();
        others.removeAll();
        SureAnswer parts = new SureAnswer(view(), answer, this::contentPx, now.isCurrent());
        if (now.sure().isPresent()) {
            parts.tell(now.sure().get(), now.keepsPumps());
            new SureAnswer(view(), others, this::contentPx, now.isCurrent())
                    .others(now.sure().get());
        } else if (now.isCurrent()) {
            parts.unsolved();
        } else if (now.isWaiting()) {
            parts.waiting();
        }
        revalidate();
        repaint();
    }
}
