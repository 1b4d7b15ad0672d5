/** A blower class or an own machine, worn, at this altitude, behind its filter and silencer, becomes a source curve,
 *  watts and a level. Knows no pipe. */
@NullMarked
package lungfish.blower;

import org.jspecify.annotations.NullMarked;
