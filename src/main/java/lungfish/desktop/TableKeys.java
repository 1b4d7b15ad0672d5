package lungfish.desktop;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Optional;

/** The keys of the outlets table while nothing is typed into it. */
final class TableKeys {
    private TableKeys() {}

    static void bind(OutletsTable table, TableEdits edits) {
        CellInput input = table.input();
        Keys.bind(table, "ENTER", () -> {
            if (table.leadColumn() >= 0 && table.input(table.leadColumn()).isPresent()) {
                input.begin(Optional.empty());
            } else {
                table.askWhy();
            }
        });
        Keys.bind(table, "F2", () -> input.begin(Optional.empty()));
        Keys.bind(table, "BACK_SPACE", edits::clear);
        Keys.bind(table, Act.menuKey(KeyEvent.VK_C), "copy", () -> edits.copy(false));
        Keys.bind(table, Act.menuKey(KeyEvent.VK_V), "paste", edits::paste);
        Keys.bind(table, "ESCAPE", edits::leave);
        table.addKeyListener(new FirstLetter(table));
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
