/** The front door: opens the window where there is a display, else prints the plan of the same room. */
@NullMarked
package lungfish;

import org.jspecify.annotations.NullMarked;
