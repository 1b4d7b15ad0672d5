package lungfish.sizing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lungfish.demand.Demand;
import lungfish.demand.Need;
import lungfish.room.OutletId;

/**
 * The air that the small pumps of today really give, at the depths that they serve, tired and with devices due for cleaning.
 *
 * @param outlets in place
 * @param askedM3PerS by all of them
 * @param givesM3PerS what all pumps whose outlets are known give them
 * @param shortOutlets that hang on a pump which gives less than they ask for together
 * @param missingM3PerS what those pumps lack
 * @param unfed outlets of which no pump is said to feed them
 * @param isSaid whether the room says of every pump what it feeds
 * @param spareM3PerS what the pumps that give enough have beyond what is asked of them
 * @param plannedM3PerS asked by the outlets of planned racks
 */
public record PumpedAir(
        int outlets,
        double askedM3PerS,
        double givesM3PerS,
        int shortOutlets,
        double missingM3PerS,
        int unfed,
        boolean isSaid,
        double spareM3PerS,
        double plannedM3PerS) {

    /** What these pumps do for that demand. */
    public static PumpedAir of(Demand demand, List<PumpDuty> pumps) {
        List<PumpDuty> weak = pumps.stream().filter(pump -> !pump.enough()).toList();
        Set<OutletId> fed = new HashSet<>();
        pumps.forEach(pump -> fed.addAll(pump.givesEach().keySet()));
        return new PumpedAir(
                demand.needs().size(),
                demand.totalM3PerS(),
                pumps.stream().mapToDouble(PumpDuty::givesM3PerS).sum(),
                weak.stream().mapToInt(pump -> pump.served().size()).sum(),
                weak.stream()
                        .mapToDouble(pump -> pump.askedM3PerS() - pump.givesM3PerS())
                        .sum(),
                (int) demand.needs().stream()
                        .filter(need -> !fed.contains(need.id()))
                        .count(),
                pumps.stream().noneMatch(pump -> pump.served().isEmpty()),
                pumps.stream()
                        .filter(PumpDuty::enough)
                        .mapToDouble(pump -> Math.max(0, pump.givesM3PerS() - pump.askedM3PerS()))
                        .sum(),
                sum(demand.planned()));
    }

    private static double sum(List<Need> needs) {
        return needs.stream().mapToDouble(need -> need.targetM3PerS().si()).sum();
    }

    /** Whether there are outlets, each hangs on a pump, and every pump gives what its outlets ask. */
    public boolean isEnough() {
        return outlets > 0 && unfed == 0 && shortOutlets == 0;
    }

    /** Whether the planned racks ask for more than the pumps have to spare. */
    public boolean isOutgrown() {
        return plannedM3PerS > spareM3PerS;
    }
}
