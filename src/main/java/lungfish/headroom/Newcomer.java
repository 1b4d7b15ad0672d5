package lungfish.headroom;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lungfish.catalogue.DeviceClass;
import lungfish.demand.Need;

/**
 * An outlet that might be hung on. Its valve, airline, check valve and water are those of one that is there.
 *
 * @param like the outlet that is there
 * @param depthM of its air release below the water line
 * @param targetM3PerS free air that it should get
 */
public record Newcomer(Need like, DeviceClass device, double depthM, double targetM3PerS) {
    private static final Comparator<Need> DEEPEST = Comparator.comparingDouble(
                    (Need need) -> need.depthM().si())
            .thenComparingDouble(need -> need.targetM3PerS().si());

    /** Another one just like it. */
    public static Newcomer like(Need need) {
        return new Newcomer(
                need, need.device(), need.depthM().si(), need.targetM3PerS().si());
    }

    /**
     * One like those that most outlets are: of the commonest device, at its deepest, and of equally deep ones the most
     * thirsty.
     *
     * @param needs one or more
     */
    public static Newcomer commonest(List<Need> needs) {
        Map<String, Long> counts = needs.stream()
                .collect(Collectors.groupingBy(need -> need.device().id(), Collectors.counting()));
        Comparator<Need> byCount = Comparator.comparingLong(
                need -> counts.getOrDefault(need.device().id(), 0L));
        return like(needs.stream()
                .max(byCount.thenComparing((Need need) -> need.device().id()).thenComparing(DEEPEST))
                .orElseThrow());
    }

    /**
     * One of a kind. Where the room has that kind, it is like the deepest of them; else like the commonest outlet, at its
     * depth, with the air that is typical of the kind.
     *
     * @param needs one or more
     * @param depthM absent: as said above
     */
    public static Newcomer of(List<Need> needs, DeviceClass device, OptionalDouble depthM) {
        Optional<Need> there = needs.stream()
                .filter(need -> need.device().id().equals(device.id()))
                .max(DEEPEST);
        Newcomer usual =
                there.map(Newcomer::like).orElseGet(() -> commonest(needs).with(device, device.typicalM3PerS()));
        return depthM.isPresent()
                ? new Newcomer(usual.like, usual.device, depthM.getAsDouble(), usual.targetM3PerS)
                : usual;
    }

    /** Whether it is just like the one that is there. */
    boolean isLikeThere() {
        return equals(like(like));
    }

    private Newcomer with(DeviceClass other, double target) {
        return new Newcomer(like, other, depthM, target);
    }
}
