package lungfish.desktop;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;

/** Text that wraps at a width, in a role of the type and of the palette. It can be read and copied, not changed. */
final class Paragraph extends JTextArea {
    private final transient View view;
    private final transient Function<Type, Font> font;
    private final transient Function<Palette, Color> ink;
    private final transient IntSupplier widthPx;

    Paragraph(View view, Function<Type, Font> font, Function<Palette, Color> ink, IntSupplier widthPx) {
        this.view = view;
        this.font = font;
        this.ink = ink;
        this.widthPx = widthPx;
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setBorder(BorderFactory.createEmptyBorder());
        ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE); // a text that is set scrolls nothing
        view.follow(this, this::dress);
    }

    private void dress() {
        setFont(font.apply(view.look().type()));
        setForeground(ink.apply(view.look().palette()));
        setMargin(new java.awt.Insets(0, 0, 0, 0));
        revalidate();
    }

    /** As high as the text is when it is wrapped at the width. */
    @Override
    public Dimension getPreferredSize() {
        int width = widthPx.getAsInt();
        setSize(width, Short.MAX_VALUE);
        return new Dimension(width, super.getPreferredSize().height);
    }
}
