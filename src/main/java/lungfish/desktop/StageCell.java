package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import lungfish.drawing.Palette;
import lungfish.drawing.StageMark;
import lungfish.drawing.Type;
import lungfish.growth.RackFit;
import lungfish.growth.Stage;
import lungfish.report.GrowthWords;
import lungfish.report.Sentences;
import lungfish.room.RackId;
import net.miginfocom.swing.MigLayout;

/** One stage on the time line of a growing room: its mark, its racks, how it stands, and what would mend it. */
final class StageCell extends JPanel implements ListCellRenderer<Stage> {
    private static final int RAIL = 34;
    private static final int MARK = 7;
    private static final int TOP = 10;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient BooleanSupplier isCurrent;
    private final transient Function<RackId, Optional<RackFit>> fits;
    private transient Optional<Stage> shown = Optional.empty();
    private boolean isFirst;
    private boolean isLast;

    /**
     * For a list.
     *
     * @param widthPx of its cells
     * @param isCurrent whether the stages are those of the room as it is now
     * @param fits whether a planned rack fits now, alone, where that is known already
     */
    StageCell(View view, IntSupplier widthPx, BooleanSupplier isCurrent, Function<RackId, Optional<RackFit>> fits) {
        this.view = view;
        this.widthPx = widthPx;
        this.isCurrent = isCurrent;
        this.fits = fits;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Stage> list, Stage stage, int index, boolean isSelected, boolean hasFocus) {
        shown = Optional.of(stage);
        isFirst = index == 0;
        isLast = index == list.getModel().getSize() - 1;
        removeAll();
        setLayout(new MigLayout(
                "insets " + view.px(TOP - 4) + " " + view.px(RAIL) + " " + view.px(6) + " " + view.px(8)
                        + ", wrap 1, gap 0 " + view.px(2),
                "[grow, fill]"));
        List<String> spoken = fill(stage);
        Palette palette = view.look().palette();
        setBackground(isSelected ? palette.accentSoft() : palette.sheet());
        setBorder(BorderFactory.createLineBorder(hasFocus ? palette.air() : getBackground(), view.px(1)));
        getAccessibleContext().setAccessibleName(String.join(". ", spoken));
        return this;
    }

    private List<String> fill(Stage stage) {
        GrowthWords words = new GrowthWords(view.quantities(), view.names());
        List<String> spoken = new ArrayList<>();
        spoken.add(add(
                GrowthWords.when(stage.when()) + " · " + Sentences.counted(stage.outlets(), "outlet"),
                Type::label,
                Palette::ink));
        spoken.add(add(
                Sentences.capital(GrowthWords.state(stage)) + ": " + words.verdict(stage) + ".",
                Type::body,
                stage.state() == Stage.State.BREAKS ? Palette::accent : Palette::ink));
        for (RackId rack : stage.when().added()) {
            spoken.add(add(rack(rack, words), Type::body, Palette::softInk));
        }
        stage.standing().repair().ifPresent(repair -> spoken.add(add(words.mend(repair), Type::body, Palette::ink)));
        if (!stage.findings().isEmpty()) {
            String also = stage.findings().stream()
                    .limit(2)
                    .map(view.sentences()::says)
                    .collect(Collectors.joining(" "));
            spoken.add(add(also, Type::body, Palette::softInk));
        }
        return spoken;
    }

    private String rack(RackId rack, GrowthWords words) {
        String name = view.names().of(rack.part());
        return fits.apply(rack)
                .map(fit -> name + ", " + Sentences.counted(fit.outlets(), "outlet") + ": " + words.rack(fit) + ".")
                .orElse(name);
    }

    private String add(String text, Function<Type, Font> type, Function<Palette, Color> ink) {
        Function<Palette, Color> inked = isCurrent.getAsBoolean() ? ink : Palette::free;
        int wide = widthPx.getAsInt() - view.px(RAIL + 12);
        Paragraph paragraph = new Paragraph(view, type, inked, () -> wide);
        paragraph.setText(text);
        add(paragraph, "w " + wide + "!"); // no wider than it was measured, else it would leave a line empty
        return text;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double x = view.px(RAIL) / 2.0;
        double y = view.px(TOP + 5);
        if (!isFirst) {
            StageMark.line(x, 0, y, view.look(), g);
        }
        if (!isLast) {
            StageMark.line(x, y, getHeight(), view.look(), g);
        }
        shown.ifPresent(stage -> StageMark.paint(stage.state(), x, y, view.px(MARK), view.look(), g));
        g.dispose();
    }
}
