package lungfish.validation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A file of published rows and how an engine computes each kind of them.
 *
 * @param title the section's heading
 * @param note one or two sentences for the reader of the table: what ours is, what to mind
 * @param file in src/test/resources/lungfish/published
 * @param ways from a row's {@code by} to the figure in the row's unit
 */
public record CheckGroup(String title, String note, String file, Map<String, ToDoubleFunction<Inputs>> ways) {
    public CheckGroup {
        ways = Map.copyOf(ways);
    }

    /** A group that cannot compute anything yet. */
    public static CheckGroup of(String title, String note, String file) {
        return new CheckGroup(title, note, file, Map.of());
    }

    /** The same group, computing one more kind of row. */
    public CheckGroup by(String kind, ToDoubleFunction<Inputs> way) {
        Map<String, ToDoubleFunction<Inputs>> more = new LinkedHashMap<>(ways);
        more.put(kind, way);
        return new CheckGroup(title, note, file, more);
    }

    /** Its rows, each with our figure, in the order of the file. */
    List<Comparison> comparisons() {
        return PublishedFile.rows(file).stream().map(this::compare).toList();
    }

    private Comparison compare(PublishedRow row) {
        ToDoubleFunction<Inputs> way = ways.get(row.by());
        if (way == null) {
            throw new IllegalStateException(file + ": nothing computes '" + row.by() + "' of row " + row.id());
        }
        return new Comparison(row, way.applyAsDouble(row.inputs()));
    }
}
