/**
 * Pages on paper. A page is a list of marks at their places, in points, laid once; the same marks go to a picture, a PDF
 * and a printer. In: cards of {@code report}. Knows no screen and no clock.
 */
@NullMarked
package lungfish.print;

import org.jspecify.annotations.NullMarked;
