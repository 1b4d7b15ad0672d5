/** Where along the pipe more outlets fit, and which stage of the keeper's plans breaks what. */
@NullMarked
package lungfish.growth;

import org.jspecify.annotations.NullMarked;
