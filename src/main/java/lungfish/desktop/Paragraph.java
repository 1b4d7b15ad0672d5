package lungfish.desktop;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Insets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.TransferHandler;
import javax.swing.text.DefaultCaret;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import org.jspecify.annotations.Nullable;

/** Text that wraps at a width, in a role of the type and of the palette. It can be read and copied, not changed. */
final class Paragraph extends JTextArea {
    private static final int KEPT = 500;
    /** A list asks one paragraph for the height of each of its texts in turn, in every frame of a drag. */
    private static final Map<Measured, Integer> HEIGHTS = Collections.synchronizedMap(new Newest());

    private final transient View view;
    private final transient Function<Type, Font> font;
    private transient Function<Palette, Color> ink;
    private final transient IntSupplier widthPx;

    Paragraph(View view, Function<Type, Font> font, Function<Palette, Color> ink, IntSupplier widthPx) {
        this.view = view;
        this.font = font;
        this.ink = ink;
        this.widthPx = widthPx;
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        wrapped(this);
        ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE); // a text that is set scrolls nothing
        view.follow(this, this::dress);
    }

    /** From now on in another ink. A colour that is merely set would last until the view changes next. */
    void inked(Function<Palette, Color> other) {
        ink = other;
        dress();
    }

    private void dress() {
        Font now = font.apply(view.look().type());
        if (!now.equals(getFont())) {
            setFont(now); // an equal one would have every text of a long sheet laid out anew
        }
        setForeground(ink.apply(view.look().palette()));
    }

    /** A file may be dropped on the text too: the window takes it, so this must not. */
    @Override
    public void setTransferHandler(@Nullable TransferHandler handler) {
        super.setTransferHandler(handler);
        setDropTarget(null);
    }

    /** As high as the text is when it is wrapped at the width. */
    @Override
    public Dimension getPreferredSize() {
        int width = widthPx.getAsInt();
        return new Dimension(width, heightPx(new Measured(getText(), getFont(), width)));
    }

    /** Never lower than its text: that of a text area follows from how narrow it happens to be now. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    /** Measured on another text area, which is in no window: giving this one a size would lay out the window again. */
    private static int heightPx(Measured what) {
        return HEIGHTS.computeIfAbsent(what, Paragraph::measuredPx);
    }

    private static int measuredPx(Measured what) {
        JTextArea ruler = wrapped(new JTextArea(what.text()));
        ruler.setFont(what.font());
        ruler.setSize(what.widthPx(), Short.MAX_VALUE);
        return ruler.getPreferredSize().height;
    }

    private static <T extends JTextArea> T wrapped(T area) {
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setBorder(BorderFactory.createEmptyBorder());
        area.setMargin(new Insets(0, 0, 0, 0));
        return area;
    }

    private record Measured(String text, Font font, int widthPx) {}

    /** Forgets what was asked for longest ago. */
    private static final class Newest extends LinkedHashMap<Measured, Integer> {
        private static final long serialVersionUID = 1;

        Newest() {
            super(KEPT, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Measured, Integer> eldest) {
            return size() > KEPT;
        }
    }
}
