package lungfish.room;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the keeper asks of the plan beyond the outlets' targets.
 *
 * @param growthReserve air to keep in reserve, as a share of what the room needs
 * @param indexSparePa spare pressure that the worst-served outlet should keep
 * @param loudestDba the level that the listener will bear
 * @param runtimeS how long the battery should hold
 * @param jarM3 the jar that the keeper times
 * @param alarmKgPerM3 oxygen in the water at which the keeper wants to be there
 * @param dangerKgPerM3 oxygen below which the fish are lost if nothing is done; less than the alarm level
 * @param order what matters first among blowers; see {@link Wish#whole} for what is not said
 */
public record Wishes(
        OptionalDouble growthReserve,
        OptionalDouble indexSparePa,
        OptionalDouble loudestDba,
        OptionalDouble runtimeS,
        OptionalDouble jarM3,
        OptionalDouble alarmKgPerM3,
        OptionalDouble dangerKgPerM3,
        List<Wish> order) {
    /** Nothing is asked. */
    public static final Wishes NONE = new Wishes(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of());

    /** What a keeper may want of a blower; in the order that counts where nothing is said. */
    public enum Wish {
        /** Keeps the wished reserve, and is no louder than the keeper will bear. */
        RESERVE,
        SMALLEST,
        /** To buy. */
        CHEAPEST,
        QUIETEST,
        /** By the year: energy and rebuilds. */
        CHEAPEST_TO_RUN,
        LONGEST_LIVED;

        /** In the middle of a sentence: "quiet". */
        public String words() {
            return switch (this) {
                case RESERVE -> "reserve";
                case SMALLEST -> "small";
                case CHEAPEST -> "cheap to buy";
                case QUIETEST -> "quiet";
                case CHEAPEST_TO_RUN -> "cheap to run";
                case LONGEST_LIVED -> "long-lived";
            };
        }

        /**
         * All wishes, those that are said in their order. The reserve is what the plan is made for: it stands first unless it
         * is said where. The others follow what is said.
         */
        public static List<Wish> whole(List<Wish> said) {
            Set<Wish> whole = new LinkedHashSet<>();
            if (!said.contains(RESERVE)) {
                whole.add(RESERVE);
            }
            whole.addAll(said);
            whole.addAll(Arrays.asList(values()));
            return List.copyOf(whole);
        }
    }

    public Wishes {
        order = List.copyOf(order);
    }

    /** Wishes that say nothing of the oxygen in the water. */
    public Wishes(
            OptionalDouble growthReserve,
            OptionalDouble indexSparePa,
            OptionalDouble loudestDba,
            OptionalDouble runtimeS,
            OptionalDouble jarM3,
            List<Wish> order) {
        this(
                growthReserve,
                indexSparePa,
                loudestDba,
                runtimeS,
                jarM3,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                order);
    }

    public Wishes withGrowthReserve(OptionalDouble that) {
        return new Wishes(that, indexSparePa, loudestDba, runtimeS, jarM3, alarmKgPerM3, dangerKgPerM3, order);
    }

    public Wishes withIndexSparePa(OptionalDouble that) {
        return new Wishes(growthReserve, that, loudestDba, runtimeS, jarM3, alarmKgPerM3, dangerKgPerM3, order);
    }

    public Wishes withLoudestDba(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, that, runtimeS, jarM3, alarmKgPerM3, dangerKgPerM3, order);
    }

    public Wishes withRuntimeS(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, that, jarM3, alarmKgPerM3, dangerKgPerM3, order);
    }

    public Wishes withJarM3(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, runtimeS, that, alarmKgPerM3, dangerKgPerM3, order);
    }

    /** The same with this alarm level; empty: unknown. */
    public Wishes withAlarmKgPerM3(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, runtimeS, jarM3, that, dangerKgPerM3, order);
    }

    /** The same with this danger level; empty: unknown. */
    public Wishes withDangerKgPerM3(OptionalDouble that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, runtimeS, jarM3, alarmKgPerM3, that, order);
    }

    /** The same with what matters first, second and so on; nothing: as the plan has it. */
    public Wishes withOrder(List<Wish> that) {
        return new Wishes(growthReserve, indexSparePa, loudestDba, runtimeS, jarM3, alarmKgPerM3, dangerKgPerM3, that);
    }
}
