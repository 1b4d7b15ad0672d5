package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.JPanel;
import lungfish.desk.Desk;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.desk.Preference;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Rack;
import lungfish.room.Room;

/**
 * Drags racks through the hall with the tool that a keeper has in the hand, and measures each step: how long from the event of
 * the mouse until the plan of the new room is finished in the worker, what the event thread does meanwhile, and how long the
 * whole window takes to be painted into an image. No display is needed. Run its {@code main}; see docs/performance.md.
 */
public final class DragTimes {
    private static final String HALL = "club-hall";
    private static final Dimension WINDOW = new Dimension(1600, 1000);
    private static final int WARM_UP = 240;
    private static final int MEASURED = 1000;
    private static final int STEPS_A_DRAG = 60;
    private static final double SWAY_M = 0.25;

    /** Work for the event thread that is done when the measuring comes to it. */
    private final BlockingQueue<Runnable> front = new LinkedBlockingQueue<>();

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "planning");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicLong finishedNs = new AtomicLong();
    private final AtomicLong plannedCpuNs = new AtomicLong();
    private final Times plan = new Times("from the event to the plan");
    private final Times cpu = new Times("the same in processor time");
    private final Times events = new Times("event thread: the edit, and all panels told twice");
    private final Times painting = new Times("painting the whole window");
    private final WindowPane pane;
    private final JPanel whole = new JPanel(new BorderLayout());
    private final BufferedImage image = new BufferedImage(WINDOW.width, WINDOW.height, BufferedImage.TYPE_INT_RGB);
    private Future<?> asked = CompletableFuture.completedFuture(null);
    private final AtomicLong asks = new AtomicLong();
    private long askedCpuNs;

    private DragTimes(Path preferences) {
        Hands hands = new Hands(front::add, this::plan, Runnable::run, Runnable::run, Runnable::run);
        Desks desks = Desks.in(preferences, hands);
        Themes themes = new Themes(desks.preferences());
        themes.wear();
        pane = new WindowPane(new Alone(themes), desks.withDemo(HALL), new Bench.Answers(), () -> {});
        whole.add(Menus.of(pane), BorderLayout.NORTH);
        whole.add(pane, BorderLayout.CENTER);
        whole.addNotify();
        whole.setSize(WINDOW);
    }

    /** Prints a table and the histogram of the plans. The argument is how many steps are measured. */
    public static void main(String[] args)
            throws IOException, InterruptedException, InvocationTargetException, ExecutionException {
        int steps = args.length > 0 ? Integer.parseInt(args[0]) : MEASURED;
        Path preferences = Files.createTempDirectory("lungfish");
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(new DocsWindows.Deaf());
        FutureTask<DragTimes> made = new FutureTask<>(() -> new DragTimes(preferences));
        EventQueue.invokeAndWait(made);
        made.get().measure(steps);
        System.exit(0);
    }

    private void plan(Runnable work) {
        asks.incrementAndGet();
        askedCpuNs = cpuNs();
        asked = worker.submit(() -> {
            long began = cpuNs();
            work.run();
            finishedNs.set(System.nanoTime());
            plannedCpuNs.set(cpuNs() - began);
        });
    }

    /** What this thread has used of a processor: other programs on the machine do not count. */
    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private Desk desk() {
        return pane.view().desk();
    }

    /** Each on its own, so that what the window asks of the event queue meanwhile is done in between. */
    private static void onEventThread(Runnable work) {
        try {
            EventQueue.invokeAndWait(work);
        } catch (InterruptedException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private void show() {
        catchUp();
        for (int pass = 0; pass < 4; pass++) {
            layOut(whole);
            pane.view().inWindowOf(pane.getWidth());
        }
        pane.center().room().fit();
    }

    private void measure(int steps) {
        onEventThread(this::show);
        drag(WARM_UP);
        List.of(plan, cpu, events, painting).forEach(Times::forget);
        drag(steps);
        System.out.println(Times.table(List.of(plan, cpu, events, painting)));
        System.out.println(cpu.histogram());
    }

    /** Waits for the worker, and tells the window what it has found. */
    private void catchUp() {
        awaitPlan();
        for (Runnable told = front.poll(); told != null; told = front.poll()) {
            told.run();
        }
    }

    /** One rack after the other, each on a way that sways about where it stood and comes back, so that the hall stays as it is. */
    private void drag(int steps) {
        int done = 0;
        for (int rack = 0;
                done < steps;
                rack = (rack + 1) % desk().room().racks().size()) {
            done += drag(desk().room().racks().get(rack), Math.min(STEPS_A_DRAG, steps - done));
        }
    }

    private int drag(Rack rack, int steps) {
        double xM = rack.xM() + rack.spanXM() / 2;
        double yM = rack.yM() + rack.spanYM() / 2;
        onEventThread(() -> mouse(MouseEvent.MOUSE_PRESSED, xM, yM));
        long before = asks.get();
        for (int i = 1; i <= steps; i++) {
            double angle = i * 2 * Math.PI / STEPS_A_DRAG;
            onEventThread(() -> step(xM + SWAY_M * Math.sin(angle), yM + SWAY_M * Math.sin(2 * angle)));
        }
        int made = (int) (asks.get() - before);
        onEventThread(() -> letGo(xM, yM));
        return Math.max(made, 1);
    }

    /** Back to where it stood: no step is made. */
    private void letGo(double xM, double yM) {
        mouse(MouseEvent.MOUSE_DRAGGED, xM, yM);
        mouse(MouseEvent.MOUSE_RELEASED, xM, yM);
        desk().leave();
        catchUp();
    }

    /** Measured where it makes another room: a step into another rack is refused. */
    private void step(double xM, double yM) {
        long before = asks.get();
        long began = System.nanoTime();
        long beganCpu = cpuNs();
        mouse(MouseEvent.MOUSE_DRAGGED, xM, yM);
        long edited = System.nanoTime() - began;
        if (asks.get() != before) {
            awaitPlan();
            plan.add(finishedNs.get() - began);
            cpu.add(askedCpuNs - beganCpu + plannedCpuNs.get());
            long heard = System.nanoTime();
            catchUp();
            events.add(edited + System.nanoTime() - heard);
            paint();
        }
    }

    private void awaitPlan() {
        try {
            asked.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }

    private void paint() {
        Graphics2D g = image.createGraphics();
        long began = System.nanoTime();
        layOut(whole);
        whole.paint(g);
        painting.add(System.nanoTime() - began);
        g.dispose();
    }

    private void mouse(int id, double xM, double yM) {
        RoomCanvas canvas = pane.center().room();
        Point2D px = canvas.viewport().px(xM, yM);
        int x = (int) Math.round(px.getX());
        int y = (int) Math.round(px.getY());
        int keys =
                InputEvent.BUTTON1_DOWN_MASK | InputEvent.ALT_DOWN_MASK; // Alt: off the grid, so that each step counts
        canvas.dispatchEvent(new MouseEvent(canvas, id, 0, keys, x, y, x, y, 1, false, MouseEvent.BUTTON1));
    }

    /** What has no frame is laid out by hand, from the outside in. */
    private static void layOut(Component part) {
        if (part instanceof Container holder) {
            if (!holder.isValid()) {
                holder.validate();
            }
            for (Component child : holder.getComponents()) {
                layOut(child);
            }
        }
    }

    /** The program with one window. */
    private record Alone(Themes themes) implements Home {
        @Override
        public void openWindow(DisplayUnits units) {}

        @Override
        public void openRoom(String done, Room room) {}

        @Override
        public void quit() {}

        @Override
        public void wear(Preference.Theme theme) {}

        @Override
        public void switchTheme() {}

        @Override
        public void sizeText(int stepPercent) {}
    }
}
