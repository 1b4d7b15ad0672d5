package lungfish.desktop;

import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import lungfish.desk.Desk;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.desk.Preference;
import lungfish.edit.QuickStart;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;

/** The windows of the program. They share preferences and catalogue; each has a desk of its own. */
public final class Windows implements Home {
    private static final String FIRST_ROOM = "basement-rainbows";
    private static final int LEAST_PERCENT = 100;
    private static final int MOST_PERCENT = 200;

    private final Desks desks;
    private final Themes themes;
    private final List<MainWindow> open = new ArrayList<>();
    private final CountDownLatch allClosed = new CountDownLatch(1);

    private Windows(Desks desks) {
        this.desks = desks;
        this.themes = new Themes(desks.preferences());
    }

    /**
     * Opens the first window, from any thread but the event thread.
     *
     * @param configFolder where preferences are kept
     * @param file opened over the demo room, where one is given
     */
    public static Windows open(Path configFolder, Optional<Path> file) {
        return open(configFolder, FIRST_ROOM, file);
    }

    /**
     * Opens the first window on a room.
     *
     * @param fileOrDemo a file, or else the name of a demo room
     * @throws java.nio.file.InvalidPathException if it is neither, nor could be
     */
    public static Windows open(Path configFolder, String fileOrDemo) {
        Path file = Path.of(fileOrDemo);
        boolean isDemo = DemoRooms.NAMES.contains(fileOrDemo) && !Files.exists(file);
        return isDemo
                ? open(configFolder, fileOrDemo, Optional.empty())
                : open(configFolder, FIRST_ROOM, Optional.of(file));
    }

    private static Windows open(Path configFolder, String demo, Optional<Path> file) {
        CompletableFuture<Boolean> isDark = CompletableFuture.supplyAsync(SystemTheme::isDark);
        Windows windows = new Windows(Desks.in(configFolder, Hands.behind(EventQueue::invokeLater)));
        boolean isSystemDark = isDark.join(); // asked meanwhile: the first window has its colours at once
        EventQueue.invokeLater(() -> {
            windows.themes.systemIs(isSystemDark);
            Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment()
                    .getDefaultScreenDevice()
                    .getDefaultConfiguration()
                    .getBounds();
            windows.themes.screenIs(screen.width, screen.height);
            windows.themes.wear();
            MainWindow first = windows.show(windows.desks.withDemo(demo));
            file.ifPresent(first.pane().files()::open);
            first.pane().view().desk().recovery().look();
        });
        return windows;
    }

    /** Waits until the last window is closed. */
    public void awaitClosed() throws InterruptedException {
        allClosed.await();
    }

    private MainWindow show(Desk desk) {
        MainWindow window = new MainWindow(this, desk, this::closed);
        open.add(window);
        window.setLocationByPlatform(open.size() > 1);
        window.setVisible(true);
        return window;
    }

    private void closed(MainWindow window) {
        window.pane().view().desk().close();
        open.remove(window);
        if (open.isEmpty()) {
            allClosed.countDown();
        }
    }

    @Override
    public Themes themes() {
        return themes;
    }

    @Override
    public void openWindow(DisplayUnits units) {
        openRoom(WindowFiles.NEW, QuickStart.emptyRoom(WindowFiles.NEW, units));
    }

    @Override
    public void openRoom(String done, Room room) {
        show(desks.with(done, room));
    }

    @Override
    public void quit() {
        whenKept(all().iterator(), () -> all().forEach(MainWindow::dispose));
    }

    /** Asks window after window, each brought to the front, so that one sees which room is meant. */
    private static void whenKept(Iterator<MainWindow> windows, Runnable then) {
        if (windows.hasNext()) {
            MainWindow next = windows.next();
            next.toFront();
            next.pane().files().whenKept(() -> whenKept(windows, then));
        } else {
            then.run();
        }
    }

    @Override
    public void wear(Preference.Theme theme) {
        desks.preferences().set(Preference.THEME, theme);
        dress();
        if (theme == Preference.Theme.AS_THE_SYSTEM) {
            askTheSystem();
        }
    }

    /** It may have turned dark since. */
    private void askTheSystem() {
        ForkJoinPool.commonPool().execute(() -> {
            boolean dark = SystemTheme.isDark();
            EventQueue.invokeLater(() -> {
                themes.systemIs(dark);
                dress();
            });
        });
    }

    @Override
    public void switchTheme() {
        wear(themes.isDark() ? Preference.Theme.LIGHT : Preference.Theme.DARK);
    }

    @Override
    public void sizeText(int stepPercent) {
        int percent = themes.textPercent() + stepPercent;
        desks.preferences().set(Preference.TEXT_PERCENT, Math.max(LEAST_PERCENT, Math.min(MOST_PERCENT, percent)));
        dress();
    }

    private void dress() {
        themes.wear();
        open.forEach(window -> window.pane().view().refresh());
    }

    /** Those that are open; asked on the event thread. */
    List<MainWindow> all() {
        return List.copyOf(open);
    }
}
