/** Oxygen of a tank: what lives in it uses, what surface, stirring and bubbles bring; in balance, and over time. */
@NullMarked
package lungfish.oxygen;

import org.jspecify.annotations.NullMarked;
