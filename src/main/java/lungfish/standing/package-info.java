/** Redundancy: hours a year without air, and what one failure takes, for each way to give a room its air. */
@NullMarked
package lungfish.standing;

import org.jspecify.annotations.NullMarked;
