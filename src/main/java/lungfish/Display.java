package lungfish;

import java.awt.GraphicsEnvironment;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Whether a window could be shown here. A display that is named but dead, or does not answer, is no display. */
final class Display {
    /** A display on this machine answers in far less; one across a dead network would take minutes to fail. */
    private static final long PATIENCE_S = 10;

    private Display() {}

    /** Asks the display; never throws, and gives up on one that does not answer. */
    static boolean isUsable() {
        FutureTask<Boolean> asking = new FutureTask<>(Display::hasScreens);
        Thread thread = new Thread(asking, "display probe");
        thread.setDaemon(true); // one that hangs must not keep the program from ending
        thread.start();
        try {
            return asking.get(PATIENCE_S, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            return false; // an error of the toolkit, a missing library, or silence: all mean that there is none
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static boolean hasScreens() {
        return !GraphicsEnvironment.isHeadless()
                && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
    }
}
