package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * XDG Base Directory Specification 0.8 for Linux and its kin; the usual folders of the other two, from memory. Paths are
 * those of the system that runs the test.
 */
final class ConfigFolderTest {
    private static final Path HOME = Path.of("home").toAbsolutePath();
    private static final Path SAID = Path.of("said").toAbsolutePath();

    @Test
    void onLinuxItIsTheOneOfTheSpecification() {
        assertThat(ConfigFolder.of("Linux", Map.of(), HOME)).isEqualTo(HOME.resolve(".config/lungfish"));
        assertThat(ConfigFolder.of("Linux", Map.of("XDG_CONFIG_HOME", SAID.toString()), HOME))
                .isEqualTo(SAID.resolve("lungfish"));
    }

    @Test
    void aFolderThatIsNotAbsoluteIsIgnored() {
        assertThat(ConfigFolder.of("Linux", Map.of("XDG_CONFIG_HOME", "here"), HOME))
                .isEqualTo(HOME.resolve(".config/lungfish"));
        assertThat(ConfigFolder.of("Linux", Map.of("XDG_CONFIG_HOME", "\0"), HOME))
                .isEqualTo(HOME.resolve(".config/lungfish"));
    }

    @Test
    void onWindowsItIsAmongTheRoamingData() {
        assertThat(ConfigFolder.of("Windows 11", Map.of("APPDATA", SAID.toString()), HOME))
                .isEqualTo(SAID.resolve("Lungfish"));
        assertThat(ConfigFolder.of("Windows 11", Map.of(), HOME)).isEqualTo(HOME.resolve("AppData/Roaming/Lungfish"));
    }

    @Test
    void onAMacItIsInTheLibrary() {
        assertThat(ConfigFolder.of("Mac OS X", Map.of("XDG_CONFIG_HOME", SAID.toString()), HOME))
                .isEqualTo(HOME.resolve("Library/Application Support/Lungfish"));
    }
}
