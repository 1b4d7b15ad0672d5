package lungfish.edit;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a table of cells: nothing is done unless all of it is good, or the keeper takes what is.
 *
 * @param bad every cell that cannot be read, in the order of the table
 * @param good the edit of the good cells alone; empty where there is none
 */
public record Pasted(List<BadCell> bad, Optional<Edit> good) {
    public Pasted {
        bad = List.copyOf(bad);
    }

    /** The edit, where every cell was good. */
    public Optional<Edit> whole() {
        return bad.isEmpty() ? good : Optional.empty();
    }
}
