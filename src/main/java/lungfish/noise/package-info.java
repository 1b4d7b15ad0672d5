/** Sound levels at the listener: today's pumps against the planned blower. */
@NullMarked
package lungfish.noise;

import org.jspecify.annotations.NullMarked;
