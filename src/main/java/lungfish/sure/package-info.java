/** How sure the answers are: inputs with spreads, sampled, and what they do to headroom, running point and stages. */
@NullMarked
package lungfish.sure;

import org.jspecify.annotations.NullMarked;
