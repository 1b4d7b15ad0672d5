package lungfish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** The program as a process of its own. */
final class LungfishTest {
    /** A locale without any letter beyond ASCII, and a display that is named but dead. */
    private static final Map<String, String> BARE = Map.of("LC_ALL", "C", "LANG", "C", "DISPLAY", ":54321");

    private static ChildProcess lungfish(String... args) throws IOException {
        return ChildProcess.java(BARE, Lungfish.class, args);
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void withoutACommandADemoRoomIsPlanned() throws IOException {
        ChildProcess said = lungfish();
        assertThat(said.out())
                .startsWith("Basement rainbows\n")
                .contains("Duty", "Headroom", "Noise", "Backup", "Cost");
        assertThat(said.err()).isEmpty();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void whatItSaysIsUtf8WhateverTheLocale() throws IOException {
        assertThat(lungfish("plan", "garage-killifish").out()).contains(" °C", "●");
        assertThat(lungfish("check", "bl\u00e4h", "--json").out()).contains("\"problems\"");
    }

    @Test
    void theExitCodeReachesWhoeverCalls() throws IOException {
        assertThat(lungfish("demos").exit()).isZero();
        assertThat(lungfish("plan", "nowhere").exit()).isEqualTo(2);
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void whatWouldBeOpenedIsPlannedWhereThereIsNoDisplay() throws IOException {
        assertThat(lungfish("open", "garage-killifish").out()).startsWith("Garage killifish\n");
        assertThat(lungfish("demo-rooms/garage-killifish.room.json").out()).startsWith("Garage killifish\n");
    }

    /** Runs in this process: the operating system hands no such name to another. */
    @Test
    void aNameThatNoFileCanHaveIsToldAsAnyWrongFile() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Lungfish.run(
                new String[] {"open", "a\0b.json"},
                new PrintStream(new ByteArrayOutputStream(), true, UTF_8),
                new PrintStream(err, true, UTF_8));
        assertThat(exit).isEqualTo(2);
        assertThat(err.toString(UTF_8)).contains("Expected a room file").hasLineCount(1);
    }
}
