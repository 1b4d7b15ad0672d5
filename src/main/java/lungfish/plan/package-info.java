/** One room, once, everything that is live: {@code Planner.plan(room)} gives one immutable {@code Plan}. */
@NullMarked
package lungfish.plan;

import org.jspecify.annotations.NullMarked;
