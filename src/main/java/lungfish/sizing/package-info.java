/** What the room needs, where a blower would run, and the verdict on every candidate with the limit it breaks. */
@NullMarked
package lungfish.sizing;

import org.jspecify.annotations.NullMarked;
