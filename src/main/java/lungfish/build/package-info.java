/** What is bought, cut, drilled and set to build the room as drawn: parts, cuts packed into stock lengths, taps along each run, the
 *  place of the blower and what is fitted to it. */
@NullMarked
package lungfish.build;

import org.jspecify.annotations.NullMarked;
