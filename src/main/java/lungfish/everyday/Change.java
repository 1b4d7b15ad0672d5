package lungfish.everyday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import lungfish.blower.Accessories;
import lungfish.blower.LowMains;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Drop;
import lungfish.piping.PipedRoom;
import lungfish.sizing.Fleet;

/** What a disturbance changes in a network: the drops before it, the drops after it, and the machines after it. */
final class Change {
    private static final double HALF = 0.5;

    private final Disturbance disturbance;
    private final PipedRoom piped;

    Change(Disturbance disturbance, PipedRoom piped) {
        this.disturbance = disturbance;
        this.piped = piped;
    }

    Disturbance disturbance() {
        return disturbance;
    }

    /** Whether it happens to this outlet; to none where it happens to the blower. */
    boolean hits(Need need) {
        return disturbance.outlets().contains(need.id());
    }

    /** The drop as it stood when nothing had happened yet. */
    Drop before(Need need, Drop asSet) {
        return switch (disturbance.kind()) {
            case HATCHERY_ON -> hits(need) ? asSet.withValveK(Drop.SHUT_K) : asSet;
            case DUE -> piped.inState(asSet, need, Upkeep.CLEAN);
            case HALF_DRAIN, CLEANED, HATCHERY_OFF, AIRLINE_OFF, SHUT, MAINS_LOW, FILTER_CLOGGED -> asSet;
        };
    }

    /**
     * The drop once it has happened.
     *
     * @param asSet its valve as it was
     * @param startK its valve at its coarse start, which one that is filed as shut is opened to
     */
    Drop after(Need need, Drop asSet, double startK) {
        if (!hits(need)) {
            return before(need, asSet);
        }
        return switch (disturbance.kind()) {
            case HALF_DRAIN -> halfDrained(need, asSet);
            case CLEANED -> piped.inState(asSet, need, Upkeep.CLEAN);
            case HATCHERY_OFF, SHUT -> asSet.withValveK(Drop.SHUT_K);
            case HATCHERY_ON -> asSet.valveK() >= Drop.SHUT_K ? asSet.withValveK(startK) : asSet;
            case AIRLINE_OFF -> blowingOff(asSet);
            case DUE, MAINS_LOW, FILTER_CLOGGED -> asSet;
        };
    }

    private Drop halfDrained(Need need, Drop asSet) {
        return piped.atDepth(asSet, need, Math.max(0, leftM(need)));
    }

    /** Water over an air release once half of the tank's water is gone, m; below 0: it lies in the open. */
    static double leftM(Need need) {
        return need.depthM().si() - HALF * need.seat().tank().waterDepthM();
    }

    /** The airline hangs beside the tank: valve and airline, and no device, check valve or water behind them. */
    static Drop blowingOff(Drop drop) {
        return new Drop(
                drop.id(),
                drop.node(),
                drop.valveK(),
                drop.valveKOpen(),
                drop.airline(),
                Optional.empty(),
                Optional.empty(),
                0,
                drop.targetM3PerS());
    }

    /** The machines once it has happened. */
    Fleet fleet(Fleet before) {
        return switch (disturbance.kind()) {
            case MAINS_LOW -> before.with(LowMains::of);
            case FILTER_CLOGGED -> before.fitted(Accessories::clogged);
            case HALF_DRAIN, CLEANED, DUE, HATCHERY_OFF, HATCHERY_ON, AIRLINE_OFF, SHUT -> before;
        };
    }

    /** The drops of a network, those of the outlets changed; the bleeds behind them stay as they are. */
    static List<Drop> changed(List<Need> needs, List<Drop> drops, BiFunction<Need, Integer, Drop> change) {
        List<Drop> all = new ArrayList<>(drops);
        for (int i = 0; i < needs.size(); i++) {
            all.set(i, change.apply(needs.get(i), i));
        }
        return all;
    }
}
