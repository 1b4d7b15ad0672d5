package lungfish.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import lungfish.roomfile.AtomicSave;

/**
 * A place for the autosaves of one desk, which are two: the newest, written in haste, which outlives the program; and a
 * somewhat older one that the disk has for certain, which outlives a power cut too. What is done with each is done in the
 * order asked, away from whoever asks.
 */
final class Berth {
    /** How the name of every autosave ends. */
    static final String ENDING = ".autosave";

    private static final String SAFE = ".safe";

    private final Path path;
    private final Path safe;
    private final Executor worker;
    private volatile CompletableFuture<?> last = CompletableFuture.completedFuture(null);
    private volatile CompletableFuture<?> lastSafe = CompletableFuture.completedFuture(null);

    /**
     * A place in a folder.
     *
     * @param beginning of the name
     * @param mark of the desk
     */
    Berth(Path folder, String beginning, String mark, Executor worker) {
        this.path = folder.resolve(beginning + mark + ENDING);
        this.safe = folder.resolve(beginning + mark + SAFE + ENDING);
        this.worker = worker;
    }

    /** Of which desk an autosave is. */
    static String markOf(Path path) {
        String name = String.valueOf(path.getFileName()).replace(SAFE + ENDING, ENDING);
        String whole = name.substring(0, name.length() - ENDING.length());
        return whole.substring(whole.lastIndexOf('.') + 1);
    }

    /** The newest. */
    Path path() {
        return path;
    }

    /** Works on the newest, next. */
    synchronized void then(Runnable work) {
        last = after(last, work);
    }

    /** Writes the one that the disk has for certain; not where that is no longer of use when its turn comes. */
    synchronized void keepSafely(byte[] bytes, BooleanSupplier isOfUse) {
        lastSafe = after(lastSafe, () -> {
            if (isOfUse.getAsBoolean()) {
                save(bytes);
            }
        });
    }

    private void save(byte[] bytes) {
        try {
            AtomicSave.onThisDisk().save(safe, bytes);
        } catch (IOException | RuntimeException e) {
            System.getLogger(Berth.class.getName()).log(System.Logger.Level.WARNING, safe + " was not written", e);
        }
    }

    /** Removes both, the newest last: what is found meanwhile is never older. Not where something new is to be kept by then. */
    synchronized void clear(BooleanSupplier isOfNoUse) {
        lastSafe = after(lastSafe, () -> {
            if (isOfNoUse.getAsBoolean()) {
                delete(safe);
                then(() -> deleteNewest(isOfNoUse));
            }
        });
    }

    private void deleteNewest(BooleanSupplier isOfNoUse) {
        if (isOfNoUse.getAsBoolean()) {
            delete(path);
        }
    }

    private CompletableFuture<?> after(CompletableFuture<?> before, Runnable work) {
        return before.handleAsync(
                (done, thrown) -> {
                    work.run();
                    return true;
                },
                worker);
    }

    void whenSettled(Runnable then) {
        CompletableFuture<?> unused = last.whenComplete((done, thrown) -> then.run());
    }

    /** Waits until all is done with the newest that was asked for, or the time is over; whether it is done. */
    boolean settles(long patienceMs) {
        return settles(last, patienceMs);
    }

    /** The same of both. */
    boolean settlesAll(long patienceMs) {
        return settles(lastSafe, patienceMs)
                && settles(last, patienceMs); // what clears the newest comes by the safe one
    }

    private static boolean settles(CompletableFuture<?> work, long patienceMs) {
        try {
            work.get(patienceMs, TimeUnit.MILLISECONDS);
            return true;
        } catch (ExecutionException e) {
            return true;
        } catch (TimeoutException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Removes a file; one that cannot be removed stays. */
    static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException | RuntimeException e) {
            System.getLogger(Berth.class.getName()).log(System.Logger.Level.WARNING, path + " stays", e);
        }
    }
}
