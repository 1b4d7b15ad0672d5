package lungfish.desktop;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.MouseInfo;
import java.awt.Point;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/**
 * A person at the real windows: the mouse and the keys are those of the display, and a window gets them if it is there and
 * has the focus. Each click, chord or line typed counts as one action.
 */
final class Person implements AutoCloseable {
    private final WatchedQueue queue = WatchedQueue.here();
    private final Robot robot;
    private final Windows windows;
    private int actions;

    /** Starts the program, and waits for the window and for its plan. */
    Person(Path folder, Optional<Path> file) {
        try {
            robot = new Robot();
        } catch (AWTException e) {
            throw new AssertionError(e);
        }
        windows = Windows.open(folder, file);
        until("a window that has the focus", () -> !windows.all().isEmpty() && hasFocus(pane()));
        until("a plan", () -> pane().view().desk().isCurrent());
        robot.waitForIdle(); // whatever opening a window still brings comes before the first key
    }

    private static boolean hasFocus(WindowPane pane) {
        return pane.center().canvas().isFocusOwner();
    }

    /** The window opened last. */
    MainWindow window() {
        List<MainWindow> all = windows.all();
        return all.get(all.size() - 1);
    }

    WindowPane pane() {
        return window().pane();
    }

    /** Asked on the event thread, as is {@link #isEmpty}. */
    int count() {
        return windows.all().size();
    }

    boolean isEmpty() {
        return windows.all().isEmpty();
    }

    List<MainWindow> windows() {
        return see(windows::all);
    }

    int actions() {
        return actions;
    }

    void until(String condition, BooleanSupplier holds) {
        queue.await(condition, holds);
    }

    /** What is asked on the event thread. */
    <T> T see(Callable<T> question) {
        FutureTask<T> task = new FutureTask<>(question);
        try {
            EventQueue.invokeAndWait(task);
            return task.get();
        } catch (InvocationTargetException | java.util.concurrent.ExecutionException e) {
            throw new AssertionError(e.getCause());
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** The part of this name in the window, once it is there to be seen. */
    <T extends Component> T part(Class<T> kind, String name) {
        until(name + " in sight", () -> Parts.find(window(), kind, name)
                .filter(Component::isShowing)
                .isPresent());
        return see(() -> Parts.find(window(), kind, name).orElseThrow());
    }

    void click(Component part) {
        click(part, () -> new Point(part.getWidth() / 2, part.getHeight() / 2));
    }

    void click(Component part, Supplier<Point> at) {
        actions++;
        moveTo(part, at);
        button();
    }

    /** Twice; and again where a machine under load was too slow for the system to count two clicks as one double. */
    void doubleClick(Component part, Supplier<Point> at) {
        actions++;
        Presses presses = new Presses();
        see(() -> {
            part.addMouseListener(presses);
            return true;
        });
        while (presses.mostInARow < 2) {
            int before = presses.seen.get();
            moveTo(part, at);
            button();
            button();
            until("a press", () -> presses.seen.get() > before); // one of the two may be lost
            robot.waitForIdle();
        }
    }

    /** Counts the presses that a part has seen; touched on the event thread. */
    private static final class Presses extends MouseAdapter {
        private final AtomicInteger seen = new AtomicInteger();
        private volatile int mostInARow;

        @Override
        public void mousePressed(MouseEvent event) {
            mostInARow = Math.max(mostInARow, event.getClickCount());
            seen.incrementAndGet();
        }
    }

    /** Moves the pointer there, and again where the place has moved meanwhile: by the window manager, or in a new layout. */
    void moveTo(Component part, Supplier<Point> at) {
        until("the pointer over " + part.getName(), () -> {
            Point there = part.getLocationOnScreen();
            there.translate(at.get().x, at.get().y);
            boolean isThere =
                    part.isValid() && MouseInfo.getPointerInfo().getLocation().equals(there);
            if (!isThere) {
                robot.mouseMove(there.x, there.y);
                EventQueue.invokeLater(() -> {}); // look again
            }
            return isThere;
        });
    }

    /** With the button in the middle, which pans whatever lies there. */
    void dragWithTheMiddle(Component part, Point from, Point to) {
        actions++;
        moveTo(part, () -> from);
        robot.mousePress(InputEvent.BUTTON2_DOWN_MASK);
        moveTo(part, () -> to);
        robot.mouseRelease(InputEvent.BUTTON2_DOWN_MASK);
    }

    /** Presses, moves on a way of two steps, so that the hand is seen to move, and lets go: one action. */
    void drag(Component part, Supplier<Point> from, Supplier<Point> to, Runnable before) {
        actions++;
        moveTo(part, from);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        moveTo(part, () -> between(from.get(), to.get()));
        moveTo(part, to);
        before.run();
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    private static Point between(Point from, Point to) {
        return new Point((from.x + to.x) / 2, (from.y + to.y) / 2);
    }

    /** The window as it stands on the screen, with what floats over it. */
    BufferedImage picture() {
        robot.waitForIdle();
        return robot.createScreenCapture(
                see(() -> pane().getRootPane().getParent().getBounds()));
    }

    private void button() {
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    void wheel(Component part, Supplier<Point> at, int notches) {
        actions++;
        moveTo(part, at);
        robot.mouseWheel(notches);
    }

    /** The key of an action, once the window can hear it: after a dialog the focus takes a moment to come back. */
    void act(Class<? extends Act> kind) {
        act(pane().acts().the(kind));
    }

    void ask(Question question) {
        act(pane().acts().the(question));
    }

    private void act(Act act) {
        until("the focus in the window", () -> window().isFocused() && owner() != null);
        press(Optional.ofNullable(act.key()).orElseThrow());
    }

    void press(String key) {
        press(KeyStroke.getKeyStroke(key));
    }

    void press(KeyStroke chord) {
        actions++;
        List<Integer> with = Keyboard.modifiers(chord);
        with.forEach(robot::keyPress);
        robot.keyPress(chord.getKeyCode());
        robot.keyRelease(chord.getKeyCode());
        with.forEach(robot::keyRelease);
    }

    /** Types text over what is chosen in the field that has the focus: one action, however long. */
    void write(String text) {
        int before = actions;
        text.chars().mapToObj(Keyboard::of).forEach(this::press);
        actions = before + 1;
    }

    /** Types a line, and Enter. */
    void type(String line) {
        write(line);
        robot.keyPress(KeyEvent.VK_ENTER);
        robot.keyRelease(KeyEvent.VK_ENTER);
    }

    /** Saves the room to a file that is new. */
    void saveAs(Path file) {
        act(SaveRoom.class);
        focusedInDialog(JTextField.class);
        press("ctrl A");
        type(file.toString());
        until("the file", () -> pane().view().desk().file().equals(Optional.of(file)));
        until(
                "the focus back from the dialog",
                () -> window().isFocused() && owner() != null); // or the next window gets none
    }

    /** The part of this kind that has the focus in a dialog, once there is one. */
    <T extends Component> T focusedInDialog(Class<T> kind) {
        AtomicReference<@Nullable T> part = new AtomicReference<>();
        until("the focus in a " + kind.getSimpleName(), () -> {
            boolean isSo = kind.isInstance(owner()) && focusedWindow() instanceof Dialog;
            if (isSo) {
                part.set(kind.cast(owner()));
            }
            return isSo;
        });
        return Objects.requireNonNull(part.get());
    }

    /** Asked on the event thread. */
    static @Nullable Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private static @Nullable Window focusedWindow() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusedWindow();
    }

    @Override
    public void close() {
        see(() -> {
            List.of(Window.getWindows()).forEach(Window::dispose);
            return true;
        });
    }
}
