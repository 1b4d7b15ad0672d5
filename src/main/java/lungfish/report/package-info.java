/** A plan as text for people and as JSON for programs, in the units of the reader. */
@NullMarked
package lungfish.report;

import org.jspecify.annotations.NullMarked;
