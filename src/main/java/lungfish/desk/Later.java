package lungfish.desk;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiFunction;
import lungfish.json.Problem;
import lungfish.plan.Progress;
import org.jspecify.annotations.Nullable;

/**
 * A long question, answered in the background while the room can be drawn on. A newer question stops an older one, and the
 * keeper may stop it too. Touched only by the front executor.
 *
 * @param <Q> question; two that are equal have the same answer
 * @param <A> answer
 */
public final class Later<Q, A> {
    private static final System.Logger LOG = System.getLogger(Later.class.getName());

    /** The front is told of so many steps of progress at most. */
    private static final int TOLD = 100;

    private final Hands hands;
    private final BiFunction<Q, Progress, A> answering;
    private final Runnable changed;
    private final AtomicLong current = new AtomicLong();
    private @Nullable Q asked;
    private @Nullable Q answered;
    private @Nullable A answer;
    private @Nullable Trouble trouble;
    private boolean isRunning;
    private boolean isCurrent;
    private double share;

    /**
     * Nothing asked yet.
     *
     * @param answering runs in the background, and tells its progress
     * @param changed told in the front when there is progress, an answer, or trouble
     */
    public Later(Hands hands, BiFunction<Q, Progress, A> answering, Runnable changed) {
        this.hands = hands;
        this.answering = answering;
        this.changed = changed;
    }

    /** Asks; does nothing where just that was asked last, be it answered, stopped, or under way. */
    public void ask(Q question) {
        if (!question.equals(asked)) {
            again(question);
        }
    }

    /** Asks, even what was asked last. */
    public void again(Q question) {
        long number = current.incrementAndGet();
        asked = question;
        isCurrent = question.equals(answered);
        trouble = null;
        isRunning = true;
        share = 0;
        hands.ahead().execute(() -> work(question, number));
        changed.run();
    }

    /** Asks once more what was asked last, where it was stopped or met trouble. */
    public void goOn() {
        if (asked != null && !isRunning && !isCurrent()) {
            again(asked);
        }
    }

    private void work(Q question, long number) {
        try {
            A found = answering.apply(question, hearing(number));
            front(number, () -> {
                answer = found;
                answered = question;
                isCurrent = true;
                isRunning = false;
            });
        } catch (CancellationException stopped) {
            // a newer question is being answered, or the keeper has stopped it
        } catch (Throwable thrown) {
            LOG.log(System.Logger.Level.ERROR, "a question in the background failed", thrown);
            front(number, () -> {
                trouble = Trouble.of(
                        "This could not be worked out",
                        new Problem(
                                "", "a fault of the program itself (" + thrown + ")", "an answer; the room is kept"));
                isRunning = false;
            });
        }
    }

    private Progress hearing(long number) {
        return new Progress() {
            private int told;

            @Override
            public synchronized void at(int done, int of) {
                if (current.get() != number) {
                    throw new CancellationException();
                }
                int now = (int) ((long) TOLD * done / Math.max(1, of));
                if (now > told) {
                    told = now;
                    front(number, () -> share = (double) now / TOLD);
                }
            }
        };
    }

    private void front(long number, Runnable news) {
        hands.front().execute(() -> {
            if (current.get() == number) {
                news.run();
                changed.run();
            }
        });
    }

    /** Stops what is under way; the last answer stays. */
    public void stop() {
        if (isRunning) {
            current.incrementAndGet();
            isRunning = false;
            changed.run();
        }
    }

    /** The newest answer, be it to an older question. */
    public Optional<A> answer() {
        return Optional.ofNullable(answer);
    }

    /** Whether the answer is that to the question asked last. */
    public boolean isCurrent() {
        return isCurrent; // known since it was asked: a question may be a whole plan, and every cell of a list wants to
        // know
    }

    public boolean isRunning() {
        return isRunning;
    }

    /** How much of the work is done, 0 to 1. */
    public double share() {
        return share;
    }

    /** Why there is no answer and will be none. */
    public Optional<Trouble> trouble() {
        return Optional.ofNullable(trouble);
    }
}
