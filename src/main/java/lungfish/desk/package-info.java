/** What is open: the current room and its plan, the steps that led there, the file. Plans away from the caller, and the
 *  latest wins. No Swing. */
@NullMarked
package lungfish.desk;

import org.jspecify.annotations.NullMarked;
