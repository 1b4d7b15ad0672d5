package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BiFunction;
import lungfish.plan.Progress;
import org.junit.jupiter.api.Test;

/** Work in the background waits in a queue here, so that a test can say what happens before it and after it. */
final class LaterTest {
    private final Queued work = new Queued();
    private final Hands hands = new Hands(Runnable::run, Runnable::run, Runnable::run, Runnable::run, work);
    private final List<Double> shares = new ArrayList<>();

    @Test
    void anAnswerComesWhenTheWorkIsDone() {
        Later<String, Integer> later = later((question, progress) -> question.length());
        later.ask("loop");
        assertThat(later.isRunning()).isTrue();
        assertThat(later.answer()).isEmpty();
        workOff();
        assertThat(later.answer()).contains(4);
        assertThat(later.isCurrent()).isTrue();
        assertThat(later.isRunning()).isFalse();
    }

    @Test
    void theSameQuestionIsWorkedOutOnce() {
        Later<String, Integer> later = later((question, progress) -> question.length());
        later.ask("loop");
        later.ask("loop");
        assertThat(work.waiting()).isEqualTo(1);
    }

    @Test
    void aNewerQuestionStopsTheOlder() {
        Later<String, Integer> later = later(LaterTest::inTenSteps);
        later.ask("loop");
        later.ask("branch");
        workOff();
        assertThat(later.answer()).contains(6);
        assertThat(shares.stream().filter(share -> share == 0.5)).hasSize(1); // of the newer one
    }

    @Test
    void theOlderAnswerStaysUntilTheNewerIsThere() {
        Later<String, Integer> later = later((question, progress) -> question.length());
        later.ask("loop");
        workOff();
        later.ask("branch");
        assertThat(later.answer()).contains(4);
        assertThat(later.isCurrent()).isFalse();
    }

    /** A question may be a whole plan, and every cell of a list asks whether its answer is current. */
    @Test
    void toLookAtAnAnswerComparesNoQuestions() {
        Counted question = new Counted();
        Later<Counted, Integer> later = new Later<>(hands, (asked, progress) -> 1, () -> {});
        later.ask(new Counted());
        workOff();
        later.ask(question);
        workOff();
        int before = question.compared;
        assertThat(later.isCurrent()).isTrue();
        assertThat(later.isCurrent()).isTrue();
        assertThat(question.compared).isEqualTo(before);
    }

    @Test
    void anAnswerThatIsThereAlreadyIsCurrentWhileItIsAskedAgain() {
        Later<String, Integer> later = later((question, progress) -> question.length());
        later.ask("loop");
        workOff();
        later.again("loop");
        assertThat(later.isCurrent()).isTrue();
        later.ask("branch");
        assertThat(later.isCurrent()).isFalse();
    }

    /** Counts how often it is compared. */
    private static final class Counted {
        private int compared;

        @Override
        public boolean equals(Object other) {
            compared++;
            return this == other;
        }

        @Override
        public int hashCode() {
            return 1;
        }
    }

    @Test
    void whatIsStoppedGivesNoAnswerAndIsNotAskedAgain() {
        Later<String, Integer> later = later(LaterTest::inTenSteps);
        later.ask("loop");
        later.stop();
        workOff();
        assertThat(later.answer()).isEmpty();
        assertThat(later.isRunning()).isFalse();
        later.ask("loop");
        assertThat(work.waiting()).isZero();
    }

    @Test
    void whatWasStoppedCanBeAskedAnew() {
        Later<String, Integer> later = later(LaterTest::inTenSteps);
        later.ask("loop");
        later.stop();
        later.again("loop");
        workOff();
        assertThat(later.answer()).contains(4);
    }

    @Test
    void whatWasStoppedGoesOnWithTheSameQuestion() {
        Later<String, Integer> later = later((question, progress) -> question.length());
        later.goOn(); // nothing was asked
        later.ask("loop");
        later.goOn(); // under way already
        assertThat(work.waiting()).isEqualTo(1);
        later.stop();
        workOff();
        later.goOn();
        workOff();
        assertThat(later.answer()).contains(4);
        later.goOn(); // answered already
        assertThat(work.waiting()).isZero();
    }

    @Test
    void progressIsToldAsAShareOfTheWork() {
        later(LaterTest::inTenSteps).ask("loop");
        workOff();
        assertThat(shares).contains(0.1, 0.5, 0.9);
    }

    @Test
    void aFaultIsToldAndTheNextQuestionIsAnswered() {
        Later<String, Integer> later = later((question, progress) -> {
            if (question.isEmpty()) {
                throw new IllegalStateException("nothing asked");
            }
            return question.length();
        });
        later.ask("");
        workOff();
        assertThat(later.trouble()).isPresent();
        assertThat(later.isRunning()).isFalse();
        later.ask("loop");
        assertThat(later.trouble()).isEmpty();
        workOff();
        assertThat(later.answer()).contains(4);
    }

    @Test
    void theWorkerHearsThatItIsStoppedByAnException() {
        List<Boolean> stopped = new ArrayList<>();
        Later<String, Integer> later = later((question, progress) -> {
            try {
                progress.at(1, 2);
            } catch (CancellationException stop) {
                stopped.add(true);
                throw stop;
            }
            return 0;
        });
        later.ask("loop");
        later.stop();
        workOff();
        assertThat(stopped).containsExactly(true);
    }

    private static int inTenSteps(String question, Progress progress) {
        for (int i = 1; i <= 10; i++) {
            progress.at(i, 10);
        }
        return question.length();
    }

    private Later<String, Integer> later(BiFunction<String, Progress, Integer> answering) {
        Shares told = new Shares();
        Later<String, Integer> later = new Later<>(hands, answering, told::hear);
        told.of = later;
        return later;
    }

    /** Writes down each share that is told. */
    private final class Shares {
        private Later<String, Integer> of = new Later<>(hands, (question, progress) -> 0, () -> {});

        private void hear() {
            shares.add(of.share());
        }
    }

    private void workOff() {
        work.runAll();
    }
}
