package lungfish.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Who does the work.
 *
 * @param front calls the listeners, and is the only one that touches a desk; the window gives its event queue
 * @param planning plans rooms
 * @param disk reads and writes files, one after the other in the order asked
 * @param keeping writes autosaves; as many at once as asked, since one disk may not answer
 * @param ahead answers long questions; what it does may be thrown away
 */
public record Hands(Executor front, Executor planning, Executor disk, Executor keeping, Executor ahead) {
    private static final long IDLE_S = 1;

    /** A thread of its own for each. The program may end in the middle of planning; saves that were asked for are finished. */
    public static Hands behind(Executor front) {
        return new Hands(
                front,
                oneThread("planning", true),
                oneThread("files", false),
                manyThreads("autosaves"),
                manyThreads("ahead"));
    }

    /** All work done at once, by whoever asks. */
    public static Hands ofTheCaller() {
        return new Hands(Runnable::run, Runnable::run, Runnable::run, Runnable::run, Runnable::run);
    }

    /** A thread that ends when it has been idle, so that none keeps the program from ending. */
    private static Executor oneThread(String name, boolean daemon) {
        ThreadPoolExecutor one = new ThreadPoolExecutor(
                1, 1, IDLE_S, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), threads(name, daemon));
        one.allowCoreThreadTimeOut(true);
        return one;
    }

    /** None keeps the program from ending: whoever needs what they do to be done waits for it. */
    private static Executor manyThreads(String name) {
        return new ThreadPoolExecutor(
                0, Integer.MAX_VALUE, IDLE_S, TimeUnit.SECONDS, new SynchronousQueue<>(), threads(name, true));
    }

    private static ThreadFactory threads(String name, boolean daemon) {
        return work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(daemon);
            return thread;
        };
    }

    /** Does work at the disk, and tells the front what came of it. */
    <T> void atTheDisk(Supplier<T> work, Consumer<T> then) {
        disk.execute(() -> {
            T done = work.get();
            front.execute(() -> then.accept(done));
        });
    }
}
