package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Facts about what systems say of their theme. What they write: from their manuals, from memory. */
final class SystemThemeTest {
    @Test
    void macSaysDarkOrNothing() {
        assertThat(SystemTheme.readsMac("Dark\n")).contains(true);
        assertThat(SystemTheme.readsMac("Light\n")).contains(false);
    }

    @Test
    void windowsKeepsANumberThatIsNoughtWhereProgramsAreDark() {
        String said =
                """

                HKEY_CURRENT_USER\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize
                    AppsUseLightTheme    REG_DWORD    0x%d

                """;
        assertThat(SystemTheme.readsWindows(said.formatted(0))).contains(true);
        assertThat(SystemTheme.readsWindows(said.formatted(1))).contains(false);
        assertThat(SystemTheme.readsWindows("ERROR: The system was unable to find the key"))
                .isEmpty();
    }

    /** XDG Desktop Portal, Settings: 0 no preference, 1 prefer dark, 2 prefer light. */
    @Test
    void thePortalSaysANumber() {
        assertThat(SystemTheme.readsPortal("(<<uint32 1>>,)\n")).contains(true);
        assertThat(SystemTheme.readsPortal("(<<uint32 2>>,)\n")).contains(false);
        assertThat(SystemTheme.readsPortal("(<<uint32 0>>,)\n")).isEmpty();
        assertThat(SystemTheme.readsPortal("(<<uint32 16>>,)\n")).isEmpty();
    }

    @Test
    void theDesktopsSettingsSayAWord() {
        assertThat(SystemTheme.readsSettings("'prefer-dark'\n")).contains(true);
        assertThat(SystemTheme.readsSettings("'prefer-light'\n")).contains(false);
        assertThat(SystemTheme.readsSettings("'default'\n")).isEmpty();
    }

    @Test
    void aDarkThemeSaysSoInItsName() {
        assertThat(SystemTheme.isThemeDark("Slate-Dark")).isTrue();
        assertThat(SystemTheme.isThemeDark("Slate")).isFalse();
    }

    @Test
    void everySystemHasSomethingToAsk() {
        assertThat(List.of("Linux", "FreeBSD", "Mac OS X", "Windows 11"))
                .allSatisfy(system -> assertThat(SystemTheme.questions(system)).isNotEmpty());
        assertThat(SystemTheme.questions("Mac OS X").get(0).command()).startsWith("defaults");
        assertThat(SystemTheme.questions("Windows 11").get(0).command()).startsWith("reg");
    }

    @Test
    void aProgramThatIsNotThereSaysNothing() {
        assertThat(SystemTheme.said(List.of("no-such-program-anywhere"))).isEmpty();
    }
}
