package lungfish.document;

import java.util.List;
import java.util.Optional;

/** One part of a section. */
public sealed interface Part permits Part.Paragraph, Part.Caution, Part.Facts, Part.Grid, Part.Checklist, Part.Picture {
    /** Sentences. */
    record Paragraph(String text) implements Part {}

    /** What can hurt someone, and who must be asked. */
    record Caution(String text) implements Part {}

    /** Figures with what they are, each on a line. */
    record Facts(List<Fact> facts) implements Part {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** One figure: "Blower runs at", "12.4 kPa". */
    record Fact(String what, String said) {}

    /**
     * A table.
     *
     * @param key a short word that stays the same, as for a section
     * @param rows a cell for each column
     * @param totals a last row that adds up; as long as the others
     */
    record Grid(String key, String title, List<Column> columns, List<List<Cell>> rows, Optional<List<Cell>> totals)
            implements Part {
        public Grid {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            totals = totals.map(List::copyOf);
        }
    }

    /** A column of words, which begin at its left, or of figures, which end at its right; its unit stands in its title. */
    record Column(String title, boolean isFigures) {
        public static Column words(String title) {
            return new Column(title, false);
        }

        public static Column figures(String title) {
            return new Column(title, true);
        }
    }

    /**
     * A cell.
     *
     * @param text as it is shown; empty: there is nothing to say
     */
    record Cell(String text) {
        public static final Cell EMPTY = new Cell("");
    }

    /** Steps to do in order, each with a box to tick. */
    record Checklist(List<Step> steps) implements Part {
        public Checklist {
            steps = List.copyOf(steps);
        }
    }

    /**
     * One step.
     *
     * @param key as in the log of the room
     * @param action a few words
     * @param detail how, where; may be empty
     * @param expected what gauge or jar should read then, and by how much it may be off; may be empty
     * @param done the day on which it was done, as it is shown; empty: not yet
     */
    record Step(String key, String action, String detail, String expected, Optional<String> done) {}

    /**
     * A picture.
     *
     * @param figure what it shows
     * @param caption below it; may be empty
     * @param described for those who do not see it
     */
    record Picture(Figure figure, String caption, String described) implements Part {}
}
