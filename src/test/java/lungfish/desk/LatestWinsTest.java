package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
final class LatestWinsTest {
    private static final long PATIENCE_S = 30; // far more than any machine needs; only a broken program waits it out

    private final Queued worker = new Queued();
    private final Queued front = new Queued();
    private final List<String> heard = Collections.synchronizedList(new ArrayList<>());
    private final List<String> answeredInWorker = new ArrayList<>();

    private LatestWins<String, String> answering(UnaryOperator<String> how) {
        return new LatestWins<>(
                how,
                worker,
                front,
                (question, answer) -> heard.add(question + " " + answer),
                (question, thrown) -> heard.add(question + " failed: " + thrown.getMessage()));
    }

    private final LatestWins<String, String> latest = answering(question -> {
        answeredInWorker.add(question);
        return question + "!";
    });

    @Test
    void aQuestionIsAnsweredInTheWorkerAndToldInTheFront() {
        latest.ask("a");
        assertThat(answeredInWorker).isEmpty();
        worker.runAll();
        assertThat(heard).isEmpty();
        front.runAll();
        assertThat(heard).containsExactly("a a!");
    }

    @Test
    void ofQuestionsThatWaitOnlyTheNewestIsAnswered() {
        latest.ask("a");
        latest.ask("b");
        latest.ask("c");
        worker.runAll();
        front.runAll();
        assertThat(heard).containsExactly("c c!");
        assertThat(answeredInWorker).containsExactly("c");
    }

    @Test
    void aQuestionAskedWhileTheWorkerIsBusyIsAnsweredNext() {
        List<LatestWins<String, String>> self = new ArrayList<>();
        self.add(answering(question -> {
            if (question.equals("a")) {
                self.get(0).ask("b");
            }
            return question + "!";
        }));
        self.get(0).ask("a");
        worker.runAll();
        front.runAll();
        assertThat(heard).containsExactly("a a!", "b b!");
    }

    @Test
    void anOlderAnswerThatArrivesLateIsNotTold() {
        latest.ask("a");
        worker.runAll();
        latest.ask("b");
        worker.runAll();
        front.runLast();
        front.runAll();
        assertThat(heard).containsExactly("b b!");
    }

    @Test
    void whatTheWorkerThrowsIsToldAndTheNextQuestionIsAnswered() {
        LatestWins<String, String> breaking = answering(question -> {
            if (question.equals("bad")) {
                throw new StackOverflowError("too deep");
            }
            return question + "!";
        });
        breaking.ask("bad");
        worker.runAll();
        breaking.ask("good");
        worker.runAll();
        front.runAll();
        assertThat(heard).containsExactly("bad failed: too deep", "good good!");
    }

    /** The older one is held back in its thread until the newer has been told. */
    @Test
    void withTwoThreadsTheSlowOlderAnswerNeverReplacesTheNewer() throws InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        ExecutorService oneFront = Executors.newSingleThreadExecutor();
        CountDownLatch slowBegun = new CountDownLatch(1);
        CountDownLatch newerTold = new CountDownLatch(1);
        LatestWins<String, String> racing = new LatestWins<>(
                question -> {
                    if (question.equals("old")) {
                        slowBegun.countDown();
                        await(newerTold);
                    }
                    return question;
                },
                threads,
                oneFront,
                (question, answer) -> {
                    heard.add(answer);
                    newerTold.countDown();
                },
                (question, thrown) -> heard.add("failed"));
        oneFront.execute(() -> racing.ask("old"));
        await(slowBegun);
        oneFront.execute(() -> racing.ask("new"));
        await(newerTold);
        finish(threads);
        finish(oneFront);
        assertThat(heard).containsExactly("new");
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static void finish(ExecutorService threads) throws InterruptedException {
        threads.shutdown();
        assertThat(threads.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
    }
}
