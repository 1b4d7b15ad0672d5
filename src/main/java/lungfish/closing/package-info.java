/** What the others do when some outlets are shut and no other valve is touched: retune or not, and what the bleed could do. */
@NullMarked
package lungfish.closing;

import org.jspecify.annotations.NullMarked;
