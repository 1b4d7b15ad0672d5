package lungfish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher for shells, beside a small jar that says how it was started. */
@DisabledOnOs(OS.WINDOWS)
final class LauncherTest {
    private static final Path SOURCES = Path.of("src", "launcher");

    @TempDir
    Path folder;

    private Path here;
    private Path archive;

    @BeforeEach
    void theLauncherLiesBesideAJarInAFolderWithABlank() throws IOException {
        here = Files.createDirectory(folder.resolve("fish room"));
        archive = here.resolve("lungfish.jsa");
        for (String each : List.of("lungfish", "lungfish.jvm")) {
            Files.copy(SOURCES.resolve(each), here.resolve(each));
        }
        assertThat(here.resolve("lungfish").toFile().setExecutable(true)).isTrue();
        writeJar();
    }

    private void writeJar() throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, SaysHow.class.getName());
        String entry = SaysHow.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(here.resolve("lungfish.jar")), manifest);
                InputStream bytes = SaysHow.class.getResourceAsStream("/" + entry)) {
            jar.putNextEntry(new ZipEntry(entry));
            assertThat(bytes).isNotNull();
            bytes.transferTo(jar);
        }
    }

    private static ChildProcess start(Path launcher, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(args));
        return ChildProcess.of(
                Map.of("LC_ALL", "C", "DISPLAY", ":54321", "JAVA_HOME", System.getProperty("java.home")), command);
    }

    private ChildProcess start(String... args) throws IOException {
        return start(here.resolve("lungfish"), args);
    }

    private List<String> filesHere() throws IOException {
        try (Stream<Path> all = Files.list(here)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    /** Without the base archive that most Java machines bring, none of our own can be made. */
    private static void javaCanMakeArchives() {
        assumeTrue(
                Files.exists(Path.of(System.getProperty("java.home"), "lib", "server", "classes.jsa")),
                "this Java has no base archive");
    }

    @Test
    void argumentsAndExitCodePassThrough() throws IOException {
        ChildProcess said = start("plan", "my room.json", "", "'$HOME'", "2");
        assertThat(said.out()).contains("arguments [plan, my room.json, , '$HOME', 2]");
        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).isEmpty();
    }

    @Test
    void itFindsTheJarThroughLinks() throws IOException {
        Path bin = Files.createDirectory(folder.resolve("bin"));
        Path near = Files.createSymbolicLink(bin.resolve("near"), Path.of("..", "fish room", "lungfish"));
        Path far = Files.createSymbolicLink(bin.resolve("far"), near);
        assertThat(start(near, "0").out()).contains("arguments [0]");
        assertThat(start(far, "0").out()).contains("arguments [0]");
    }

    @Test
    void theJavaMachineIsSmallAndReadsUtf8WhateverTheLocale() throws IOException {
        assertThat(start("0").out())
                .contains("-Xmx512m", "charset UTF-8")
                .contains("collectors [Copy, MarkSweepCompact]"); // how the serial collector names its two halves
    }

    @Test
    void withoutJavaItSaysWhatIsMissing() throws IOException {
        ChildProcess said = ChildProcess.of(
                Map.of("JAVA_HOME", here.toString()),
                List.of(here.resolve("lungfish").toString()));
        assertThat(said.exit()).isEqualTo(3);
        assertThat(said.err()).contains("needs Java 17 or later");
    }

    @Test
    void theFirstWindowMakesTheArchiveAndTheNextTakesIt() throws IOException {
        javaCanMakeArchives();
        assertThat(start().out()).contains("-XX:ArchiveClassesAtExit=");
        assertThat(filesHere()).containsExactly("lungfish", "lungfish.jar", "lungfish.jsa", "lungfish.jvm");
        ChildProcess second = start();
        assertThat(second.out()).contains("-XX:SharedArchiveFile=" + archive.toRealPath());
        assertThat(second.err()).isEmpty();
    }

    @Test
    void aCommandMakesNoArchive() throws IOException {
        start("0");
        assertThat(filesHere()).containsExactly("lungfish", "lungfish.jar", "lungfish.jvm");
    }

    @Test
    void theFirstPlanMakesAnArchiveForQuickCommandsAndTheNextTakesIt() throws IOException {
        javaCanMakeArchives();
        assertThat(start("plan", "0").out()).contains("-XX:ArchiveClassesAtExit=");
        assertThat(filesHere()).containsExactly("lungfish", "lungfish-plan.jsa", "lungfish.jar", "lungfish.jvm");
        String taken = "-XX:SharedArchiveFile=" + here.toRealPath().resolve("lungfish-plan.jsa");
        assertThat(start("plan", "1").out()).contains(taken);
        assertThat(start("check", "0").out()).contains(taken);
        assertThat(start("sure", "0").out()).doesNotContain("-XX:SharedArchiveFile=");
    }

    @Test
    void aPlanThatCouldNotBeMadeLeavesNoArchive() throws IOException {
        assertThat(start("plan", "2").exit()).isEqualTo(2);
        assertThat(filesHere()).containsExactly("lungfish", "lungfish.jar", "lungfish.jvm");
    }

    @Test
    void onlyQuickCommandsDoWithoutTheSecondCompiler() throws IOException {
        assertThat(start("plan", "x", "0").out()).contains("-XX:TieredStopAtLevel=1");
        assertThat(start("sure", "x", "0").out()).doesNotContain("-XX:TieredStopAtLevel");
    }

    @Test
    void anArchiveOlderThanTheJarIsMadeAnew() throws IOException {
        javaCanMakeArchives();
        Files.writeString(archive, "of yesterday");
        long jarMs = Files.getLastModifiedTime(here.resolve("lungfish.jar")).toMillis();
        Files.setLastModifiedTime(archive, FileTime.fromMillis(jarMs - 10_000));
        assertThat(start().out()).contains("-XX:ArchiveClassesAtExit=");
        assertThat(archive).content(StandardCharsets.ISO_8859_1).doesNotStartWith("of yesterday");
    }

    @Test
    void anArchiveThatMakesNoSenseDoesNotDisturb() throws IOException {
        Files.writeString(archive, "garbage");
        Files.setLastModifiedTime(here.resolve("lungfish.jar"), FileTime.fromMillis(0));
        ChildProcess said = start("0");
        assertThat(said.out()).startsWith("arguments [0]").contains("-XX:SharedArchiveFile=");
        assertThat(said.exit()).isZero();
    }
}
