/** The commands: the same planner without a window. */
@NullMarked
package lungfish.terminal;

import org.jspecify.annotations.NullMarked;
