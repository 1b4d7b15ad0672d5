package lungfish.terminal;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.json.Nearest;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.outage.Failing;

/** What fails, as one writes it: "mains", "blower:central". */
final class FailWord {
    static final String MAINS = "mains";

    private static final char BETWEEN = ':';
    private static final int LISTED = 12;

    private FailWord() {}

    /**
     * What a word means.
     *
     * @param possible all that can fail in the room
     */
    static Reading<Failing> read(String word, List<Failing> possible) {
        return possible.stream()
                .filter(failing -> of(failing).equals(word))
                .findFirst()
                .map(Reading::of)
                .orElseGet(() -> refused(word, possible));
    }

    /** How one writes it. */
    static String of(Failing failing) {
        String kind = kind(failing.kind());
        return failing.kind() == Failing.Kind.MAINS
                ? kind
                : kind + BETWEEN + failing.part().id();
    }

    private static String kind(Failing.Kind kind) {
        return switch (kind) {
            case MAINS -> MAINS;
            case CIRCUIT_TRIPS -> "circuit";
            case BLOWER_STOPS -> "blower";
            case BRANCH_SHUT -> "branch";
            case CHECK_VALVE_STUCK -> "check";
            case AIRLINE_OFF -> "airline";
            case HOSE_OFF -> "hose";
        };
    }

    private static Reading<Failing> refused(String word, List<Failing> possible) {
        String found = "--fail is '" + word + "', and nothing in this room that can fail is called so";
        return Reading.refused(List.of(new Problem("", found, expected(word, possible))));
    }

    private static String expected(String word, List<Failing> possible) {
        int end = word.indexOf(BETWEEN);
        String kind = word.substring(0, end < 0 ? word.length() : end).toLowerCase(Locale.ROOT);
        boolean isKnown =
                Arrays.stream(Failing.Kind.values()).anyMatch(each -> kind(each).equals(kind));
        List<String> words = possible.stream()
                .map(FailWord::of)
                .filter(each -> !isKnown || each.startsWith(kind + BETWEEN))
                .toList();
        if (isKnown && words.isEmpty()) {
            return "something else: this room has no such part (" + MAINS + ", or " + kinds(possible) + ")";
        }
        return isKnown ? offered(word, words) : MAINS + ", or " + kinds(possible);
    }

    private static String offered(String word, List<String> words) {
        Optional<String> meant = Nearest.of(word, words);
        String more = words.size() > LISTED ? " and " + (words.size() - LISTED) + " more" : "";
        String list = words.stream().limit(LISTED).collect(Collectors.joining(", ")) + more;
        return meant.map(near -> "'" + near + "' (did you mean that?), or one of " + list)
                .orElse("one of " + list);
    }

    /** An example of each kind that the room has. */
    private static String kinds(List<Failing> possible) {
        Set<Failing.Kind> seen = new LinkedHashSet<>(Set.of(Failing.Kind.MAINS));
        return possible.stream()
                .filter(failing -> seen.add(failing.kind()))
                .map(FailWord::of)
                .collect(Collectors.joining(", "));
    }
}
