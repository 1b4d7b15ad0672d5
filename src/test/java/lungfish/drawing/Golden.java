package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Compares a picture with the one that was looked at and kept. On a difference the new one is saved in
 * {@code target/pictures}, to be looked at and, if it is right, to take the old one's place.
 */
final class Golden {
    /** Edges of letters and lines may be smoothed a little otherwise by another machine's rasteriser. */
    private static final int EDGE = 48;

    /** So much of a picture may differ by more than that: less than one moved word or mark. */
    private static final double MOST_SHARE = 0.002;

    private Golden() {}

    static void check(String name, BufferedImage image) {
        try (InputStream kept = Golden.class.getResourceAsStream(name + ".png")) {
            double share = kept == null ? 1 : differing(ImageIO.read(kept), image);
            if (share > MOST_SHARE) {
                save(name, image);
            }
            assertThat(share)
                    .as("share of pixels that differ; the new one is target/pictures/%s.png", name)
                    .isLessThanOrEqualTo(MOST_SHARE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void save(String name, BufferedImage image) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "pictures"));
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }

    private static double differing(BufferedImage kept, BufferedImage image) {
        if (kept.getWidth() != image.getWidth() || kept.getHeight() != image.getHeight()) {
            return 1;
        }
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += differs(kept.getRGB(x, y), image.getRGB(x, y)) ? 1 : 0;
            }
        }
        return (double) count / ((double) image.getWidth() * image.getHeight());
    }

    private static boolean differs(int one, int other) {
        for (int shift = 0; shift <= 16; shift += 8) {
            if (Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF)) > EDGE) {
                return true;
            }
        }
        return false;
    }
}
