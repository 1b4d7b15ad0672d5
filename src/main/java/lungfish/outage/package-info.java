/** What happens when the air stops: what fails, what runs meanwhile, and the oxygen of every tank until it is mended. */
@NullMarked
package lungfish.outage;

import org.jspecify.annotations.NullMarked;
