package lungfish.desktop;

import java.awt.AlphaComposite;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import lungfish.choice.BenchRow;
import lungfish.drawing.BenchLine;
import lungfish.drawing.BenchRowPicture;
import lungfish.drawing.Palette;
import lungfish.report.BenchWords;

/** Paints one blower of the bench, and says it. */
final class BenchCell extends Drawn implements ListCellRenderer<BenchRow> {
    private final transient View view;
    private final transient BenchList list;
    private final transient BooleanSupplier isCurrent;
    private transient Optional<BenchLine> line = Optional.empty();
    private boolean isChosen;
    private boolean isFocused;

    /**
     * For a list.
     *
     * @param isCurrent whether the bench is that of the room as it is now
     */
    BenchCell(View view, BenchList list, BooleanSupplier isCurrent) {
        this.view = view;
        this.isCurrent = isCurrent;
        this.list = list;
        getAccessibleContext().setAccessibleName("A blower");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends BenchRow> in, BenchRow row, int index, boolean isSelected, boolean hasFocus) {
        BenchLine shown = list.line(row);
        line = Optional.of(shown);
        isChosen = isSelected;
        isFocused = hasFocus;
        getAccessibleContext().setAccessibleName(says(row, shown));
        return this;
    }

    private static String says(BenchRow row, BenchLine line) {
        StringBuilder says = new StringBuilder(line.name())
                .append(": ")
                .append(BenchWords.verdict(row))
                .append(line.isTaken() ? ", taken" : "")
                .append(line.isMarked() ? ", marked for comparing" : "")
                .append(". ")
                .append(line.reason());
        for (int i = 0; i < line.figures().size(); i++) {
            says.append(". ")
                    .append(line.titles().get(i))
                    .append(' ')
                    .append(line.figures().get(i));
        }
        return says.toString();
    }

    private BenchRowPicture picture() {
        return list.picture();
    }

    @Override
    public Dimension getPreferredSize() {
        double high = line.map(shown -> picture().height(shown)).orElse(0.0);
        return new Dimension(1, (int) Math.ceil(high));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Palette palette = view.look().palette();
        g.setColor(isChosen ? palette.accentSoft() : palette.sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(palette.line());
        g.fillRect(0, getHeight() - 1, getWidth(), 1);
        if (isFocused) {
            g.setColor(palette.air());
            int thick = view.px(2);
            for (int i = 0; i < thick; i++) {
                g.drawRect(i, i, getWidth() - 1 - 2 * i, getHeight() - 2 - 2 * i);
            }
        }
        if (!isCurrent.getAsBoolean()) {
            g.setComposite(AlphaComposite.SrcOver.derive(Painted.SOFT));
        }
        line.ifPresent(shown -> list.bench().ifPresent(bench -> picture().paint(shown, bench.needed(), g)));
        g.dispose();
    }
}
