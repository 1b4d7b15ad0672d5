/** Edits as functions from room to room: each named for what the keeper does. Undo is the list of rooms. */
@NullMarked
package lungfish.edit;

import org.jspecify.annotations.NullMarked;
