package lungfish.desk;

import static lungfish.desk.Preference.RECENT;
import static lungfish.desk.Preference.TEXT_PERCENT;
import static lungfish.desk.Preference.THEME;
import static lungfish.desk.Preference.UNITS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import lungfish.desk.Preference.Theme;
import lungfish.desk.Preference.UnitsShown;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PreferencesTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void aFileInAFolderThatIsNotThereYet() {
        file = folder.resolve("config").resolve("preferences");
    }

    private Preferences preferences() {
        return new Preferences(file, Runnable::run);
    }

    private Preferences of(byte[] bytes) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
        return preferences();
    }

    private static void areAllDefaults(Preferences preferences) {
        assertThat(preferences.get(UNITS)).isEqualTo(UnitsShown.AS_FILED);
        assertThat(preferences.get(THEME)).isEqualTo(Theme.AS_THE_SYSTEM);
        assertThat(preferences.get(TEXT_PERCENT)).isEqualTo(100);
        assertThat(preferences.get(RECENT)).isEmpty();
    }

    @Test
    void withoutAFileEverythingIsAsUsual() {
        areAllDefaults(preferences());
        assertThat(file).doesNotExist();
    }

    @Test
    void whatIsPreferredIsSoTheNextTimeToo() {
        preferences().set(THEME, Theme.DARK);
        preferences().set(TEXT_PERCENT, 150);
        preferences().set(RECENT, List.of(folder.resolve("a"), folder.resolve("b")));
        assertThat(preferences().get(THEME)).isEqualTo(Theme.DARK);
        assertThat(preferences().get(TEXT_PERCENT)).isEqualTo(150);
        assertThat(preferences().get(RECENT)).containsExactly(folder.resolve("a"), folder.resolve("b"));
        assertThat(preferences().get(UNITS)).isEqualTo(UnitsShown.AS_FILED);
    }

    @Test
    void twoProgramsKeepEachOthersLines() {
        Preferences one = preferences();
        Preferences two = preferences();
        one.set(THEME, Theme.DARK);
        two.set(TEXT_PERCENT, 200);
        assertThat(preferences().get(THEME)).isEqualTo(Theme.DARK);
        assertThat(preferences().get(TEXT_PERCENT)).isEqualTo(200);
    }

    @Test
    void linesOfALaterVersionAreKept() throws IOException {
        of("from_the_future=7\n".getBytes(StandardCharsets.UTF_8)).set(THEME, Theme.LIGHT);
        assertThat(file).content().contains("from_the_future=7", "theme=light");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "theme=purple\nunits=7\ntext_percent=99\n",
                "theme=DARK\ntext_percent=201\nrecent=not/absolute\\nnor this\\n\n",
                "text_percent=99999999999\nrecent=a\\u0000b\n",
                "theme=dark\\uZZZZ\n"
            })
    void valuesThatMakeNoSenseAreAsIfNotThere(String text) throws IOException {
        areAllDefaults(of(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void bytesWithoutSenseNeverFail() throws IOException {
        Random random = new Random(20_240_501);
        for (int i = 0; i < 200; i++) {
            byte[] garbage = new byte[random.nextInt(400)];
            random.nextBytes(garbage);
            Preferences preferences = of(garbage);
            areAllDefaults(preferences);
            preferences.set(THEME, Theme.DARK);
            assertThat(preferences().get(THEME)).isEqualTo(Theme.DARK);
        }
    }

    @Test
    void whatCannotBeWrittenLastsUntilTheProgramEnds() throws IOException {
        Files.createDirectories(file); // a folder where the file should be
        Preferences preferences = preferences();
        preferences.set(THEME, Theme.DARK);
        assertThat(preferences.get(THEME)).isEqualTo(Theme.DARK);
        areAllDefaults(preferences());
    }
}
