/** What each outlet needs: least, target and most flow, depth, and turnover through the airlift model. */
@NullMarked
package lungfish.demand;

import org.jspecify.annotations.NullMarked;
