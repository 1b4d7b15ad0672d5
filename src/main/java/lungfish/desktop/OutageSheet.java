package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lungfish.desk.Later;
import lungfish.drawing.Look;
import lungfish.drawing.OutagePlayed;
import lungfish.drawing.OutageShown;
import lungfish.drawing.OxygenLaid;
import lungfish.drawing.Palette;
import lungfish.drawing.Shown;
import lungfish.drawing.Type;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.outage.TankDrill;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.report.OutageBrief;
import lungfish.report.OutageWords;

/**
 * What happens when the air stops: which tank is in trouble first, what runs till when, and every tank's oxygen over time, also
 * on the drawing while the sheet is open.
 */
final class OutageSheet extends SideSheet {
    private final transient Later<Asked, Optional<Answer>> later;
    private final Footing footing;
    private final Stack stack = new Stack();
    private final FailingFields fields;
    private final Paragraph headline;
    private final Paragraph because;
    private final OutagePlayer player;
    private final OutageLine line;
    private final Paragraph now;
    private final Paragraph near;
    private final Line order;
    private final TroubledList tanks;
    private final RescueBlocks rescue;
    private final OutageBlocks blocks;
    private transient Optional<Told> told = Optional.empty();
    private transient Optional<TankDrill> pointed = Optional.empty();
    private boolean isLeft;

    /** All that the answer depends on. */
    private record Asked(Plan plan, Shown shown, Scene scene) {}

    /** All that can fail, and what happens. */
    private record Answer(List<Failing> possible, OutagePlayed played) {}

    /** All that is shown but the time of the cursor. */
    private record Told(Optional<OutagePlayed> played, boolean isCurrent, boolean isWaiting, Look look, int widthPx) {}

    OutageSheet(View view, Side side) {
        super(view, side, "When the air stops");
        later = asking((asked, progress) -> answer(asked), this::tell);
        footing = new Footing(view, later);
        fields = new FailingFields(view, this::contentPx, this::ask);
        headline = paragraph("outage-headline", Type::headline, Palette::ink);
        because = paragraph("outage-because", Type::body, Palette::ink);
        stack.add(fields, "growx");
        player = new OutagePlayer(view, this::moved);
        stack.add(player, "growx");
        line = new OutageLine(
                view, this::contentPx, this::isCurrent, player::go, this::point, this::next, player::playOrPause);
        stack.add(line, "growx");
        now = paragraph("outage-now", Type::body, Palette::ink);
        near = paragraph("outage-near", Type::body, Palette::softInk);
        rescue = new RescueBlocks(
                view,
                this::contentPx,
                asking((plan, progress) -> RescueBlocks.answer(view(), plan, progress), this::tellRescue));
        stack.add(rescue, "growx, gaptop " + view.px(8));
        order = Line.title(view, "Tanks in the order of trouble");
        stack.add(order, "growx, wmin 0, gaptop " + view.px(4));
        tanks = new TroubledList(view, this::contentPx, this::isCurrent, side::lead);
        stack.add(tanks, "growx, wmin 0");
        blocks = new OutageBlocks(view, this::contentPx);
        stack.add(blocks, "growx, gaptop " + view.px(8));
        add(Side.scrolling(stack), "grow, push, hmin 0");
        add(footing, "growx");
        view.followMarks(this, this::moved);
        view.follow(this, this::ask);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private Paragraph paragraph(String name, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view(), type, ink, this::contentPx);
        paragraph.setName(name);
        stack.add(paragraph, "growx");
        return paragraph;
    }

    private Optional<Answer> answer(Asked asked) {
        var catalogue = view().desk().shared().catalogue();
        Optional<Drills> drills = asked.plan()
                .trials()
                .map(trials -> Drills.of(asked.plan(), catalogue, asked.shown().of(trials)))
                .orElseGet(() -> Drills.of(asked.plan(), catalogue));
        return drills.map(each -> new Answer(each.possible(), OutagePlayed.of(each.play(asked.scene()))));
    }

    /** The question holds a plan, which may itself be that of an older room. */
    private boolean isCurrent() {
        return later.isCurrent() && view().desk().isCurrent();
    }

    private Optional<OutagePlayed> played() {
        return later.answer().flatMap(each -> each).map(Answer::played);
    }

    private void ask() {
        view().plan().ifPresent(plan -> later.ask(new Asked(plan, view().shown(), fields.scene())));
        tellRescue();
        tell();
    }

    private void tellRescue() {
        rescue.tell();
        stack.revalidate();
    }

    private void tell() {
        footing.tell(OutageWords.ESTIMATES);
        later.answer().flatMap(each -> each).ifPresent(answer -> fields.offer(answer.possible()));
        fields.tell();
        Told then = new Told(
                played(), isCurrent(), later.answer().isEmpty() && later.isRunning(), view().look(), contentPx());
        if (!told.equals(Optional.of(then))) {
            told = Optional.of(then);
            show(then);
        }
        moved();
    }

    private void show(Told then) {
        then.played().ifPresentOrElse(this::say, () -> sayNothing(then.isWaiting()));
        boolean isThere = then.played().isPresent();
        for (java.awt.Component each : List.of(fields, player, line, now, near, order, tanks)) {
            each.setVisible(isThere);
        }
        for (Paragraph each : List.of(headline, because, now)) {
            each.inked(then.isCurrent() || !isThere ? Palette::ink : Palette::free);
        }
        blocks.tell(then.played());
        stack.revalidate();
        stack.repaint();
    }

    private void say(OutagePlayed played) {
        OutageBrief words = new OutageBrief(played.drill(), view().quantities());
        headline.setText(words.headline());
        because.setText(words.because());
        player.play(played.drill().scene().untilS());
        tanks.show(played, words);
    }

    private void sayNothing(boolean isWaiting) {
        headline.setText(isWaiting ? "…" : "Nothing can fail yet");
        because.setText(
                isWaiting
                        ? "being played through"
                        : "Nothing gives air in this room. Draw tanks with devices in them, and a blower with its pipe or the"
                                + " small pumps of today.");
    }

    /** Another time, or another tank is looked at: only what shows it is painted again. */
    private void moved() {
        if (isLeft) {
            return;
        }
        Optional<OutageShown> shown =
                played().map(each -> new OutageShown(each, player.atS(), pointed.or(() -> looked(each))));
        line.show(shown);
        shown.ifPresent(this::sayNow);
        view().breathe(shown.map(each -> new OxygenLaid(each.played(), player.how(), each.atS(), isCurrent())));
    }

    private void sayNow(OutageShown shown) {
        OutageBrief words = new OutageBrief(shown.played().drill(), view().quantities());
        String runs = words.runs(shown.atS()) + " " + player.counts(shown.played());
        now.setText(runs);
        near.setText(shown.tank()
                .map(tank -> OutageWords.called(tank) + ": " + words.tells(tank, shown.atS()) + ".")
                .orElse(""));
        line.say(runs + " " + near.getText());
    }

    private void point(Optional<TankDrill> tank) {
        if (!tank.equals(pointed)) {
            pointed = tank;
            moved();
        }
    }

    /** The tank before or after the one that is looked at, in the order of trouble. */
    private void next(int way) {
        played().ifPresent(played -> {
            List<TankDrill> order = played.inOrder();
            int at = pointed.or(() -> looked(played)).map(order::indexOf).orElse(-1) + way;
            if (at >= 0 && at < order.size()) {
                point(Optional.of(order.get(at)));
            }
        });
    }

    /** The tank that is chosen on the drawing, or whose outlet is; else the first in trouble. */
    private Optional<TankDrill> looked(OutagePlayed played) {
        return view().chosen().flatMap(part -> tankOf(played, part)).or(played::first);
    }

    private static Optional<TankDrill> tankOf(OutagePlayed played, PartId part) {
        return played.drill().tanks().stream()
                .filter(each -> each.tank().id().part().equals(part)
                        || each.tank().outlets().stream()
                                .anyMatch(outlet -> outlet.id().part().equals(part)))
                .findFirst();
    }

    @Override
    void left() {
        isLeft = true; // what goes over the drawing stays gone, whoever asks again
        player.pause();
        super.left();
        view().breathe(Optional.empty());
    }

    @Override
    void takeFocus() {
        fields.takeFocus();
    }
}
