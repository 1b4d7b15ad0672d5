/** The open network file {@code air-network-1}, in and out, and the answer of the solver as JSON. */
@NullMarked
package lungfish.networkfile;

import org.jspecify.annotations.NullMarked;
