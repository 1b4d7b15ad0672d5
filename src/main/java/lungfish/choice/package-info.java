/** Which blower, which pipe, and the cheapest build that meets every wish: rooms built otherwise, compared. */
@NullMarked
package lungfish.choice;

import org.jspecify.annotations.NullMarked;
