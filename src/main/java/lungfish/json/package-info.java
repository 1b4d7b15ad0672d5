/** JSON text to a tree that keeps places, order and duplicate keys, so that a reader can tell every problem at once
 *  with its JSON Pointer (RFC 6901), what was found and what was expected. Knows no room and no network. */
@NullMarked
package lungfish.json;

import org.jspecify.annotations.NullMarked;
