package lungfish.plan;

import lungfish.network.AsSet;

/**
 * The room run with its valves in two ways, the blower tired and the devices due for cleaning. Pipes and drops are numbered
 * as in the piped room.
 *
 * @param shouldBe every valve at its coarse start, which is how it should be set
 * @param is every valve as the room says
 */
public record Trials(AsSet shouldBe, AsSet is) {}
