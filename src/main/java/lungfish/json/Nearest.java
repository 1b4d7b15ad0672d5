package lungfish.json;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the names that someone may have meant, by the letters that were changed, left out, added or swapped with
 * their neighbour (Damerau 1964). */
public final class Nearest {
    private static final int LISTED = 12;

    private Nearest() {}

    /** The nearest name, where it is near enough to have been meant. */
    public static Optional<String> of(String written, Collection<String> names) {
        int bearable = Math.max(1, written.length() / 3);
        return names.stream()
                .filter(name -> distance(written, name) <= bearable)
                .min(Comparator.comparingInt((String name) -> distance(written, name))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** What may be written, for a problem: the nearest name first, then the list, cut where it is long. */
    public static String offer(String written, Collection<String> names) {
        if (names.isEmpty()) {
            return "one of those defined in this file, and there are none";
        }
        Optional<String> meant = of(written, names);
        if (meant.isEmpty()) {
            return "one of " + String.join(", ", names);
        }
        String first = '"' + meant.get() + "\" (did you mean that?)";
        return names.size() == 1 ? first : first + ", or one of " + shortened(names);
    }

    private static String shortened(Collection<String> names) {
        String listed = names.stream().limit(LISTED).collect(Collectors.joining(", "));
        return names.size() > LISTED ? listed + ", …" : listed;
    }

    private static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] row = firstRow(b.length());
        for (int i = 1; i <= a.length(); i++) {
            int[] next = new int[b.length() + 1];
            next[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = row[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                next[j] = Math.min(changed, 1 + Math.min(row[j], next[j - 1]));
                if (swapped(a, i, b, j)) {
                    next[j] = Math.min(next[j], 1 + before[j - 2]);
                }
            }
            before = row;
            row = next;
        }
        return row[b.length()];
    }

    private static int[] firstRow(int length) {
        int[] row = new int[length + 1];
        Arrays.setAll(row, j -> j);
        return row;
    }

    private static boolean swapped(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
