package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class RecentTest {
    @TempDir
    Path folder;

    private Preferences preferences;

    @BeforeEach
    void nothingIsPreferred() {
        preferences = new Preferences(folder.resolve("preferences"), Runnable::run);
    }

    private Path room(String name) {
        return folder.resolve(name + ".room.json");
    }

    @Test
    void theLatestIsFirstAndEachStandsOnce() {
        List.of("a", "b", "a", "c", "./b").forEach(name -> Recent.add(room(name), preferences));
        assertThat(Recent.files(preferences)).containsExactly(room("b"), room("c"), room("a"));
    }

    @Test
    void theOldestFallsOff() {
        IntStream.rangeClosed(0, Recent.MOST).forEach(i -> Recent.add(room("r" + i), preferences));
        assertThat(Recent.files(preferences)).hasSize(Recent.MOST).doesNotContain(room("r0"));
    }

    @Test
    void namesOfAnyLettersAreFoundAgainNextTime() {
        Path odd = room("Fischkeller \u00fc = # \u9b5a : !");
        Recent.add(odd, preferences);
        assertThat(Recent.files(new Preferences(folder.resolve("preferences"), Runnable::run)))
                .containsExactly(odd);
    }

    @Test
    void theListCanBeForgotten() {
        Recent.add(room("a"), preferences);
        Recent.forget(preferences);
        assertThat(Recent.files(preferences)).isEmpty();
    }
}
