package lungfish.desktop;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.swing.JTextField;

/**
 * A field that comes up beside the hand when a number is typed while something is drawn: Enter makes it that long, Escape
 * goes on without. What cannot be understood stays to be mended.
 */
final class TypedLength extends JTextField {
    private static final int COLUMNS = 9;

    private final transient Canvas canvas;

    private TypedLength(Canvas canvas) {
        super(COLUMNS);
        this.canvas = canvas;
        setName("typed length");
        getAccessibleContext().setAccessibleName("Length of what is drawn");
        putClientProperty("JTextField.selectAllOnFocusPolicy", "never"); // the first figure is typed already
        setVisible(false);
        Keys.bind(this, "ESCAPE", this::leave);
        addActionListener(event -> take());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                setVisible(false);
            }
        });
    }

    static void over(Canvas canvas) {
        TypedLength field = new TypedLength(canvas);
        canvas.add(field);
        canvas.addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                if (canvas.tool().takesLength() && isOfNumber(event.getKeyChar())) {
                    event.consume();
                    field.begin(event.getKeyChar());
                }
            }
        });
    }

    private static boolean isOfNumber(char typed) {
        return Character.isDigit(typed) || typed == '.' || typed == ',';
    }

    private void begin(char first) {
        setText(String.valueOf(first));
        told("");
        setSize(getPreferredSize());
        Point2D hand = canvas.tool()
                .next()
                .map(at -> canvas.viewport().px(at.getX(), at.getY()))
                .orElse(new Point2D.Double(canvas.getWidth() / 2.0, canvas.getHeight() / 2.0));
        int gap = canvas.view().px(12);
        setLocation((int) Math.max(0, Math.min(hand.getX() + gap, canvas.getWidth() - getWidth() - gap)), (int)
                Math.max(0, Math.min(hand.getY() - gap - getHeight(), canvas.getHeight() - getHeight() - gap)));
        setVisible(true);
        requestFocusInWindow();
    }

    private void take() {
        canvas.view()
                .quantities()
                .parse(getText().strip(), canvas.tool().typed())
                .match(
                        m -> {
                            leave();
                            canvas.tool().length(m);
                            canvas.follow();
                            return true;
                        },
                        problem -> told(problem.found() + ". Expected " + problem.expected() + "."));
    }

    private boolean told(String trouble) {
        putClientProperty("JComponent.outline", trouble.isEmpty() ? null : "error");
        getAccessibleContext().setAccessibleDescription(trouble);
        canvas.view().say(trouble.isEmpty() ? Optional.empty() : Optional.of(trouble));
        return false;
    }

    private void leave() {
        setVisible(false);
        canvas.requestFocusInWindow();
        canvas.repaint();
    }
}
