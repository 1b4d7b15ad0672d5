package lungfish.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentListener;
import java.awt.event.ContainerListener;
import java.awt.event.FocusListener;
import java.awt.event.HierarchyBoundsListener;
import java.awt.event.HierarchyListener;
import java.awt.event.ItemListener;
import java.awt.event.KeyListener;
import java.awt.event.MouseListener;
import java.awt.event.MouseMotionListener;
import java.awt.event.MouseWheelListener;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.EventListener;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.event.AncestorListener;
import javax.swing.event.ChangeListener;
import javax.swing.text.AbstractDocument;
import javax.swing.text.JTextComponent;

/** Who listens to the parts of a window, counted; in two windows that show the same the counts are the same. */
final class Ears {
    private static final List<Class<? extends EventListener>> KINDS = List.of(
            ComponentListener.class,
            ContainerListener.class,
            FocusListener.class,
            HierarchyListener.class,
            HierarchyBoundsListener.class,
            KeyListener.class,
            MouseListener.class,
            MouseMotionListener.class,
            MouseWheelListener.class,
            AncestorListener.class,
            ChangeListener.class,
            ItemListener.class);

    private Ears() {}

    /** Asked on the event thread. */
    static Map<String, Long> count(MainWindow window) {
        View view = window.pane().view();
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("the desk", heard(view.desk(), "listeners"));
        counts.put("the view", heard(view, "listeners"));
        counts.put("what is marked", heard(view, "markListeners"));
        counts.put("the keyboard focus", (long)
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPropertyChangeListeners().length);
        counts.put("the look of Swing", (long) UIManager.getPropertyChangeListeners().length);
        counts.put(
                "the acts",
                window.pane().acts().all().stream()
                        .mapToLong(act -> act.getPropertyChangeListeners().length)
                        .sum());
        counts.put("components", all(window).count());
        counts.put(
                "listeners of the components", all(window).mapToLong(Ears::of).sum());
        return counts;
    }

    private static Stream<Component> all(MainWindow window) {
        return Parts.all(window);
    }

    private static long of(Component part) {
        long own =
                KINDS.stream().mapToLong(kind -> part.getListeners(kind).length).sum();
        return own + part.getPropertyChangeListeners().length + special(part);
    }

    private static long special(Component part) {
        long keys = part instanceof JComponent holder ? holder.getVetoableChangeListeners().length : 0;
        long acts = part instanceof AbstractButton button ? button.getActionListeners().length : 0;
        long typed = part instanceof JTextComponent text && text.getDocument() instanceof AbstractDocument document
                ? document.getDocumentListeners().length
                : 0;
        return keys + acts + typed;
    }

    /** What a list of listeners holds that nobody else needs to know of. */
    private static long heard(Object whom, String list) {
        try {
            Field field = whom.getClass().getDeclaredField(list);
            field.setAccessible(true);
            return ((Collection<?>) field.get(whom)).size();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(list, e);
        }
    }
}
