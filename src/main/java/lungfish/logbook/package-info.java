/** Readings and services over time: trends, when the blower will fall below what the room needs, and what is due for service. */
@NullMarked
package lungfish.logbook;

import org.jspecify.annotations.NullMarked;
