package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.KeyStroke;
import lungfish.NeedsDisplay;
import lungfish.drawing.Hit;
import lungfish.drawing.Viewport;
import lungfish.reason.Finding;
import lungfish.room.Blower;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Journeys through the real window, with the events of keys and mouse that it would get from the person. */
@NeedsDisplay
final class MainWindowTest {
    private static final long PATIENCE_S = 60;

    @TempDir
    private Path folder;

    private Optional<Windows> windows = Optional.empty();

    @AfterEach
    void close() throws Exception {
        onQueue(() -> {
            windows.ifPresent(open -> open.all().forEach(MainWindow::dispose));
            return true;
        });
    }

    private WindowPane open(Optional<Path> file) throws Exception {
        Windows opened = Windows.open(folder, file);
        windows = Optional.of(opened);
        WindowPane pane = onQueue(() -> opened.all().get(0).pane());
        await(pane, there -> there.view().desk().isCurrent());
        return pane;
    }

    /** Waits until the window says so: its view tells of every change. */
    private static void await(WindowPane pane, Predicate<WindowPane> isSo) throws Exception {
        CountDownLatch so = new CountDownLatch(1);
        onQueue(() -> {
            pane.view().onChange(() -> {
                if (isSo.test(pane)) {
                    so.countDown();
                }
            });
            return true;
        });
        assertThat(so.await(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
    }

    private static <T> T onQueue(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        try {
            EventQueue.invokeAndWait(task);
        } catch (InvocationTargetException e) {
            throw new AssertionError(e.getCause());
        }
        return task.get();
    }

    /** A key goes to the part as if it had the focus; keys of menus are found from there. */
    private static void press(Component part, KeyStroke key) throws Exception {
        onQueue(() -> {
            long now = 0;
            part.dispatchEvent(new KeyEvent(
                    part, KeyEvent.KEY_PRESSED, now, key.getModifiers(), key.getKeyCode(), KeyEvent.CHAR_UNDEFINED));
            return true;
        });
    }

    private static KeyStroke key(WindowPane pane, Class<? extends Act> kind) {
        return Optional.ofNullable(pane.acts().the(kind).key()).orElseThrow();
    }

    /** On the event thread. */
    private static void click(Component part, int x, int y, int count) {
        for (int id : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED, MouseEvent.MOUSE_CLICKED}) {
            part.dispatchEvent(
                    new MouseEvent(part, id, 0, InputEvent.BUTTON1_DOWN_MASK, x, y, count, false, MouseEvent.BUTTON1));
        }
    }

    private static <T extends Component> T part(WindowPane pane, Class<T> kind, String name) throws Exception {
        return onQueue(() -> all(pane)
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(part -> name.equals(part.getName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("there is no " + name)));
    }

    private static Stream<Component> all(Component one) {
        return one instanceof Container holder
                ? Stream.concat(
                        Stream.of(one), Stream.of(holder.getComponents()).flatMap(MainWindowTest::all))
                : Stream.of(one);
    }

    /** On any screen a person has: the one of the build may be smaller than the window likes to be. */
    @Test
    void everyRegionOfTheWindowIsSeen() throws Exception {
        WindowPane pane = open(Optional.empty());
        assertThat(onQueue(() -> Stream.of(pane.center().canvas(), pane.side(), pane.below())
                        .map(Component::getSize)
                        .toList()))
                .allMatch(size -> size.width > 100 && size.height > 50);
    }

    @Test
    void aWhyIsAskedAndLeftByKeys() throws Exception {
        WindowPane pane = open(Optional.empty());
        Component canvas = pane.center().canvas();
        press(canvas, Optional.ofNullable(pane.acts().the(AskWhy.class).key()).orElseThrow());
        assertThat(onQueue(() -> pane.side().isSheetOpen())).isTrue();
        press(part(pane, JButton.class, "back"), KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0));
        assertThat(onQueue(() -> pane.side().isSheetOpen())).isFalse();
    }

    @Test
    void unitsAreSwitchedByAKeyInEveryPanel() throws Exception {
        WindowPane pane = open(Optional.empty());
        JButton duty = part(pane, JButton.class, Subject.DUTY.name());
        assertThat(onQueue(() -> duty.getText())).endsWith("psi");
        press(pane.center().canvas(), key(pane, SwitchUnits.class));
        assertThat(onQueue(() -> duty.getText())).endsWith("kPa");
    }

    @Test
    void aBlowerIsChosenByKeysAlone() throws Exception {
        WindowPane pane = open(Optional.empty());
        press(pane.center().canvas(), key(pane, ChooseBlower.class));
        JList<?> list = part(pane, JList.class, "candidates");
        press(list, KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0));
        press(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0));
        await(
                pane,
                there -> there.view().desk().isCurrent()
                        && there.view().desk().room().blowers(Blower.Role.PLANNED).stream()
                                .allMatch(blower -> blower.machine().isPresent()));
        assertThat(onQueue(() -> pane.view().desk().history().toUndo())).isPresent();
    }

    @Test
    void aClickOnAFindingLeadsToItsPlace() throws Exception {
        WindowPane pane = open(Optional.empty());
        press(pane.center().canvas(), key(pane, ShowFindings.class));
        FindingsList findings = part(pane, FindingsList.class, "findings");
        Finding first = onQueue(() -> {
            Rectangle cell = findings.getCellBounds(0, 0);
            click(findings, cell.x + cell.width / 2, cell.y + cell.height / 2, 1);
            return findings.getModel().getElementAt(0);
        });
        assertThat(onQueue(() -> pane.view().chosen())).contains(first.where());
    }

    @Test
    void aDoubleClickOnARackOpensItsFrontAndEscapeLeadsBack() throws Exception {
        WindowPane pane = open(Optional.empty());
        RoomCanvas room = pane.center().room();
        onQueue(() -> {
            Point spot = spotOnFirstRack(room);
            click(room, spot.x, spot.y, 2);
            return true;
        });
        assertThat(onQueue(() -> pane.center().isRackOpen())).isTrue();
        press(pane.center().canvas(), KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0));
        assertThat(onQueue(() -> pane.center().isRackOpen())).isFalse();
    }

    /** Looks closely at the first rack, on a small screen too, for a point where nothing lies over it but its tanks. */
    private static Point spotOnFirstRack(RoomCanvas room) {
        Rectangle2D rackM = room.scene()
                .whereM(room.scene().room().racks().get(0).id().part())
                .orElseThrow();
        room.look(Viewport.fit(rackM, new Rectangle2D.Double(0, 0, 900, 600)));
        Rectangle2D rack = room.viewport().px(rackM);
        for (int x = (int) rack.getMinX(); x < rack.getMaxX(); x++) {
            for (int y = (int) rack.getMinY(); y < rack.getMaxY(); y++) {
                Optional<Hit.Kind> kind = room.hit(new Point(x, y)).map(Hit::kind);
                if (kind.isPresent() && (kind.get() == Hit.Kind.RACK || kind.get() == Hit.Kind.TANK)) {
                    return new Point(x, y);
                }
            }
        }
        throw new AssertionError("the rack cannot be clicked");
    }

    @Test
    void aBrokenFileIsToldInASheet() throws Exception {
        WindowPane pane = open(Optional.of(broken()));
        CountDownLatch told = new CountDownLatch(1);
        onQueue(() -> {
            pane.side().whenOpened(told::countDown);
            return true;
        });
        assertThat(told.await(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        Paragraph problems = part(pane, Paragraph.class, "problems");
        assertThat(onQueue(() -> problems.getText())).contains("/name: ");
        assertThat(onQueue(() -> pane.view().desk().room().name())).isEqualTo("Basement rainbows");
    }

    private Path broken() throws IOException {
        return Files.writeString(folder.resolve("broken.room.json"), "{\"name\": 7}");
    }
}
