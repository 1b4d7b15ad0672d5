package lungfish.desktop;

import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.edit.QuickStart;
import lungfish.room.Shell;
import org.jspecify.annotations.Nullable;

/** What has been answered so far to the questions of an empty room, in SI; an answer that was emptied is what it was. */
final class QuickAnswers {
    private static final int TANKS = 12;

    final Answer lengthM = new Answer(0);
    final Answer widthM = new Answer(0);
    final Answer heightM = new Answer(0);
    final Answer tanks = new Answer(TANKS);
    final Answer pumps = new Answer(0);

    private @Nullable Shell begun;

    /** Begins with the walls that a room has, where they are others than it began with before. */
    void beginWith(Shell shell) {
        if (!shell.equals(begun)) {
            begun = shell;
            lengthM.si = shell.lengthM();
            widthM.si = shell.widthM();
            heightM.si = shell.heightM();
        }
    }

    /** One number. */
    static final class Answer {
        private double si;

        Answer(double si) {
            this.si = si;
        }

        OptionalDouble get() {
            return OptionalDouble.of(si);
        }

        void set(OptionalDouble typed) {
            si = typed.orElse(si);
        }
    }

    QuickStart with(TankSize size, DeviceClass device, BlowerClass pump) {
        return new QuickStart(
                QuickStart.shell(lengthM.si, widthM.si, heightM.si),
                (int) tanks.si,
                size,
                device,
                (int) pumps.si,
                pump);
    }
}
