package lungfish.desktop;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.catalogue.Catalogue;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Shown;
import lungfish.drawing.Type;
import lungfish.edit.Selection;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Everyday;
import lungfish.everyday.Lack;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.report.EverydayAdvice;
import lungfish.report.EverydayWords;
import lungfish.room.OutletId;

/**
 * What an everyday disturbance does to every outlet while no valve is touched, and what to do about it. One click asks of
 * another. It follows the room, the trial that is shown, and what is chosen on the drawing; nothing chosen means the whole room.
 */
final class EverydaySheet extends SideSheet {
    private final Side side;
    private final transient Later<Asked, Optional<Disturbed>> later;
    private final Stack stack = new Stack();
    private final DisturbanceChips chips;
    private final Paragraph whom;
    private final Paragraph verdict;
    private final Paragraph because;
    private final Paragraph findings;
    private final Paragraph advice;
    private final Paragraph blower;
    private final Paragraph trial;
    private final MovedList outlets;
    private final ChangesPanel picture;
    private transient Set<OutletId> meant = Set.of();
    private transient Optional<Selection> seen = Optional.empty();
    private boolean isLeading;

    /** All that the answer depends on. */
    private record Asked(Plan plan, Shown shown, Kind kind, Set<OutletId> meant) {}

    EverydaySheet(View view, Side side) {
        super(view, side, "Everyday disturbances");
        this.side = side;
        chips = new DisturbanceChips(view, this::contentPx, this::tell);
        stack.add(chips, "growx");
        whom = paragraph(Type::label, "everyday-whom");
        verdict = paragraph(Type::headline, "everyday-verdict");
        because = paragraph(Type::body, "everyday-because");
        findings = paragraph(Type::body, "everyday-findings");
        picture = new ChangesPanel(view, this::contentPx, this::isCurrent);
        stack.add(picture.drawn(), "growx");
        advice = paragraph(Type::body, "everyday-advice");
        blower = paragraph(Type::body, "everyday-blower");
        trial = paragraph(Type::label, "everyday-trial");
        outlets = new MovedList(view, this::contentPx, this::isCurrent, this::lead);
        stack.add(outlets.list(), "growx, wmin 0");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        Catalogue catalogue = view.desk().shared().catalogue();
        later = asking((asked, progress) -> answer(asked, catalogue), this::said);
        view.follow(this, this::tell);
    }

    /** Asks of another disturbance. */
    void ask(Kind kind) {
        chips.choose(kind);
        tell();
    }

    /** Large text gets the room of a table. */
    @Override
    int widthPx() {
        return view().isTight() ? view().wideSidePx() : view().sidePx();
    }

    private Paragraph paragraph(Function<Type, Font> type, String name) {
        Paragraph paragraph = new Paragraph(view(), type, Palette::ink, this::contentPx);
        paragraph.setName(name);
        stack.add(paragraph, "growx");
        return paragraph;
    }

    /** What the list leads to is shown, and asked of no more than before. */
    private void lead(PartId part) {
        isLeading = true;
        side.lead(part);
        isLeading = false;
    }

    private static Optional<Disturbed> answer(Asked asked, Catalogue catalogue) {
        return asked.plan()
                .trials()
                .flatMap(trials ->
                        Everyday.of(asked.plan(), asked.shown().of(trials), asked.kind(), asked.meant(), catalogue));
    }

    /** The question holds a plan, which may itself be that of an older room. */
    private boolean isCurrent() {
        return later.isCurrent() && view().desk().isCurrent();
    }

    private void tell() {
        look();
        view().plan().ifPresent(plan -> later.ask(new Asked(plan, view().shown(), chips.chosen(), meant)));
        said();
    }

    @Override
    void marked() {
        if (!Optional.of(view().selection()).equals(seen)) {
            tell();
        }
    }

    /** Takes what is chosen; a choice that this sheet has made itself changes nothing. */
    private void look() {
        Optional<Selection> now = Optional.of(view().selection());
        if (!now.equals(seen) && !isLeading) {
            meant = Set.copyOf(view().chosenOutlets());
        }
        seen = now;
    }

    /** Says the newest answer; while it is not that of the room as it is now, softly. */
    private void said() {
        Optional<Disturbed> answer = later.answer().flatMap(found -> found);
        trial.setText(view().shown().words() + "; the most changed first");
        answer.ifPresentOrElse(this::say, this::sayNothing);
        outlets.show(answer);
        picture.show(answer, view().plan());
        trial.setVisible(answer.isPresent());
        boolean isOld = !isCurrent();
        for (Paragraph each : List.of(whom, verdict, because, blower, advice)) {
            each.inked(isOld ? Palette::free : Palette::ink);
        }
        findings.inked(isOld ? Palette::free : Palette::accent);
        revalidate();
        repaint();
    }

    private void say(Disturbed answer) {
        EverydayWords words = new EverydayWords(answer, view().quantities(), view().names());
        whom.setText(whom(answer));
        verdict.setText(words.headline());
        because.setText(words.because());
        blower.setText(words.pressure());
        advice.setText(new EverydayAdvice(answer, view().quantities(), view().names())
                .says().stream().map(each -> "→ " + each).collect(Collectors.joining("\n")));
        findings.setText(answer.findings().stream()
                .map(finding -> view().sentences().says(finding) + " "
                        + view().sentences().mend(finding))
                .collect(Collectors.joining("\n")));
        findings.setVisible(!answer.findings().isEmpty());
    }

    private String whom(Disturbed answer) {
        String name = EverydayWords.name(answer.what().kind());
        return answer.what().kind().isOfBlower() || answer.what().kind().isOfHatchery()
                ? name
                : name + ", "
                        + (meant.isEmpty() ? "the whole room: choose a rack or a tank to ask of it" : "what is chosen");
    }

    private void sayNothing() {
        Optional<Lack> lack = view().plan().flatMap(plan -> Lack.of(plan, chips.chosen(), meant));
        boolean isWorking = later.isRunning() || lack.isEmpty();
        whom.setText(EverydayWords.name(chips.chosen()));
        verdict.setText(isWorking ? "…" : "Not to be told");
        because.setText(isWorking ? "being worked out" : EverydayWords.says(lack.orElseThrow()));
        blower.setText("");
        advice.setText("");
        findings.setVisible(false);
    }

    @Override
    void takeFocus() {
        chips.takeFocus();
    }
}
