package lungfish.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the names that someone may have meant, by the number of letters that differ (Levenshtein 1966). */
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
        String meant = of(written, names)
                .map(name -> "\"" + name + "\" (did you mean that?)")
                .orElse("");
        if (names.isEmpty()) {
            return "one of those defined in this file, and there are none";
        }
        List<String> listed =
                names.stream().limit(meant.isEmpty() ? names.size() : LISTED).toList();
        String all = listed.stream().collect(Collectors.joining(", "));
        String rest = listed.size() < names.size() ? ", …" : "";
        return meant.isEmpty() ? "one of " + all : meant + ", or one of " + all + rest;
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swapped = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(swapped, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
