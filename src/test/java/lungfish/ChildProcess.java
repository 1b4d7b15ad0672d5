package lungfish;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A program run in a process of its own, to its end: exit code and output, read as UTF-8. */
record ChildProcess(int exit, String out, String err) {
    /** Runs a class with this class path and these variables of the environment; an empty one is taken away. */
    static ChildProcess java(Map<String, String> environment, Class<?> main, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(javaProgram(), "-cp", classPath(), main.getName()));
        command.addAll(List.of(args));
        return of(environment, command);
    }

    /** Runs a command line with these variables of the environment; an empty one is taken away. */
    static ChildProcess of(Map<String, String> environment, List<String> command) throws IOException {
        Path out = Files.createTempFile("lungfish-test-", ".out");
        Path err = Files.createTempFile("lungfish-test-", ".err");
        try {
            return run(command, environment, out, err);
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    private static ChildProcess run(List<String> command, Map<String, String> environment, Path out, Path err)
            throws IOException {
        ProcessBuilder process =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        environment.forEach(process.environment()::put);
        process.environment().values().removeIf(String::isEmpty);
        try {
            int exit = process.start().waitFor();
            return new ChildProcess(exit, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    private static String javaProgram() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** Surefire hides the class path in a jar of its own and tells it apart. */
    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }
}
