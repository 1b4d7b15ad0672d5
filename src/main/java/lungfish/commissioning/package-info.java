/** The first start, step by step, and what the gauge and the jar should read at each. */
@NullMarked
package lungfish.commissioning;

import org.jspecify.annotations.NullMarked;
