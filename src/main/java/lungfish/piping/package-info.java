/** Turns a room's main, taps and drops into a network, and keeps the way back from each element to its part of the
 *  room. Knows no price, no screen. */
@NullMarked
package lungfish.piping;

import org.jspecify.annotations.NullMarked;
