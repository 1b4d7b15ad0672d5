package lungfish.desktop;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * The event queue of the windows, watched. A window changes in events and nowhere else: a condition that is asked again
 * after each event is seen as soon as it holds, without sleeping. Events of a dialog that waits pass through here too.
 */
final class WatchedQueue extends EventQueue {
    /** Far beyond what the slowest machine takes: it only bounds a test that has failed. */
    private static final long PATIENCE_S = 60;

    private record Waiting(BooleanSupplier condition, CountDownLatch met) {}

    private final List<Waiting> waiting = new CopyOnWriteArrayList<>();

    /** Pushed once and for all: a queue that comes and goes loses events while the last window closes. */
    private static final WatchedQueue HERE = new WatchedQueue();

    static {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(HERE);
    }

    private WatchedQueue() {}

    static WatchedQueue here() {
        return HERE;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        super.dispatchEvent(event);
        waiting.forEach(WatchedQueue::ask);
    }

    private static void ask(Waiting one) {
        if (one.met().getCount() > 0 && one.condition().getAsBoolean()) {
            one.met().countDown();
        }
    }

    /** Waits until the condition, asked on the event thread, holds. */
    void await(String condition, BooleanSupplier holds) {
        Waiting one = new Waiting(holds, new CountDownLatch(1));
        waiting.add(one);
        EventQueue.invokeLater(() -> {}); // it may hold already: an event makes it be asked
        try {
            if (!one.met().await(PATIENCE_S, TimeUnit.SECONDS)) {
                throw new AssertionError("never came: " + condition);
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        } finally {
            waiting.remove(one);
        }
    }
}
