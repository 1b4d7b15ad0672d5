package lungfish.desktop;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The real window in a process of its own, and a person at its keys, who moves the first rack twice. Says what was done when
 * that is on the desk, and waits to be killed.
 */
final class KilledWindow {
    private KilledWindow() {}

    /** The folder of preferences. */
    @SuppressWarnings("resource") // it is killed: nobody closes it
    public static void main(String[] args) {
        Person person = new Person(Path.of(args[0]), Optional.empty());
        RecoveryJourneysTest.editByKeys(person);
        System.out.println(person.<String>see(
                () -> person.pane().view().desk().history().toUndo().orElseThrow()));
    }
}
