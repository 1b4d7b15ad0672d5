package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.plaf.basic.BasicGraphicsUtils;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** One line of text in a role of the type and of the palette. It follows every change of either. */
final class Line extends JLabel {
    private static final String PART = " · ";

    private final transient View view;
    private boolean dropsParts;
    private final transient Function<Type, Font> font;
    private transient Function<Palette, Color> ink;

    Line(View view, Function<Type, Font> font, Function<Palette, Color> ink) {
        this.view = view;
        this.font = font;
        this.ink = ink;
        view.follow(this, this::dress);
    }

    static Line title(View view, String text) {
        Line line = new Line(view, Type::label, Palette::softInk);
        line.setText(text);
        return line;
    }

    /** A field with its title over it, by which it is also known to a screen reader. */
    static JPanel over(View view, String title, JComponent field) {
        JPanel both = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gap 0 " + view.px(2), "[grow, fill]"));
        both.setOpaque(false);
        Line label = title(view, title);
        label.setLabelFor(field);
        both.add(label, "wmin 0");
        both.add(field, "wmin 0");
        return both;
    }

    static Line reason(View view) {
        return new Line(view, Type::body, Palette::softInk);
    }

    void inked(Function<Palette, Color> other) {
        ink = other;
        dress();
    }

    /** Where it is too long it drops whole parts at its end, instead of cutting a word: all of it is in its tooltip. */
    void dropParts() {
        dropsParts = true;
    }

    @Override
    protected void paintComponent(Graphics g) {
        Optional<String> shorter = dropsParts ? shorter() : Optional.empty();
        if (shorter.isEmpty()) {
            super.paintComponent(g);
            return;
        }
        FontMetrics metrics = getFontMetrics(getFont());
        int baseline = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
        g.setFont(getFont());
        g.setColor(getForeground());
        BasicGraphicsUtils.drawString(this, (Graphics2D) g, shorter.get(), 0, baseline);
    }

    /** As many of its parts as fit; empty where all do, or not even the first. */
    private Optional<String> shorter() {
        FontMetrics metrics = getFontMetrics(getFont());
        String whole = getText() == null ? "" : getText();
        if (metrics.stringWidth(whole) <= getWidth()) {
            return Optional.empty();
        }
        for (int end = whole.lastIndexOf(PART); end > 0; end = whole.lastIndexOf(PART, end - 1)) {
            if (metrics.stringWidth(whole.substring(0, end)) <= getWidth()) {
                return Optional.of(whole.substring(0, end));
            }
        }
        return Optional.empty();
    }

    private void dress() {
        Font now = font.apply(view.look().type());
        if (!now.equals(getFont())) {
            setFont(now);
        }
        setForeground(ink.apply(view.look().palette()));
    }
}
