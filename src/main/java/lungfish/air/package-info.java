/** Air, water, friction, fittings, valves, devices, airlift, dissolved oxygen: formulas and cited constants. Pure functions. */
@NullMarked
package lungfish.air;

import org.jspecify.annotations.NullMarked;
