package lungfish.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;

/** The parts of a window, from the outside in. */
final class Parts {
    private Parts() {}

    static Stream<Component> all(Component one) {
        return one instanceof Container holder
                ? Stream.concat(
                        Stream.of(one), Stream.of(holder.getComponents()).flatMap(Parts::all))
                : Stream.of(one);
    }

    /** The first of a kind and a name. */
    static <T extends Component> Optional<T> find(Component inside, Class<T> kind, String name) {
        return all(inside)
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(part -> name.equals(part.getName()))
                .findFirst();
    }

    /** What a cell of a table says. */
    static String cellText(JTable table, int row, int column) {
        Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
        return cell instanceof JLabel label ? label.getText() : "";
    }

    /** What a key does in a part that has the focus. */
    static void press(JComponent part, String key) {
        Object does = part.getInputMap().get(KeyStroke.getKeyStroke(key));
        part.getActionMap().get(does).actionPerformed(new ActionEvent(part, ActionEvent.ACTION_PERFORMED, key));
    }
}
