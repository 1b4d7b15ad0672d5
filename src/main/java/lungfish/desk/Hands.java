package lungfish.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Who does the work.
 *
 * @param front calls the listeners, and is the only one that touches a desk; the window gives its event queue
 * @param planning plans rooms
 * @param disk reads and writes files, one after the other in the order asked
 */
public record Hands(Executor front, Executor planning, Executor disk) {
    private static final long IDLE_S = 1;

    /** A thread of its own for each. The program may end in the middle of planning; saves that were asked for are finished. */
    public static Hands behind(Executor front) {
        return new Hands(front, oneThread("planning", true), oneThread("files", false));
    }

    /** All work done at once, by whoever asks. */
    public static Hands ofTheCaller() {
        return new Hands(Runnable::run, Runnable::run, Runnable::run);
    }

    /** A thread that ends when it has been idle, so that none keeps the program from ending. */
    private static Executor oneThread(String name, boolean daemon) {
        ThreadPoolExecutor one =
                new ThreadPoolExecutor(1, 1, IDLE_S, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                    Thread thread = new Thread(work, name);
                    thread.setDaemon(daemon);
                    return thread;
                });
        one.allowCoreThreadTimeOut(true);
        return one;
    }
}
