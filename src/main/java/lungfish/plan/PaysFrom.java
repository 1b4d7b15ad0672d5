package lungfish.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lungfish.cost.Central;
import lungfish.cost.Cost;
import lungfish.cost.CostAnswer;
import lungfish.headroom.Headroom;
import lungfish.sizing.PumpDuty;

/**
 * With how many outlets a blower would pay that does not pay now. More outlets, each like those that the headroom counts, hang
 * on the pumps of today as far as those have air to spare; then each new pump, like the commonest one, feeds as many as it gives
 * air for. The blower stays the same as far as its headroom goes: it bleeds less instead. Whole outlets and whole pumps are
 * counted, money over the same years as everywhere.
 */
final class PaysFrom {
    private final Setup setup;
    private final List<PumpDuty> pumps;
    private final Headroom headroom;
    private final CostAnswer cost;

    PaysFrom(Setup setup, List<PumpDuty> pumps, Headroom headroom, CostAnswer cost) {
        this.setup = setup;
        this.pumps = pumps;
        this.headroom = headroom;
        this.cost = cost;
    }

    /** In all; empty where the blower's headroom ends before it pays, or a new pump would not feed even one outlet. */
    OptionalInt outlets() {
        Optional<PumpDuty> more = commonest();
        double each = headroom.like().targetM3PerS().si();
        if (more.isEmpty() || cost.today().isEmpty() || each <= 0) {
            return OptionalInt.empty();
        }
        int onOnePump = (int) Math.floor(more.get().givesM3PerS() / each);
        if (onOnePump < 1) {
            return OptionalInt.empty();
        }
        int onOldPumps = onOldPumps(each);
        double pump = price(more.get());
        double tap = PipePrice.tap(setup, headroom.like());
        return IntStream.rangeClosed(1, headroom.outlets())
                .filter(outlets -> {
                    double newPumps = Math.ceil((double) Math.max(0, outlets - onOldPumps) / onOnePump);
                    double dearer =
                            cost.central().total() - cost.today().orElseThrow().total();
                    return dearer + outlets * tap <= newPumps * pump;
                })
                .map(outlets -> setup.demand().needs().size() + outlets)
                .findFirst();
    }

    private int onOldPumps(double eachM3PerS) {
        return pumps.stream()
                .mapToInt(pump -> (int) Math.floor(Math.max(0, pump.givesM3PerS() - pump.askedM3PerS()) / eachM3PerS))
                .sum();
    }

    /** Single ones only: what one of several side by side gives is not known. */
    private Optional<PumpDuty> commonest() {
        return pumps.stream()
                .filter(pump -> pump.machine().count() == 1)
                .max(Comparator.comparingLong(this::alike).thenComparingDouble(PumpDuty::givesM3PerS));
    }

    private long alike(PumpDuty one) {
        return pumps.stream()
                .filter(other ->
                        other.machine().kind().id().equals(one.machine().kind().id()))
                .count();
    }

    /** What one more pump costs over the years, bought new. */
    private double price(PumpDuty like) {
        Central one = new Central(List.of(Money.running(like.machine(), like.watts(), OptionalDouble.empty())), 0);
        return Cost.of(setup.room(), setup.catalogue(), one, List.of())
                .central()
                .total();
    }
}
