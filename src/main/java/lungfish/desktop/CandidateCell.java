package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.report.Limits;
import lungfish.sizing.Candidate;
import net.miginfocom.swing.MigLayout;

/** One blower in the list: its verdict as a shape and a word, its curve in little, where it would run, and which limits it breaks. */
final class CandidateCell extends JPanel implements ListCellRenderer<Candidate> {
    private final transient View view;
    private final transient Predicate<Candidate> taken;
    private transient Optional<Candidate> shown = Optional.empty();
    private final CandidateCurve curve;
    private final Paragraph verdict;
    private final Paragraph name;
    private final Paragraph runs;
    private final Paragraph breaks;

    CandidateCell(View view, Predicate<Candidate> taken, IntSupplier widthPx) {
        super(new MigLayout(
                "insets " + view.px(6) + " " + view.px(8) + ", fillx, wrap 2, hidemode 3, gap " + view.px(8) + " "
                        + view.px(1),
                "[grow, fill][]"));
        this.view = view;
        this.taken = taken;
        this.curve = new CandidateCurve(view);
        IntSupplier besideCurve = () -> widthPx.getAsInt() - curve.getPreferredSize().width - view.px(8);
        this.verdict = new Paragraph(view, Type::drawingName, this::verdictInk, besideCurve);
        this.name = new Paragraph(view, Type::label, Palette::ink, besideCurve);
        this.runs = new Paragraph(view, Type::body, Palette::softInk, widthPx);
        this.breaks = new Paragraph(view, Type::body, Palette::accent, widthPx);
        add(verdict, "wmin 0");
        add(curve, "spany 2, aligny top");
        add(name, "wmin 0");
        add(runs, "spanx 2, growx");
        add(breaks, "spanx 2, growx");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Candidate> list, Candidate candidate, int index, boolean isSelected, boolean hasFocus) {
        Palette palette = view.look().palette();
        Type type = view.look().type();
        shown = Optional.of(candidate);
        curve.show(candidate);
        String says = verdict(candidate) + (taken.test(candidate) ? " · taken" : "");
        dress(verdict, says, type.drawingName(), verdictInk(palette));
        dress(name, candidate.kind().name(), type.label(), palette.ink());
        dress(runs, runs(candidate), type.body(), palette.softInk());
        dress(breaks, breaks(candidate), type.body(), palette.accent());
        breaks.setVisible(!candidate.fits());
        setBackground(isSelected ? palette.accentSoft() : palette.sheet());
        setBorder(BorderFactory.createLineBorder(hasFocus ? palette.air() : getBackground(), view.px(1)));
        getAccessibleContext()
                .setAccessibleName(
                        String.join(". ", name.getText(), verdict.getText(), runs.getText(), breaks.getText()));
        return this;
    }

    private Color verdictInk(Palette palette) {
        if (shown.isEmpty()) {
            return palette.softInk();
        }
        if (shown.get().fits()) {
            return palette.good();
        }
        return shown.get().serves() ? palette.softInk() : palette.accent();
    }

    private static void dress(Paragraph paragraph, String text, Font font, Color ink) {
        paragraph.setFont(font);
        paragraph.setForeground(ink);
        paragraph.setText(text);
    }

    static String verdict(Candidate candidate) {
        if (candidate.fits()) {
            return "● fits";
        }
        return candidate.serves() ? "○ serves, short of a wish" : "✕ does not serve";
    }

    private String runs(Candidate candidate) {
        Quantities shown = view.quantities();
        return "runs at " + shown.show(candidate.tired().gaugePa(), Dimension.PRESSURE) + ", gives "
                + shown.show(candidate.tired().freeM3PerS(), Dimension.AIR_FLOW) + " · "
                + shown.show(candidate.tired().watts(), Dimension.POWER) + " · "
                + level(candidate) + " · about "
                + shown.show(candidate.kind().price(), Dimension.MONEY);
    }

    private String level(Candidate candidate) {
        return candidate.dba().isPresent()
                ? view.quantities().show(candidate.dba().getAsDouble(), Dimension.SOUND_LEVEL)
                : "level unknown";
    }

    private String breaks(Candidate candidate) {
        Limits limits = new Limits(view.quantities());
        return candidate.broken().stream().map(limits::says).collect(Collectors.joining("; "));
    }
}
