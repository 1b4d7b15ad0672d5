/**
 * Compares what the engines compute with values that others have published.
 *
 * <p>Each engine has a {@code …Checks} class beside its tests: a {@link lungfish.validation.CheckGroup} that names a file
 * of published rows (src/test/resources/lungfish/published) and says how the engine computes each kind of row. One line
 * in {@link lungfish.validation.AllChecks} takes it in: its rows become tests, and a section of docs/validation.md.
 */
@NullMarked
package lungfish.validation;

import org.jspecify.annotations.NullMarked;
