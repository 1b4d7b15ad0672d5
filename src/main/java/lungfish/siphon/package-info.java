/** The ways that water could take when the air stops: out of a tank by an airline without a check valve, along the pipe, and
 *  down into a lower tank or a machine. In: a {@code PipedRoom}, or the small pumps. Hydrostatics alone; every doubt falls to
 *  the side of water that runs. */
@NullMarked
package lungfish.siphon;

import org.jspecify.annotations.NullMarked;
