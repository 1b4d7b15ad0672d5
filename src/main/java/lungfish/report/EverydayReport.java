package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Lack;
import lungfish.everyday.Moved;
import lungfish.everyday.Order;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What everyday disturbances do, for people: one on a page of its own, several in a line or two each. */
public final class EverydayReport {
    private final Plan plan;
    private final Quantities quantities;
    private final Names names;

    public EverydayReport(Plan plan, Quantities quantities) {
        this.plan = plan;
        this.quantities = quantities;
        this.names = new Names(plan.room());
    }

    /** What happens, what to do, the valves to turn, and every outlet, the most changed first. */
    public String text(Told told) {
        return told.answer().map(this::text).orElseGet(() -> overview(List.of(told)));
    }

    private String text(Disturbed answer) {
        EverydayWords words = new EverydayWords(answer, quantities, names);
        Page page = new Page()
                .heading(plan.room().name() + ": "
                        + EverydayWords.name(answer.what().kind()).toLowerCase(Locale.ROOT));
        page.paragraph(words.headline() + ". " + words.because());
        page.paragraph(words.pressure());
        new FindingsText(new Sentences(quantities, names), page).all(answer.findings());
        page.heading("What to do");
        new EverydayAdvice(answer, quantities, names).says().forEach(each -> page.item("·", each));
        answer.order().filter(order -> order.turns().size() > 1).ifPresent(order -> page.table(turns(answer, order)));
        outlets(page, words, heading(answer.what().kind()), answer.hit());
        outlets(page, words, answer.what().kind().isOfBlower() ? "The outlets" : "The others", answer.others());
        page.item("", "● served, ▲ starved, ■ greedy, ✕ closed.");
        return page.text();
    }

    private static String heading(Kind kind) {
        return switch (kind) {
            case HALF_DRAIN -> "In the drained tanks";
            case CLEANED -> "Just cleaned";
            case DUE -> "Due for cleaning";
            case HATCHERY_OFF, SHUT -> "Shut";
            case HATCHERY_ON -> "On";
            case AIRLINE_OFF -> "Off";
            case MAINS_LOW, FILTER_CLOGGED -> "";
        };
    }

    private Table turns(Disturbed answer, Order order) {
        EverydayAdvice advice = new EverydayAdvice(answer, quantities, names);
        Table table =
                new Table(words("Valve"), words("Tank"), words("From"), words("To"), numbers("Then"), numbers("Jar"));
        for (Order.Turn turn : order.turns()) {
            table.row(
                    turn.need().id().text(),
                    turn.need().seat().tank().name(),
                    advice.opening(turn.from()),
                    advice.opening(turn.to()),
                    flow(turn.freeM3PerS()),
                    quantities.show(jarS(turn), Dimension.DURATION));
        }
        return table;
    }

    /** Seconds in which the air that it is to get fills the keeper's jar: as with the target, in inverse proportion. */
    private double jarS(Order.Turn turn) {
        return plan.outlets().stream()
                .filter(outlet -> outlet.need().id().equals(turn.need().id()))
                .mapToDouble(
                        outlet -> outlet.jarS() * outlet.need().targetM3PerS().si() / turn.aimM3PerS())
                .findFirst()
                .orElse(Double.NaN);
    }

    private void outlets(Page page, EverydayWords words, String heading, List<Moved> those) {
        if (those.isEmpty()) {
            return;
        }
        Table table = new Table(
                words(""),
                words("Outlet"),
                words("Tank"),
                numbers("Target"),
                numbers("Before"),
                numbers("After"),
                numbers("Change"));
        those.forEach(moved -> table.row(
                OutletTable.mark(moved.after()),
                moved.need().id().text(),
                moved.need().seat().tank().name(),
                flow(moved.need().targetM3PerS().si()),
                flow(moved.before().freeM3PerS()),
                flow(moved.after().freeM3PerS()),
                words.change(moved)));
        page.heading(heading).table(table);
    }

    /** Each in a line or two, and what to do. */
    public String overview(List<Told> all) {
        Page page = new Page().heading(plan.room().name() + ": everyday disturbances");
        for (Told told : all) {
            String name = EverydayWords.name(told.kind());
            told.answer().ifPresentOrElse(answer -> line(page, name, answer), () -> page.heading(name)
                    .item("·", told.lack().map(EverydayWords::says).orElse("")));
        }
        return page.text();
    }

    private void line(Page page, String name, Disturbed answer) {
        EverydayWords words = new EverydayWords(answer, quantities, names);
        page.heading(name + ": " + words.headline().substring(0, 1).toLowerCase(Locale.ROOT)
                + words.headline().substring(1));
        page.item("·", words.because());
        new EverydayAdvice(answer, quantities, names).says().forEach(each -> page.item("→", each));
    }

    /** One of several, or why there is no answer. */
    public record Told(Kind kind, Optional<Disturbed> answer, Optional<Lack> lack) {}

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }
}
