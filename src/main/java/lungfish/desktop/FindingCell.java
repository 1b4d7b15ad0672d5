package lungfish.desktop;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.reason.Finding;
import lungfish.reason.Severity;
import net.miginfocom.swing.MigLayout;

/** One finding: the shape and the word of its severity, what is wrong and where, and how to mend it. */
final class FindingCell extends JPanel implements ListCellRenderer<Finding> {
    private static final int WORD = 112;

    private final transient View view;
    private final JLabel word = new JLabel();
    private final Paragraph says;
    private final Paragraph mend;
    private int widthPx = 400;
    private int laidFor;

    FindingCell(View view) {
        this.view = view;
        this.says = new Paragraph(view, Type::body, Palette::ink, () -> widthPx);
        this.mend = new Paragraph(view, Type::body, Palette::softInk, () -> widthPx);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Finding> list, Finding finding, int index, boolean isSelected, boolean hasFocus) {
        widthPx = Math.max(view.px(200), list.getWidth() - view.px(WORD + 40));
        lay();
        Palette palette = view.look().palette();
        dress(word, finding.severity(), palette);
        says.setFont(view.look().type().body());
        says.setForeground(view.desk().isCurrent() ? palette.ink() : palette.free());
        says.setText(view.sentences().says(finding));
        mend.setFont(view.look().type().body());
        mend.setForeground(palette.softInk());
        mend.setText(view.sentences().mend(finding));
        setBackground(isSelected ? palette.accentSoft() : palette.sheet());
        setBorder(BorderFactory.createLineBorder(hasFocus ? palette.air() : getBackground(), view.px(1)));
        getAccessibleContext().setAccessibleName(word.getText() + ": " + says.getText() + " " + mend.getText());
        return this;
    }

    /** Anew only where text has got another size: a list asks for every cell in every frame of a drag. */
    private void lay() {
        int wordPx = view.px(WORD);
        if (wordPx == laidFor) {
            invalidate(); // the width or a text may be others now
            return;
        }
        laidFor = wordPx;
        setLayout(new MigLayout(
                "insets " + view.px(6) + " " + view.px(12) + ", gap " + view.px(8) + " " + view.px(1),
                "[" + wordPx + "!][grow]"));
        removeAll();
        add(word, "top, growx");
        add(says, "growx, wrap");
        add(mend, "cell 1 1, growx");
    }

    private void dress(JLabel label, Severity severity, Palette palette) {
        label.setText(word(severity));
        label.setFont(view.look().type().label());
        label.setForeground(ink(severity, palette));
        label.setIcon(new Mark(severity, ink(severity, palette)));
        label.setIconTextGap(view.px(6));
    }

    static String word(Severity severity) {
        return switch (severity) {
            case BLOCKING -> "must mend";
            case WARNING -> "worth mending";
            case CAUTION -> "caution";
            case NOTE -> "good to know";
        };
    }

    static Color ink(Severity severity, Palette palette) {
        return switch (severity) {
            case BLOCKING, WARNING -> palette.accent();
            case CAUTION -> palette.ink();
            case NOTE -> palette.softInk();
        };
    }

    /** The shape of a severity: cross, triangle, bar with a dot, dot. */
    private final class Mark implements Icon {
        private final Severity severity;
        private final Color ink;

        Mark(Severity severity, Color ink) {
            this.severity = severity;
            this.ink = ink;
        }

        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.translate(x, y);
            double unit = getIconWidth() / 12.0;
            g.scale(unit, unit);
            g.setColor(ink);
            g.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            switch (severity) {
                case BLOCKING -> g.draw(path(2.5, 2.5, 9.5, 9.5, 2.5, 9.5, 9.5, 2.5));
                case WARNING -> g.fill(path(6, 1.5, 11.2, 10.5, 0.8, 10.5));
                case CAUTION -> {
                    g.draw(path(6, 2, 6, 6.6));
                    g.fill(new Ellipse2D.Double(4.9, 8.6, 2.2, 2.2));
                }
                case NOTE -> g.fill(new Ellipse2D.Double(3.5, 3.5, 5, 5));
            }
            g.dispose();
        }

        private static Path2D path(double... xy) {
            Path2D path = new Path2D.Double();
            boolean isCross = xy.length == 8;
            for (int i = 0; i < xy.length; i += 2) {
                if (i == 0 || (isCross && i == 4)) {
                    path.moveTo(xy[i], xy[i + 1]);
                } else {
                    path.lineTo(xy[i], xy[i + 1]);
                }
            }
            return path;
        }

        @Override
        public int getIconWidth() {
            return view.px(12);
        }

        @Override
        public int getIconHeight() {
            return view.px(12);
        }
    }
}
