/** Reads and writes {@code *.room.json}; tells every problem at once, with its place; saves atomically. */
@NullMarked
package lungfish.roomfile;

import org.jspecify.annotations.NullMarked;
