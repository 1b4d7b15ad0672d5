package lungfish.desk;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.Executor;
import lungfish.roomfile.AtomicSave;

/**
 * What the person prefers, kept in one small file that all windows share. Never a reason to fail: what cannot be read is
 * as if it were not there, and what cannot be written lasts until the program ends.
 */
public final class Preferences {
    private static final System.Logger LOG = System.getLogger(Preferences.class.getName());

    private final Path file;
    private final Executor disk;
    private final Properties now;

    /**
     * Reads the file.
     *
     * @param file may be missing, as may its folder
     * @param disk writes it, one write after the other
     */
    public Preferences(Path file, Executor disk) {
        this.file = file;
        this.disk = disk;
        this.now = read(file);
    }

    /** The value that is preferred, or the default. */
    public <T> T get(Preference<T> preference) {
        return chosen(preference).orElse(preference.byDefault());
    }

    /** The value that is preferred; empty where nothing that can be read is. */
    public <T> Optional<T> chosen(Preference<T> preference) {
        return Optional.ofNullable(now.getProperty(preference.key()))
                .flatMap(text -> preference.reader().apply(text));
    }

    /** Prefers a value from now on. */
    public <T> void set(Preference<T> preference, T value) {
        String text = preference.writer().apply(value);
        if (!text.equals(now.setProperty(preference.key(), text))) {
            disk.execute(() -> write(preference.key(), text));
        }
    }

    /** Another program may have written since: only this one line is changed. */
    private void write(String key, String text) {
        try {
            Properties all = read(file);
            all.setProperty(key, text);
            StringWriter written = new StringWriter();
            all.store(written, "Lungfish");
            Files.createDirectories(file.toAbsolutePath().getParent());
            AtomicSave.onThisDisk().save(file, written.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException | RuntimeException e) {
            LOG.log(System.Logger.Level.WARNING, "preferences could not be written to " + file, e);
        }
    }

    private static Properties read(Path file) {
        Properties all = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            all.load(reader);
            return all;
        } catch (IOException | RuntimeException e) {
            return new Properties(); // no file yet, no rights, not UTF-8, a broken escape: nothing is preferred
        }
    }
}
