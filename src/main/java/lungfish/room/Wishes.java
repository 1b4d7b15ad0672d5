package lungfish.room;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the keeper asks of the plan beyond the outlets' targets.
 *
 * @param growthReserve air to keep in reserve, as a share of what the room needs
 * @param indexSparePa spare pressure that the worst-served outlet should keep
 * @param loudestDba the level that the listener will bear
 * @param runtimeS how long the battery should hold
 * @param jarM3 the jar that the keeper times
 * @param order what matters first among blowers that fit; the rest follow in their own order
 */
public record Wishes(
        OptionalDouble growthReserve,
        OptionalDouble indexSparePa,
        OptionalDouble loudestDba,
        OptionalDouble runtimeS,
        OptionalDouble jarM3,
        List<Wish> order) {
    /** Nothing is asked. */
    public static final Wishes NONE = new Wishes(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of());

    /** What a keeper may want most. */
    public enum Wish {
        SMALLEST,
        CHEAPEST,
        QUIETEST
    }

    public Wishes {
        order = List.copyOf(order);
    }

    public Wishes withGrowthReserve(OptionalDouble that) {
        return new Wishes(that, indexSparePa, loudestDba, runtimeS, jarM3, order);
    }

    public Wishes withIndexSparePa(OptionalDouble that) {
        return new Wishes(growthReserve, that, loudestDba, runtimeS, jarM3, order);
    }

    public Wishes withLoudestDba(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, that, runtimeS, jarM3, order);
    }

    public Wishes withRuntimeS(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, that, jarM3, order);
    }

    public Wishes withJarM3(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, runtimeS, that, order);
    }
}
