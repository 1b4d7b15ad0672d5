package lungfish.network;

import java.util.OptionalDouble;

/**
 * A drop throttled to its target.
 *
 * @param flow its target, with the pressures at its tap
 * @param sparePa pressure at the tap less what the drop needs at its target with its valve fully open; absent without
 *     a target
 * @param tunedValveK setting that burns the spare, 1/m⁴; absent without a target
 */
public record TunedDrop(DropFlow flow, OptionalDouble sparePa, OptionalDouble tunedValveK) {}
