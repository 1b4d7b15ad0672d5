package lungfish.desktop;

import java.awt.event.ActionEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keys of the outlets table while nothing is typed into it. */
final class TableKeys {
    private TableKeys() {}

    static void bind(OutletsTable table, TableEdits edits) {
        CellInput input = table.input();
        bind(table, "ENTER", "why", () -> {
            if (table.leadColumn() >= 0 && table.input(table.leadColumn()).isPresent()) {
                input.begin(Optional.empty());
            } else {
                table.askWhy();
            }
        });
        bind(table, "F2", "type", () -> input.begin(Optional.empty()));
        bind(table, "BACK_SPACE", "clear", edits::clear);
        bind(table, Act.menuKey(KeyEvent.VK_C), "copy", () -> edits.copy(false));
        bind(table, Act.menuKey(KeyEvent.VK_V), "paste", edits::paste);
        bind(table, KeyStroke.getKeyStroke("ESCAPE"), "leave", edits::leave);
        table.addKeyListener(new FirstLetter(table));
    }

    private static void bind(OutletsTable table, String key, String name, Runnable does) {
        bind(table, KeyStroke.getKeyStroke(key), name, does);
    }

    private static void bind(OutletsTable table, KeyStroke key, String name, Runnable does) {
        table.getInputMap(JComponent.WHEN_FOCUSED).put(key, name);
        table.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    /** Any letter, digit or sign begins to type it. */
    private static final class FirstLetter extends KeyAdapter {
        private final OutletsTable table;

        FirstLetter(OutletsTable table) {
            this.table = table;
        }

        @Override
        public void keyTyped(KeyEvent event) {
            char letter = event.getKeyChar();
            boolean isWord = !event.isControlDown() && !event.isMetaDown() && !event.isAltDown();
            if (isWord && letter > ' ' && letter != KeyEvent.VK_DELETE && letter != KeyEvent.CHAR_UNDEFINED) {
                event.consume();
                table.input().begin(Optional.of(letter));
            }
        }
    }
}
