/** The open network file {@code air-network-1}, in and out, and the answer of the solver as JSON.
 *  {@link lungfish.networkfile.NetworkReader} tells every problem with its place. */
@NullMarked
package lungfish.networkfile;

import org.jspecify.annotations.NullMarked;
