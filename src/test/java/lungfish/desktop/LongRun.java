package lungfish.desktop;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import lungfish.desk.Desk;
import lungfish.desk.Preference;
import lungfish.drawing.Shown;
import lungfish.edit.Edit;
import lungfish.room.Room;

/**
 * Opens the real window on the hall, and edits it by chance for so many minutes: what is thrown, how long each event takes, how
 * much memory is held beside the steps that can be undone, and who still listens afterwards. Needs a display; see
 * docs/reliability.md.
 */
public final class LongRun {
    private static final String HALL = "club-hall";
    private static final int MINUTES = 30;
    private static final int WARM_UP = 300;
    private static final long PAUSE_MS = 25;
    private static final int PATIENCE = 4000;
    private static final double MIB = 1024 * 1024;
    private static final int MOST_TOLD = 5;

    private final Queue<Throwable> thrown = new ConcurrentLinkedQueue<>();
    private final Queue<String> logged = new ConcurrentLinkedQueue<>();
    private final EventTimes times;
    private final MainWindow window;
    private final Home home;
    private final RandomHand hand;
    private final Room hall;
    private final Handler log = new Heard();
    private final Path file;
    private int deeds;

    private LongRun(Windows windows, Path file, EventTimes times, long seed) throws InterruptedException {
        this.home = windows;
        this.file = file;
        this.times = times;
        Thread.setDefaultUncaughtExceptionHandler((thread, one) -> thrown.add(one));
        Logger.getLogger("").addHandler(log);
        List<MainWindow> open = new ArrayList<>();
        while (open.isEmpty()) {
            Thread.sleep(PAUSE_MS);
            java.awt.EventQueue.invokeLater(() -> open.addAll(windows.all()));
        }
        this.window = open.get(0);
        this.hand = new RandomHand(window, times, seed);
        this.hall = desk().room();
    }

    /** The arguments are minutes, and the seed of the chances. */
    public static void main(String[] args) throws IOException, InterruptedException {
        double minutes = args.length > 0 ? Double.parseDouble(args[0]) : MINUTES;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        EventTimes times = EventTimes.here();
        Path folder = Files.createTempDirectory("lungfish");
        LongRun run = new LongRun(Windows.open(folder, HALL), folder.resolve("hall.room.json"), times, seed);
        run.begin();
        run.run(minutes);
        System.exit(0);
    }

    private Desk desk() {
        return window.pane().view().desk();
    }

    /** Every sheet is opened once, and much is done once: what is made only once is there before anything is counted. */
    private void begin() throws InterruptedException {
        anew();
        times.pause(false);
        for (Act act : window.pane().acts().plan()) {
            hand.later("first " + act.name(), act::act);
            Thread.sleep(PAUSE_MS);
        }
        for (int i = 0; i < WARM_UP; i++) {
            deed();
        }
        times.pause(true);
        System.out.println("First use:\n" + times.report());
        times.forget();
        anew();
    }

    private void run(double minutes) throws InterruptedException {
        deeds = 0;
        long before = heap();
        Map<String, Long> ears = hand.see(() -> Ears.count(window));
        System.out.println("| minutes | deeds | steps | heap, MiB |\n| ---: | ---: | ---: | ---: |");
        row(0, before);
        long began = System.nanoTime();
        for (int part = 1;
                began + TimeUnit.MINUTES.toNanos(2L * part) <= began + minutes * TimeUnit.MINUTES.toNanos(1);
                part++) {
            doUntil(began + TimeUnit.MINUTES.toNanos(2L * part));
            row(2 * part, heap());
        }
        doUntil(began + (long) (minutes * TimeUnit.MINUTES.toNanos(1)));
        int steps = steps();
        long full = heap();
        row(minutes, full);
        hand.later("forget the steps", () -> desk().openNew("Forget the steps", desk().room()));
        long forgotten = heap();
        anew();
        long after = heap();
        System.out.printf(
                Locale.ROOT,
                "Steps %d, %.0f bytes each; beside them %+.2f MiB since the beginning%n",
                steps,
                (double) (full - forgotten) / Math.max(1, steps),
                (after - before) / MIB);
        tellEars(ears, hand.see(() -> Ears.count(window)));
        System.out.println(times.report());
        tellTrouble();
    }

    private static void tellEars(Map<String, Long> before, Map<String, Long> after) {
        System.out.println("| listeners of | before | after |\n| --- | ---: | ---: |");
        before.forEach(
                (whose, many) -> System.out.println("| " + whose + " | " + many + " | " + after.get(whose) + " |"));
    }

    private void tellTrouble() {
        System.out.println("Uncaught exceptions " + thrown.size() + ", faults in the log " + logged.size());
        thrown.stream().limit(MOST_TOLD).forEach(one -> {
            System.out.println(one);
            Arrays.stream(one.getStackTrace()).limit(12).forEach(line -> System.out.println("    " + line));
        });
        logged.stream().limit(MOST_TOLD).forEach(System.out::println);
    }

    private void row(double minutes, long heap) {
        System.out.printf(Locale.ROOT, "| %.0f | %d | %d | %.2f |%n", minutes, deeds, steps(), heap / MIB);
    }

    private int steps() {
        return hand.see(() -> desk().history().steps().size() - 1);
    }

    private void doUntil(long thenNs) throws InterruptedException {
        times.pause(false);
        while (System.nanoTime() < thenNs) {
            deed();
        }
        times.pause(true);
    }

    /** At the pace of a hand that never rests; a hall that has become another altogether is put back, as one more step. */
    private void deed() throws InterruptedException {
        hand.act();
        deeds++;
        Thread.sleep(PAUSE_MS);
        int racks = hand.see(() -> desk().room().racks().size());
        int most = 2 * hall.racks().size();
        if (racks < hall.racks().size() / 2 || racks > most) {
            hand.later("put the hall back", () -> desk().apply(new Edit("Put the hall back", room -> hall)));
        }
    }

    /** Nothing chosen, no sheet open, light, at 100 %: what is counted is counted so. */
    private void atRest() throws InterruptedException {
        hand.later("rest", () -> {
            WindowPane pane = window.pane();
            pane.side().close();
            pane.center().closeRack();
            pane.center().belt().putAllDown();
            desk().leave();
            pane.view().chooseNothing();
            pane.view().show(Shown.AS_IT_SHOULD_BE_SET);
            desk().showIn(hall.displayUnits());
            home.wear(Preference.Theme.LIGHT);
            home.sizeText(-100);
            pane.acts().the(ShowFindings.class).act(); // a sheet that is not seen keeps what it showed last
            pane.acts().the(ShowAssumed.class).act();
            pane.acts().the(ShowChosen.class).act();
            pane.acts().the(ShowOutlets.class).act();
            pane.center().room().fit();
            pane.center().takeFocus();
        });
        await();
    }

    /** At rest, on the hall as it was, without a step; with a file, so that it is saved without a question. */
    private void anew() throws InterruptedException {
        atRest();
        hand.later("begin anew", () -> desk().openNew("Open " + HALL, hall));
        await();
        hand.later("save", () -> desk().saveAs(file, () -> {}));
        while (!hand.see(() -> desk().file().isPresent())) {
            Thread.sleep(PAUSE_MS);
        }
        await();
    }

    private void await() throws InterruptedException {
        for (int i = 0; i < PATIENCE && !hand.see(() -> desk().isCurrent()); i++) {
            Thread.sleep(PAUSE_MS);
        }
        Thread.sleep(40 * PAUSE_MS);
        hand.idle();
    }

    /** What answers a long question holds much while it works; it ends when it has nothing to do. */
    private static void awaitWorkers() throws InterruptedException {
        for (int i = 0; i < PATIENCE && isWorking(); i++) {
            Thread.sleep(PAUSE_MS);
        }
    }

    private static boolean isWorking() {
        return Thread.getAllStackTraces().keySet().stream()
                .anyMatch(thread -> thread.getName().equals("ahead"));
    }

    /** What is held when all that nobody needs is gone. */
    private long heap() throws InterruptedException {
        atRest();
        awaitWorkers();
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(10 * PAUSE_MS);
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    /** Faults that the program has met by itself, and told its log. */
    private final class Heard extends Handler {
        @Override
        public void publish(LogRecord one) {
            if (one.getLevel().intValue() >= Level.WARNING.intValue()) {
                logged.add(one.getLoggerName() + ": " + one.getMessage() + " " + one.getThrown());
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
