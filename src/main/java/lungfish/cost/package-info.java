/** Energy, purchase, wear parts and replacements by year, and the pay-back of the central blower. */
@NullMarked
package lungfish.cost;

import org.jspecify.annotations.NullMarked;
