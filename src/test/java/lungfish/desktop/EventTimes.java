package lungfish.desktop;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The event queue, timed: how long each event of the event thread took, by the clock and in processor time of that thread. On a
 * machine that does other work too, the clock also counts what others took; the processor time does not. Counts into a fixed
 * number of bins, so that it does not grow with what it counts.
 */
final class EventTimes extends EventQueue {
    /** So long may nothing hold up the window, ms. */
    static final double MOST_MS = 100;

    private static final double NS_PER_MS = 1e6;
    private static final int KEPT = 12;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** An event that took long: what it was, what the hand was doing then, and where the thread was found. */
    record Slow(double ms, double cpuMs, String event, String doing, String found) {}

    private Bins clock = new Bins();
    private Bins cpu = new Bins();
    private final List<Slow> slow = new ArrayList<>();
    private final Map<String, Integer> causes = new TreeMap<>();
    private final LookAtSlow look = new LookAtSlow();
    private volatile String doing = "opening";
    private volatile boolean isPaused = true;

    /** Pushed over the queue that is there. */
    static EventTimes here() {
        EventTimes times = new EventTimes();
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(times);
        times.look.start();
        return times;
    }

    /** What is done from now on, to be told beside what took long. */
    void doing(String that) {
        doing = that;
    }

    /** Nothing counts while the memory is cleaned for a measurement. */
    void pause(boolean paused) {
        isPaused = paused;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        boolean isCounted = !isPaused;
        String then = doing;
        long began = System.nanoTime();
        long beganCpu = THREADS.getCurrentThreadCpuTime();
        look.begins(Thread.currentThread(), began);
        try {
            super.dispatchEvent(event);
        } finally {
            double cpuMs = (THREADS.getCurrentThreadCpuTime() - beganCpu) / NS_PER_MS;
            double ms = (System.nanoTime() - began) / NS_PER_MS;
            String found = look.ends();
            if (isCounted && !isPaused) {
                count(new Slow(ms, cpuMs, event.getClass().getSimpleName(), then, found));
            }
        }
    }

    private synchronized void count(Slow one) {
        clock.add(one.ms);
        cpu.add(one.cpuMs);
        if (one.ms > MOST_MS) {
            causes.merge(one.doing, one.cpuMs > MOST_MS ? 1 : 0, Integer::sum);
            slow.add(one);
            slow.sort(Comparator.comparingDouble(Slow::cpuMs).reversed());
            if (slow.size() > KEPT) {
                slow.remove(KEPT);
            }
        }
    }

    /** Counts anew. */
    synchronized void forget() {
        clock = new Bins();
        cpu = new Bins();
        slow.clear();
        causes.clear();
    }

    /** The table, and the slowest. */
    synchronized String report() {
        StringBuilder text = new StringBuilder(
                """
                | events of the event thread | count | 50 % | 99 % | 99.9 % | most | over 100 ms |
                | --- | ---: | ---: | ---: | ---: | ---: | ---: |
                """);
        text.append(clock.row("ms by the clock")).append(cpu.row("ms of processor time"));
        text.append("over 100 ms of processor time: ").append(causes).append("\n");
        for (Slow one : slow) {
            text.append(String.format(
                    Locale.ROOT,
                    "slow: %.0f ms, %.0f of the processor, %s while: %s%n%s",
                    one.ms,
                    one.cpuMs,
                    one.event,
                    one.doing,
                    one.found));
        }
        return text.toString();
    }

    /** How often which time was seen, to a tenth of a millisecond. */
    private static final class Bins {
        private static final int PER_MS = 10;
        private final int[] counts = new int[3000 * PER_MS];
        private int count;
        private int over;
        private double most;

        void add(double ms) {
            counts[Math.min(counts.length - 1, (int) (ms * PER_MS))]++;
            count++;
            over += ms > MOST_MS ? 1 : 0;
            most = Math.max(most, ms);
        }

        private double atMost(double share) {
            long rank = (long) Math.ceil(share * count);
            int bin = 0;
            for (long seen = counts[0]; seen < rank; seen += counts[bin]) {
                bin++;
            }
            return (bin + 1.0) / PER_MS;
        }

        String row(String what) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %.1f | %.1f | %.1f | %.1f | %d |%n",
                    what,
                    count,
                    atMost(0.5),
                    atMost(0.99),
                    atMost(0.999),
                    most,
                    over);
        }
    }

    /** Looks where the event thread is when an event takes long: that tells what is to be mended. */
    private static final class LookAtSlow extends Thread {
        private static final long EACH_MS = 15;
        private static final double LONG_MS = 70;
        private static final int LINES = 14;

        private @Nullable Thread busy;
        private long beganNs;
        private String found = "";

        LookAtSlow() {
            super("look at what is slow");
            setDaemon(true);
        }

        synchronized void begins(Thread thread, long now) {
            busy = thread;
            beganNs = now;
            found = "";
        }

        synchronized String ends() {
            busy = null;
            return found;
        }

        private synchronized void look() {
            Thread thread = busy;
            if (thread != null && found.isEmpty() && (System.nanoTime() - beganNs) / NS_PER_MS > LONG_MS) {
                StringBuilder lines = new StringBuilder();
                StackTraceElement[] stack = thread.getStackTrace();
                int told = 0;
                for (int i = 0; i < stack.length && told < LINES; i++) {
                    boolean isOurs = stack[i].getClassName().startsWith("lungfish");
                    if (i < 2 || isOurs) {
                        lines.append("    ").append(stack[i]).append('\n');
                        told++;
                    }
                }
                found = lines.toString();
            }
        }

        @Override
        public void run() {
            try {
                while (true) {
                    Thread.sleep(EACH_MS);
                    look();
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
