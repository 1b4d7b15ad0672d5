package lungfish.desktop;

import java.awt.Color;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.logbook.Due;
import lungfish.logbook.Logbook;
import lungfish.report.LogbookWords;
import net.miginfocom.swing.MigLayout;

/** What is to be done again, the first first: its name, and how it stands in words and colour. */
final class LogDues extends Stack {
    private static final double WHAT_SHARE = 0.46;

    private final transient View view;
    private final transient IntSupplier widthPx;

    LogDues(View view, IntSupplier widthPx) {
        this.view = view;
        this.widthPx = widthPx;
        setName("log-dues");
        setLayout(new MigLayout("insets 0, fillx, wrap 1, gap 0 " + view.px(4), "[grow, fill]"));
    }

    /** Shows these from now on. */
    void show(Logbook logbook, LogbookWords words) {
        removeAll();
        if (!logbook.dues().isEmpty()) {
            add(Line.title(view, "To do again"), "growx, gaptop " + view.px(8));
        }
        logbook.dues().forEach(due -> row(due, due.state(logbook.today()), words));
        revalidate();
        repaint();
    }

    private void row(Due due, Due.State state, LogbookWords words) {
        int what = (int) (WHAT_SHARE * widthPx.getAsInt());
        int gap = view.px(8);
        JPanel row =
                new JPanel(new MigLayout("insets 0, fillx, gap " + gap + " 0", "[" + what + "!, fill][grow, fill]"));
        row.setOpaque(false);
        row.add(text(words.what(due), Palette::ink, what), "wmin 0, aligny top");
        Paragraph stands = text(words.stands(due), ink(state), widthPx.getAsInt() - what - gap);
        stands.setName("due: " + due.what());
        row.add(stands, "wmin 0, aligny top");
        add(row, "growx, wmin 0");
    }

    private static Function<Palette, Color> ink(Due.State state) {
        return switch (state) {
            case OVERDUE -> Palette::accent;
            case SOON -> Palette::ink;
            case LATER, UNKNOWN -> Palette::softInk;
        };
    }

    private Paragraph text(String words, Function<Palette, Color> ink, int px) {
        Paragraph paragraph = new Paragraph(view, Type::body, ink, () -> px);
        paragraph.setText(words);
        return paragraph;
    }
}
