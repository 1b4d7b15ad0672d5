package lungfish.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Answers questions away from the asker. One question waits at most: a newer one takes its place. An answer to an older
 * question never arrives after that to a newer one, however many threads the worker has.
 *
 * @param <Q> question
 * @param <A> answer
 */
final class LatestWins<Q, A> {
    /** A question and its number, counted from 1. */
    private record Asked<Q>(Q question, long number) {}

    private final Function<Q, A> answering;
    private final Executor worker;
    private final Executor front;
    private final BiConsumer<Q, A> answered;
    private final BiConsumer<Q, Throwable> failed;
    private final AtomicReference<@Nullable Asked<Q>> waiting = new AtomicReference<>();
    private long lastAsked;
    private long lastTold;

    /**
     * A worker without a question.
     *
     * @param answering runs in {@code worker}
     * @param answered told in {@code front}
     * @param failed told in {@code front} what {@code answering} threw
     */
    LatestWins(
            Function<Q, A> answering,
            Executor worker,
            Executor front,
            BiConsumer<Q, A> answered,
            BiConsumer<Q, Throwable> failed) {
        this.answering = answering;
        this.worker = worker;
        this.front = front;
        this.answered = answered;
        this.failed = failed;
    }

    /** Asks. Only the front may. */
    void ask(Q question) {
        lastAsked++;
        if (waiting.getAndSet(new Asked<>(question, lastAsked)) == null) {
            worker.execute(this::answerTheNewest);
        }
    }

    private void answerTheNewest() {
        Asked<Q> asked = waiting.getAndSet(null);
        if (asked != null) {
            Runnable news = answer(asked.question());
            front.execute(() -> tell(asked.number(), news));
        }
    }

    /** Whatever is thrown, an exhausted heap or stack too, is the person's to know: the worker lives on. */
    private Runnable answer(Q question) {
        try {
            A answer = answering.apply(question);
            return () -> answered.accept(question, answer);
        } catch (Throwable thrown) {
            return () -> failed.accept(question, thrown);
        }
    }

    private void tell(long number, Runnable news) {
        if (number > lastTold) {
            lastTold = number;
            news.run();
        }
    }
}
