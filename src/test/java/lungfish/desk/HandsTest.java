package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import lungfish.edit.ClimateEdits;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Real threads: one stands for the event queue of the window. */
@Timeout(60)
final class HandsTest {
    private static final long PATIENCE_S = 30; // far more than any machine needs; only a broken program waits it out

    @TempDir
    Path folder;

    @Test
    void planningRunsBesideTheFrontAndSavesKeepTheProgramAlive() throws Exception {
        Hands hands = Hands.behind(Runnable::run);
        Thread planning = threadOf(hands.planning());
        Thread files = threadOf(hands.disk());
        assertThat(planning.isDaemon()).isTrue();
        assertThat(files.isDaemon()).isFalse();
        assertThat(planning).isNotIn(files, Thread.currentThread());
    }

    private static Thread threadOf(Executor executor) throws Exception {
        FutureTask<Thread> asked = new FutureTask<>(Thread::currentThread);
        executor.execute(asked);
        return asked.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    @Test
    void withRealThreadsTheDeskEndsWithThePlanOfTheLastEdit() throws Exception {
        ExecutorService front = Executors.newSingleThreadExecutor();
        CountDownLatch caughtUp = new CountDownLatch(1);
        FutureTask<Desk> opening = new FutureTask<>(() -> {
            Desk desk = Desks.in(folder, Hands.behind(front)).with("Open", Rooms.small());
            Ear ear = new Ear() {
                @Override
                public void changed() {
                    if (desk.isCurrent() && desk.history().at() == 100) {
                        caughtUp.countDown();
                    }
                }
            };
            desk.addListener(ear);
            for (int kelvin = 251; kelvin <= 350; kelvin++) {
                desk.apply(ClimateEdits.temperatureK(OptionalDouble.of(kelvin)));
            }
            return desk;
        });
        front.execute(opening);
        Desk desk = opening.get(PATIENCE_S, TimeUnit.SECONDS);
        assertThat(caughtUp.await(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        FutureTask<Boolean> last =
                new FutureTask<>(() -> desk.plan().orElseThrow().room().equals(desk.room()));
        front.execute(last);
        assertThat(last.get(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        FutureTask<Boolean> closing = new FutureTask<>(desk::close, true);
        front.execute(closing);
        closing.get(PATIENCE_S, TimeUnit.SECONDS);
        threadOf(desk.shared().hands().disk()); // after whatever closing gave it to do
        front.shutdown();
    }
}
