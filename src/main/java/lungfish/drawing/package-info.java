/** Small painters on {@code Graphics2D}: the room from above, a rack from its front, the pictures of the side panels.
 *  The same for screen, picture and print. Knows no Swing, and computes nothing. */
@NullMarked
package lungfish.drawing;

import org.jspecify.annotations.NullMarked;
