package lungfish.drawing;

import java.util.List;
import lungfish.sizing.Candidate;

/**
 * What is shown of one blower in a list.
 *
 * @param figures as they are shown, one for each column
 * @param titles what each is, for where there is no room for columns
 * @param isTaken whether the plan runs on it
 * @param isMarked whether it is to be compared
 */
public record BenchLine(
        Candidate candidate,
        String name,
        List<String> figures,
        List<String> titles,
        String reason,
        boolean isTaken,
        boolean isMarked) {
    public BenchLine {
        figures = List.copyOf(figures);
        titles = List.copyOf(titles);
    }

    /** The same, to be compared or not. */
    public BenchLine marked(boolean that) {
        return new BenchLine(candidate, name, figures, titles, reason, isTaken, that);
    }

    /** The figures in one sentence: "Reserve, tired 31 % · Level 42 dB(A)". */
    String inWords() {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < figures.size(); i++) {
            words.append(i == 0 ? "" : " · ").append(titles.get(i)).append(' ').append(figures.get(i));
        }
        return words.toString();
    }
}
