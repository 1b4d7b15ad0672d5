/** The classes of things one buys (devices, airlines, valves, pipes, fittings, blowers, batteries) with typical
 *  values, read once from data files with a source column. No brands, no models. */
@NullMarked
package lungfish.catalogue;

import org.jspecify.annotations.NullMarked;
