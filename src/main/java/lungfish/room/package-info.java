/** The room as drawn: immutable records of racks, tanks, outlets, the main, blowers and batteries. No defaults:
 *  absent is absent. */
@NullMarked
package lungfish.room;

import org.jspecify.annotations.NullMarked;
