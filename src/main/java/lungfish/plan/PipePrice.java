package lungfish.plan;

import lungfish.catalogue.ValveClass;
import lungfish.demand.Need;
import lungfish.piping.PipeCount;
import lungfish.room.Outlet;

/**
 * What the drawn pipe costs to buy, in the keeper's currency.
 *
 * @param pipe by the metre
 * @param fittings elbows, tees, and what is drawn
 * @param taps a valve for each outlet; its airline and check valve it has already
 */
public record PipePrice(double pipe, double fittings, double taps) {
    public double total() {
        return pipe + fittings + taps;
    }

    static PipePrice of(Setup setup) {
        PipeCount count = PipeCount.of(setup.room());
        double pipe = count.lengthM().entrySet().stream()
                .mapToDouble(length -> length.getValue()
                        * setup.catalogue().pipe(length.getKey()).orElseThrow().pricePerM())
                .sum();
        double fittings = count.fittings().entrySet().stream()
                .mapToDouble(fitting -> fitting.getValue()
                        * setup.catalogue()
                                .fitting(fitting.getKey())
                                .orElseThrow()
                                .price())
                .sum();
        return new PipePrice(pipe, fittings, taps(setup));
    }

    private static double taps(Setup setup) {
        return setup.demand().needs().stream()
                .mapToDouble(need -> tap(setup, need))
                .sum();
    }

    /** The valve of one outlet. */
    static double tap(Setup setup, Need need) {
        ValveClass usual = setup.catalogue().valves().get(0);
        return need.seat()
                .outlet()
                .valve()
                .map(Outlet.Valve::kind)
                .flatMap(setup.catalogue()::valve)
                .orElse(usual)
                .price();
    }
}
