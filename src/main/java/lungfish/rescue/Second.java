package lungfish.rescue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.outage.Vessel;
import lungfish.room.Stirrer;

/**
 * A filter or pump that moves the water of a tank beside its air: its second line.
 *
 * @param outages what it does in each
 * @param air what the air of its tank does alone
 * @param stays why it should stay; none: it may go
 */
public record Second(Stirrer stirrer, Vessel vessel, List<Effect> outages, Alone air, Set<Stay> stays) {
    public Second {
        outages = List.copyOf(outages);
        stays = Set.copyOf(stays);
    }

    /** Whether it may go: air alone does what it does. */
    public boolean mayGo() {
        return stays.isEmpty();
    }

    /** What happens to it. */
    public enum Outage {
        /** It stands still as well. */
        MAINS,
        /** It goes on: of all blowers that may stop, the one with which its tank is first in danger. */
        BLOWER,
        /** Its circuit trips: only the air goes on, unless that hangs on the same circuit. */
        CIRCUIT
    }

    /** Why it should stay. */
    public enum Stay {
        /** The air alone does not turn the water over often enough, or nobody knows how often it does. */
        TURNOVER,
        /** With air alone the tank stands at or below the alarm level, by the cautious figure. */
        OXYGEN,
        /** When a blower stops, it is what keeps the tank out of danger until that is mended. */
        KEEPS_ALIVE,
        /** Nothing is known of what lives in the tank. */
        UNKNOWN
    }

    /**
     * When a tank is in danger, s.
     *
     * @param likelyS absent: not in this time
     * @param cautiousS the same at worst
     */
    public record Danger(OptionalDouble likelyS, OptionalDouble cautiousS) {}

    /**
     * What it does in an outage.
     *
     * @param without it, and without those of the same tank that may go before it
     * @param untilS how far was looked, s
     */
    public record Effect(Outage outage, Danger with, Danger without, double untilS) {
        /** Whether the tank is never in danger with it, and is without, by the cautious figure. */
        public boolean keepsAlive() {
            return with.cautiousS().isEmpty() && without.cautiousS().isPresent();
        }
    }

    /**
     * What the air of a tank does with nothing beside it.
     *
     * @param turnoverPerS how often all its water is lifted through its outlets, in a second
     * @param wishedPerS how often it should be
     * @param typed whether the room says so
     * @param oxygenGPerM3 where it stands, by the cautious figure; absent where nothing is known of what lives in it
     */
    public record Alone(double turnoverPerS, double wishedPerS, boolean typed, OptionalDouble oxygenGPerM3) {
        /** The air for a turnover that the room asks for is found by halving. */
        private static final double ROUNDING = 1e-3;

        public boolean turnsOver() {
            return turnoverPerS >= (1 - ROUNDING) * wishedPerS;
        }
    }
}
