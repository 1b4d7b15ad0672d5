package lungfish.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;

/** An executor that does nothing until a test says so. */
final class Queued implements Executor {
    private final Deque<Runnable> work = new ArrayDeque<>();

    @Override
    public void execute(Runnable that) {
        work.add(that);
    }

    int waiting() {
        return work.size();
    }

    void runFirst() {
        work.removeFirst().run();
    }

    void runLast() {
        work.removeLast().run();
    }

    void runAll() {
        while (!work.isEmpty()) {
            runFirst();
        }
    }
}
