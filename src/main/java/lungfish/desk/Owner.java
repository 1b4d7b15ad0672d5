package lungfish.desk;

import java.io.IOException;
import java.net.InetAddress;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The process that keeps an autosave.
 *
 * @param machine its name
 * @param pid number of the process there; numbers are given again, mostly after a restart of the machine
 * @param since when the process began, where the system says so: tells apart those of one number
 */
record Owner(String machine, long pid, Optional<Instant> since) {
    /** What the system says of one process at two times differs by less: it counts from a start that it rounds. */
    private static final Duration ROUNDED = Duration.ofSeconds(2);

    /** This process. */
    static Owner me() {
        ProcessHandle me = ProcessHandle.current();
        return new Owner(Here.NAME, me.pid(), me.info().startInstant());
    }

    /** Whether it runs on another machine, where nobody here can see if it still does. */
    boolean isElsewhere() {
        return !machine.equals(Here.NAME);
    }

    /** Whether it runs on this machine, now. */
    boolean isLiving() {
        return !isElsewhere()
                && ProcessHandle.of(pid)
                        .filter(ProcessHandle::isAlive)
                        .filter(this::isSame)
                        .isPresent();
    }

    private boolean isSame(ProcessHandle running) {
        Optional<Instant> began = running.info().startInstant();
        return since.isEmpty()
                || began.isEmpty()
                || Duration.between(since.get(), began.get()).abs().compareTo(ROUNDED) < 0;
    }

    /** Asked once, and only when needed: a network that is ill lets one wait for its names. */
    private static final class Here {
        static final String NAME = name();

        private static String name() {
            try {
                return InetAddress.getLocalHost().getHostName();
            } catch (IOException e) {
                return "here"; // no network at all: then nobody else writes into this folder either
            }
        }
    }
}
