package lungfish.drawing;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines of a width, between words; a number keeps its unit. */
public final class Wrapped {
    private Wrapped() {}

    /** A number stays with what follows it, unless that makes a word which no line can hold. */
    private static List<String> words(String text, Font font, double roomPx) {
        List<String> words = new ArrayList<>();
        for (String word : text.split("(?<!\\d) ", -1)) {
            boolean isTooWide = word.indexOf(' ') > 0 && BenchColumns.width(word, font) > roomPx;
            words.addAll(isTooWide ? List.of(word.split(" ", -1)) : List.of(word));
        }
        return words;
    }

    /** The lines; a word that is wider than a line has a line of its own. */
    public static List<String> lines(String text, Font font, double roomPx) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text, font, roomPx)) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (line.length() > 0 && BenchColumns.width(longer, font) > roomPx) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }
}
