/** How an answer explains itself: a {@code Finding} says what is wrong, where and how to mend it; a {@code Why}
 *  says which terms add up to a figure. Both hold SI amounts and become sentences only at the edge. */
@NullMarked
package lungfish.reason;

import org.jspecify.annotations.NullMarked;
