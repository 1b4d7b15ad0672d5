/** Batteries and inverters: runtime at the power where the blower runs, and the battery for a wanted runtime. */
@NullMarked
package lungfish.backup;

import org.jspecify.annotations.NullMarked;
