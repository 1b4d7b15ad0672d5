/** A graph of pipes, drops and sources, and its solver for both questions: tuned (every drop throttled to its
 *  target) and as set (valves as they are). Knows nothing of rooms or fish. */
@NullMarked
package lungfish.network;

import org.jspecify.annotations.NullMarked;
