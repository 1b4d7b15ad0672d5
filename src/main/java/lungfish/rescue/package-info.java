/**
 * What keeps the tanks alive: every means tried in the drill itself, the cheapest set of them, and which filter beside the air
 * may go.
 */
@NullMarked
package lungfish.rescue;

import org.jspecify.annotations.NullMarked;
