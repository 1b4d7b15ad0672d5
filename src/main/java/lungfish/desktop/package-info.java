/** The window. The only package that knows Swing; it computes nothing and plans nothing. */
@NullMarked
package lungfish.desktop;

import org.jspecify.annotations.NullMarked;
