/**
 * What an everyday disturbance does to every outlet while no valve is touched, and what to do about it: half a tank drained,
 * sponges cleaned or due, the hatchery on or off, an airline off, valves shut, the mains low, the filter clogged. A trial of a
 * plan solved again.
 */
@NullMarked
package lungfish.everyday;

import org.jspecify.annotations.NullMarked;
