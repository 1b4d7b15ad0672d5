package lungfish.desktop;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Journeys through the real window that begin when the program has just been started for the first time. */
abstract class Journey {
    @TempDir
    Path folder;

    Person person;

    @BeforeEach
    final void start() {
        person = new Person(folder, Optional.empty());
    }

    @AfterEach
    final void leave() {
        person.close();
    }

    final WindowPane pane() {
        return person.pane();
    }
}
