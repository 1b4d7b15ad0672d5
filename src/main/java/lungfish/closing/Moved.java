package lungfish.closing;

import lungfish.demand.Need;
import lungfish.network.DropFlow;

/** An outlet that stays open, before and after others are shut. */
public record Moved(Need need, DropFlow before, DropFlow after) {
    /** By how much its flow changes, as a share of what it was; of one that had none 1 where it gets some. */
    public double share() {
        double was = before.freeM3PerS();
        double is = after.freeM3PerS();
        return was > 0 ? is / was - 1 : is > 0 ? 1 : 0;
    }

    /** Whether it came into this state. */
    public boolean became(DropFlow.State state) {
        return after.state() == state && before.state() != state;
    }
}
