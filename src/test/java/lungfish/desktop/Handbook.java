package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * A page of the handbook as it is written by a journey: every step has its sentence, its picture, and the number of actions
 * so far. Written only where {@code -Dlungfish.handbook=docs/handbook} asks for it; otherwise the journey is just gone.
 */
final class Handbook {
    private final Person person;
    private final String page;
    private final StringBuilder text = new StringBuilder();
    private final Optional<Path> folder =
            Optional.ofNullable(System.getProperty("lungfish.handbook")).map(Path::of);
    private int steps;

    Handbook(Person person, String page, String title, String intro) {
        this.person = person;
        this.page = page;
        text.append("# ").append(title).append("\n\n").append(intro).append("\n");
    }

    /** What has just been done, and what is seen then. */
    void step(String sentence) {
        steps++;
        String picture = page + "-" + String.format("%02d", steps) + ".png";
        text.append("\n## ")
                .append(steps)
                .append(". ")
                .append(sentence.replaceAll("\\. .*", "."))
                .append("\n\n");
        text.append(sentence).append(" *").append(count()).append(".*\n\n");
        text.append("![Step ").append(steps).append("](").append(picture).append(")\n");
        folder.ifPresent(into -> paint(into.resolve(picture)));
    }

    private String count() {
        return person.actions() + " actions so far";
    }

    private void paint(Path picture) {
        try {
            Files.createDirectories(picture.getParent());
            ImageIO.write(FewColours.of(person.picture()), "png", picture.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The last words, and the number of actions. */
    void end(String words) {
        text.append("\n").append(words).append(" **").append(person.actions()).append(" actions** in all.\n");
        if (folder.isEmpty()) {
            checkTold();
        }
        folder.ifPresent(into -> {
            try {
                Files.writeString(into.resolve(page + ".md"), text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** What the page in the docs says must still be so. */
    private void checkTold() {
        try {
            assertThat(Files.readString(Path.of("docs/handbook", page + ".md"))).isEqualTo(text.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
