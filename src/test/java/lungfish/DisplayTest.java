package lungfish;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

final class DisplayTest {
    /** Runs in a process of its own and prints what the probe says. */
    static final class Ask {
        private Ask() {}

        public static void main(String[] args) {
            System.out.println(Display.isUsable());
        }
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aDisplayThatIsNamedButDeadIsNone() throws IOException {
        ChildProcess asked = ChildProcess.java(Map.of("DISPLAY", ":54321"), Ask.class);
        assertThat(asked.out()).isEqualTo("false\n");
        assertThat(asked.exit()).isZero();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void withoutAnyDisplayThereIsNone() throws IOException {
        ChildProcess asked = ChildProcess.java(Map.of("DISPLAY", ""), Ask.class);
        assertThat(asked.out()).isEqualTo("false\n");
    }

    @Test
    @NeedsDisplay
    void onALiveDisplayAWindowCanBeMade() {
        Frame frame = new Frame();
        frame.pack();
        assertThat(frame.isDisplayable()).isTrue();
        frame.dispose();
    }
}
