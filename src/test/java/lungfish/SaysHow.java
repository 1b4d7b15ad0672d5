package lungfish;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.nio.charset.Charset;
import java.util.List;

/** A program for tests of the launcher: says how it was started. Ends with the code that its last argument names. */
final class SaysHow {
    private SaysHow() {}

    public static void main(String[] args) {
        List<String> settings = ManagementFactory.getRuntimeMXBean().getInputArguments();
        List<String> collectors = ManagementFactory.getGarbageCollectorMXBeans().stream()
                .map(GarbageCollectorMXBean::getName)
                .toList();
        System.out.println("arguments " + List.of(args));
        System.out.println("settings " + settings);
        System.out.println("collectors " + collectors);
        System.out.println("charset " + Charset.defaultCharset());
        System.exit(args.length == 0 ? 0 : Integer.parseInt(args[args.length - 1]));
    }
}
