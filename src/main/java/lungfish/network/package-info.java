/** A graph of pipes, drops and sources, and its solver for both questions: tuned (every drop throttled to its
 *  target) and as set (valves as they are). Knows nothing of rooms or fish.
 *
 *  <p>In: a {@link lungfish.network.Network}. Out: an {@link lungfish.network.Answer}, with its residuals or with the
 *  reason why there is none. Flows are free air (the room's pressure and temperature), pressures are gauge unless a
 *  name says otherwise. Begin reading at {@link lungfish.network.Solver}. */
@NullMarked
package lungfish.network;

import org.jspecify.annotations.NullMarked;
