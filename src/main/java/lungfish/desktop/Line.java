package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.function.Function;
import javax.swing.JLabel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;

/** One line of text in a role of the type and of the palette. It follows every change of either. */
final class Line extends JLabel {
    private final transient View view;
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

    static Line reason(View view) {
        return new Line(view, Type::body, Palette::softInk);
    }

    void inked(Function<Palette, Color> other) {
        ink = other;
        dress();
    }

    private void dress() {
        setFont(font.apply(view.look().type()));
        setForeground(ink.apply(view.look().palette()));
    }
}
