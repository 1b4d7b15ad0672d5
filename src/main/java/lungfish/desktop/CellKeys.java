package lungfish.desktop;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** The keys of a field in a cell. */
final class CellKeys {
    private CellKeys() {}

    static void bind(CellField field, CellInput input) {
        field.setFocusTraversalKeysEnabled(false);
        bind(field, "ENTER", () -> input.goDown(1));
        bind(field, "shift ENTER", () -> input.goDown(-1));
        bind(field, "ctrl ENTER", input::stopInAll);
        bind(field, "TAB", () -> input.goOn(1));
        bind(field, "shift TAB", () -> input.goOn(-1));
        bind(field, "ESCAPE", input::cancelCellEditing);
        bind(field, "DOWN", () -> {
            if (!field.point(1)) {
                input.goDown(1);
            }
        });
        bind(field, "UP", () -> {
            if (!field.point(-1)) {
                input.goDown(-1);
            }
        });
        field.onTake(() -> input.goDown(1));
    }

    private static void bind(CellField field, String key, Runnable does) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }
}
