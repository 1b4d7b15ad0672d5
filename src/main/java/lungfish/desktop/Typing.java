package lungfish.desktop;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Does the same whatever of a text is changed. */
final class Typing implements DocumentListener {
    private final Runnable does;

    private Typing(Runnable does) {
        this.does = does;
    }

    static void on(JTextComponent field, Runnable does) {
        field.getDocument().addDocumentListener(new Typing(does));
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        does.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        does.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        does.run();
    }
}
