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
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.JPanel;
import lungfish.desk.Desk;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.desk.Preference;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Rack;

/**
 * Drags racks through the hall with the tool that a keeper has in the hand, and measures each step: how long from the event of
 * the mouse until the plan of the new room is finished in the worker, what the event thread does meanwhile, and how long the
 * whole window takes to be painted into an image. No display is needed. Run its {@code main}; see docs/performance.md.
 */
public final class DragTimes {
    private static final String HALL = "club-hall";
    private static final Dimension WINDOW = new Dimension(1600, 1000);
    private static final int WARM_UP = 400;
    private static final int MEASURED = 1200;
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
    private final Times plan = new Times("from the event to the plan");
    private final Times planning = new Times("of that, planning");
    private final Times events = new Times("event thread: the edit, and all panels told twice");
    private final Times painting = new Times("painting the whole window");
    private final WindowPane pane;
    private final JPanel whole = new JPanel(new BorderLayout());
    private final BufferedImage image = new BufferedImage(WINDOW.width, WINDOW.height, BufferedImage.TYPE_INT_RGB);
    private Future<?> asked = CompletableFuture.completedFuture(null);
    private long asks;

    private DragTimes(Path preferences) {
        Hands hands = new Hands(front::add, this::plan, Runnable::run, Runnable::run);
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
    public static void main(String[] args) throws IOException, InterruptedException, InvocationTargetException {
        int steps = args.length > 0 ? Integer.parseInt(args[0]) : MEASURED;
        Path preferences = Files.createTempDirectory("lungfish");
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(new DocsWindows.Deaf());
        EventQueue.invokeAndWait(() -> new DragTimes(preferences).measure(steps));
        System.exit(0);
    }

    private void plan(Runnable work) {
        asks++;
        asked = worker.submit(() -> {
            long began = System.nanoTime();
            work.run();
            finishedNs.set(System.nanoTime());
            planning.add(finishedNs.get() - began);
        });
    }

    private Desk desk() {
        return pane.view().desk();
    }

    private void measure(int steps) {
        catchUp();
        for (int pass = 0; pass < 4; pass++) {
            layOut(whole);
            pane.view().inWindowOf(pane.getWidth());
        }
        pane.center().room().fit();
        drag(WARM_UP);
        List.of(plan, planning, events, painting).forEach(Times::forget);
        drag(steps);
        System.out.println(Times.table(List.of(plan, planning, events, painting)));
        System.out.println(plan.histogram());
    }

    /** Waits for the worker, and tells the window what it has found. */
    private void catchUp() {
        try {
            asked.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        }
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
        mouse(MouseEvent.MOUSE_PRESSED, xM, yM);
        int done = 0;
        for (int i = 1; i <= steps; i++) {
            double angle = i * 2 * Math.PI / STEPS_A_DRAG;
            done += step(xM + SWAY_M * Math.sin(angle), yM + SWAY_M * Math.sin(2 * angle)) ? 1 : 0;
        }
        mouse(MouseEvent.MOUSE_DRAGGED, xM, yM); // back to where it stood: no step is made
        mouse(MouseEvent.MOUSE_RELEASED, xM, yM);
        desk().leave();
        catchUp();
        return Math.max(done, 1);
    }

    /** Whether it made another room, and so was measured. */
    private boolean step(double xM, double yM) {
        long before = asks;
        long began = System.nanoTime();
        mouse(MouseEvent.MOUSE_DRAGGED, xM, yM);
        long edited = System.nanoTime() - began;
        boolean isNew = asks != before;
        if (isNew) {
            awaitPlan();
            plan.add(finishedNs.get() - began);
            long heard = System.nanoTime();
            catchUp();
            events.add(edited + System.nanoTime() - heard);
            paint();
        }
        return isNew;
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
            holder.doLayout();
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
        public void quit() {}

        @Override
        public void wear(Preference.Theme theme) {}

        @Override
        public void switchTheme() {}

        @Override
        public void sizeText(int stepPercent) {}
    }
}
