package lungfish.desktop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;

/**
 * How long the program takes to start, as ratios measured in one run, and what it weighs. Run its {@code main} on a display after
 * {@code mvn package}; docs/performance.md has the command. Everything has a class-data archive of its own and the settings of the
 * launcher; the program and what it is held against are started in turn.
 */
final class StartTimes {
    private static final int ROUNDS = 9;
    private static final Path JAR = Path.of("target/lungfish.jar").toAbsolutePath();
    private static final Path SETTINGS = Path.of("target/lungfish.jvm").toAbsolutePath();

    private final Path folder = Files.createTempDirectory("lungfish-start");
    private final Path probe = probe();

    private StartTimes() throws IOException {}

    public static void main(String[] args) throws Exception {
        StartTimes times = new StartTimes();
        times.windows();
        times.weight();
        times.terminal();
    }

    private Path probe() throws IOException {
        Path jar = folder.resolve("probe.jar");
        String entry = StartProbe.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
                InputStream bytes = StartProbe.class.getClassLoader().getResourceAsStream(entry)) {
            out.putNextEntry(new JarEntry(entry));
            if (bytes != null) {
                bytes.transferTo(out);
            }
        }
        return jar;
    }

    private void windows() throws Exception {
        List<String> program =
                archived("program", StartProbe.class.getName(), "program", config(), "basement-rainbows");
        List<String> empty = archived("empty", StartProbe.class.getName(), "empty", config());
        double[] programS = new double[ROUNDS];
        double[] emptyS = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            programS[i] = untilThere(program);
            emptyS[i] = untilThere(empty);
        }
        say("window on basement-rainbows, usable", programS, "empty window", emptyS);
    }

    private void terminal() throws Exception {
        List<String> plan = archived("plan", "lungfish.Lungfish", "plan", "basement-rainbows");
        Path list = libraries(plan);
        List<String> empty = archived("classes", StartProbe.class.getName(), "classes", list.toString());
        double[] planS = new double[ROUNDS];
        double[] emptyS = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            planS[i] = untilEnded(plan);
            emptyS[i] = untilEnded(empty);
        }
        say("plan basement-rainbows in the terminal", planS, "the same libraries loaded", emptyS);
    }

    /** The classes that a command loads, but those of the program. */
    private Path libraries(List<String> command) throws Exception {
        Path log = folder.resolve("loaded.log");
        List<String> logging = new ArrayList<>(command);
        logging.add(1, "-Xlog:class+load:file=" + log);
        untilEnded(logging);
        List<String> names = Files.readAllLines(log).stream()
                .map(line -> line.replaceFirst("^(\\[[^]]*])+ *", "").split(" ", 2)[0])
                .filter(name -> !name.startsWith("lungfish.") && !name.contains("/") && !name.contains("$$"))
                .distinct()
                .toList();
        return Files.write(folder.resolve("libraries.txt"), names);
    }

    private String config() throws IOException {
        return Files.createTempDirectory(folder, "config").toString();
    }

    /** A command line with an archive of the classes that it needed when it ran once. */
    private List<String> archived(String name, String... mainAndArguments) throws Exception {
        Path archive = folder.resolve(name + ".jsa");
        untilEnded(command("-XX:ArchiveClassesAtExit=" + archive, mainAndArguments));
        return command("-XX:SharedArchiveFile=" + archive, mainAndArguments);
    }

    private List<String> command(String setting, String... mainAndArguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "@" + SETTINGS,
                setting,
                "-cp",
                JAR + ":" + probe));
        command.addAll(Arrays.asList(mainAndArguments));
        return command;
    }

    private static double untilThere(List<String> command) throws Exception {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        waitFor(process);
        double s = (System.nanoTime() - start) / 1e9;
        end(process);
        return s;
    }

    private static void waitFor(Process process) throws IOException {
        BufferedReader out = process.inputReader();
        String line = out.readLine();
        while (line != null && !line.equals("there")) {
            line = out.readLine();
        }
        if (line == null) {
            throw new IOException("it ended before its window was there");
        }
    }

    private static void end(Process process) throws Exception {
        try (OutputStream in = process.getOutputStream()) {
            in.write('\n');
        }
        process.waitFor();
    }

    private static double untilEnded(List<String> command) throws Exception {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        end(process);
        return (System.nanoTime() - start) / 1e9;
    }

    /** What lies in memory once the window on the largest demo room can be used. */
    private void weight() throws Exception {
        Process process = new ProcessBuilder(
                        archived("hall", StartProbe.class.getName(), "program", config(), "club-hall"))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        waitFor(process);
        String resident = Files.readAllLines(Path.of("/proc/" + process.pid() + "/status")).stream()
                .filter(line -> line.startsWith("VmRSS") || line.startsWith("VmHWM"))
                .map(line -> line.replaceAll("\\s+", " "))
                .reduce((one, other) -> one + ", " + other)
                .orElse("unknown");
        end(process);
        System.out.println("club-hall, resident: " + resident);
    }

    private static void say(String one, double[] oneS, String other, double[] otherS) {
        Arrays.sort(oneS);
        Arrays.sort(otherS);
        System.out.printf(
                Locale.ROOT,
                "%s: least %.2f s, middle %.2f s; %s: least %.2f s, middle %.2f s; ratio of the least %.2f, of the middle %.2f%n",
                one,
                oneS[0],
                oneS[ROUNDS / 2],
                other,
                otherS[0],
                otherS[ROUNDS / 2],
                oneS[0] / otherS[0],
                oneS[ROUNDS / 2] / otherS[ROUNDS / 2]);
    }
}
