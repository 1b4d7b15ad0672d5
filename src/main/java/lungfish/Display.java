package lungfish;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Whether a window could be shown here. A display that is named but dead, or does not answer, is no display. */
final class Display {
    /** A display on this machine answers in far less; one across a dead network would take minutes to fail. */
    private static final long PATIENCE_S = 10;

    private Display() {}

    /** Asks the display; never throws, and gives up on one that does not answer. */
    static boolean isUsable() {
        CompletableFuture<Boolean> answer = new CompletableFuture<>();
        Thread asking = new Thread(() -> answer.complete(answers()), "display probe");
        asking.setDaemon(true); // one that hangs must not keep the program from ending
        asking.start();
        try {
            return answer.get(PATIENCE_S, TimeUnit.SECONDS);
        } catch (TimeoutException | ExecutionException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static boolean answers() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError | LinkageError | InternalError e) {
            return false;
        }
    }
}
