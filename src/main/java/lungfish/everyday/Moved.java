package lungfish.everyday;

import lungfish.demand.Need;
import lungfish.network.DropFlow;

/** An outlet before and after a disturbance. */
public record Moved(Need need, DropFlow before, DropFlow after) {
    /** By how much its flow changes, as a share of what it was; of one that had none 1 where it gets some. */
    public double share() {
        return share(before.freeM3PerS(), after.freeM3PerS());
    }

    static double share(double was, double is) {
        return was > 0 ? is / was - 1 : is > 0 ? 1 : 0;
    }

    /** Whether it came into this state. */
    public boolean became(DropFlow.State state) {
        return after.state() == state && before.state() != state;
    }

    /** Whether it gets more than it, or what lives there, bears. */
    public boolean isAboveMost() {
        return after.freeM3PerS() > need.mostM3PerS().orElse(Double.POSITIVE_INFINITY);
    }
}
