package lungfish.desktop;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A picture with 256 colours: the commonest of those that differ well, then the commonest of the rest. The others, shades at
 * the edges of letters, take the nearest of them.
 */
final class FewColours {
    private static final int COLOURS = 256;
    private static final int WELL = 20 * 20; // square of a distance between two colours

    private FewColours() {}

    static BufferedImage of(BufferedImage image) {
        Map<Integer, Integer> counts = counts(image);
        List<Integer> kept = kept(counts);
        Map<Integer, Integer> places = new HashMap<>();
        counts.keySet().forEach(rgb -> places.put(rgb, nearest(rgb, kept)));
        BufferedImage few =
                new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model(kept));
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                few.getRaster().setSample(x, y, 0, places.getOrDefault(image.getRGB(x, y), 0));
            }
        }
        return few;
    }

    private static Map<Integer, Integer> counts(BufferedImage image) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                counts.merge(image.getRGB(x, y), 1, Integer::sum);
            }
        }
        return counts;
    }

    private static List<Integer> kept(Map<Integer, Integer> counts) {
        List<Integer> commonest = counts.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
        Set<Integer> kept = new LinkedHashSet<>();
        for (int rgb : commonest) {
            if (kept.size() < COLOURS && kept.stream().allMatch(other -> apart(rgb, other) >= WELL)) {
                kept.add(rgb);
            }
        }
        commonest.stream().filter(rgb -> kept.size() < COLOURS).forEach(kept::add);
        return List.copyOf(kept);
    }

    private static IndexColorModel model(List<Integer> kept) {
        int[] rgb = kept.stream().mapToInt(Integer::intValue).toArray();
        return new IndexColorModel(8, rgb.length, rgb, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
    }

    private static int nearest(int rgb, List<Integer> kept) {
        int best = 0;
        for (int i = 1; i < kept.size(); i++) {
            best = apart(rgb, kept.get(i)) < apart(rgb, kept.get(best)) ? i : best;
        }
        return best;
    }

    private static int apart(int one, int other) {
        int sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int by = (one >> shift & 0xFF) - (other >> shift & 0xFF);
            sum += by * by;
        }
        return sum;
    }
}
