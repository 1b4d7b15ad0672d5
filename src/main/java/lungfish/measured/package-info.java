/** The room as measured: fits what is uncertain to what the keeper read, says what most likely changed, how sure that is, and
 *  which reading would tell most next. */
@NullMarked
package lungfish.measured;

import org.jspecify.annotations.NullMarked;
