package lungfish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts about which command lines open a room. */
final class AskedTest {
    @TempDir
    private Path folder;

    @Test
    void withoutAWordADemoRoomIsOpened() {
        assertThat(Asked.room()).contains("basement-rainbows");
    }

    @Test
    void aRoomIsOpenedByItsNameOrItsFile() {
        assertThat(Asked.room("open", "club-hall")).contains("club-hall");
        assertThat(Asked.room("open", "my.room.json")).contains("my.room.json");
    }

    /** As desktops hand a file to a program; that it is not there is told by who opens it. */
    @Test
    void aFileAloneIsOpened() throws IOException {
        assertThat(Asked.room("/nowhere/my.room.json")).contains("/nowhere/my.room.json");
        String odd = Files.writeString(folder.resolve("room without an ending"), "{}")
                .toString();
        assertThat(Asked.room(odd)).contains(odd);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "demos", "help", "open", "--help", "--version", "nothing-of-the-sort"})
    void aCommandAnOptionOrAnythingElseIsNoFile(String word) {
        assertThat(Asked.room(word)).isEmpty();
    }

    @Test
    void moreWordsAreACommand() {
        assertThat(Asked.room("plan", "my.room.json")).isEmpty();
        assertThat(Asked.room("open", "--help")).isEmpty();
        assertThat(Asked.room("open", "one.json", "two.json")).isEmpty();
    }

    @Test
    void aNameThatNoFileCanHaveIsNoPath() {
        assertThat(Asked.isPath("a\0b.json")).isFalse();
        assertThat(Asked.isPath("a b.json")).isTrue();
    }
}
