/** The small pumps as they are, beside the central blower. */
@NullMarked
package lungfish.today;

import org.jspecify.annotations.NullMarked;
