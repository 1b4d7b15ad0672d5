/** How many more outlets fit before the first limit of any kind breaks, and which limit it is. */
@NullMarked
package lungfish.headroom;

import org.jspecify.annotations.NullMarked;
