package lungfish.reason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is wrong (or good to know), where, and how to mend it. A value, not a sentence: the sentence stands in
 * {@link Code} and is filled in at the edge, in the units of the reader.
 *
 * @param words further names that fill the sentence, such as the blower meant; each is {@code name=text}
 */
public record Finding(Code code, PartId where, List<Amount> amounts, List<Word> words) {
    /** A name that fills a place in the sentence. */
    public record Word(String name, String text) {}

    public Finding {
        amounts = List.copyOf(amounts);
        words = List.copyOf(words);
    }

    /** A finding with amounts only. */
    public static Finding of(Code code, PartId where, Amount... amounts) {
        return new Finding(code, where, Arrays.asList(amounts), List.of());
    }

    /** The same finding with one more word. */
    public Finding with(String name, String text) {
        List<Word> more = new ArrayList<>(words);
        more.add(new Word(name, text));
        return new Finding(code, where, amounts, more);
    }

    public Severity severity() {
        return code.severity();
    }
}
