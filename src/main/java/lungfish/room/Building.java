package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the keeper builds: what pipe comes in, what the saw takes, what is bought to spare, and what it costs there.
 *
 * @param stockM the length in which pipe is bought; absent: the usual one of its standard
 * @param kerfM what a cut takes away
 * @param spareShare bought beyond what is counted, as a share of it
 * @param thread of the taps, a thread of the catalogue
 * @param prices what parts cost the keeper, each part once; a part that is not here costs what its class does
 */
public record Building(
        OptionalDouble stockM,
        OptionalDouble kerfM,
        OptionalDouble spareShare,
        Optional<String> thread,
        List<OwnPrice> prices) {
    /** Nothing is said. */
    public static final Building UNKNOWN = new Building(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), List.of());

    /**
     * What a part costs the keeper.
     *
     * @param part its key in the parts list
     * @param price of one piece, or of one metre, in the keeper's currency
     */
    public record OwnPrice(String part, double price) {}

    public Building {
        prices = List.copyOf(prices);
    }

    /** The keeper's price of a part; empty: not said. */
    public OptionalDouble price(String part) {
        return prices.stream()
                .filter(each -> each.part().equals(part))
                .mapToDouble(OwnPrice::price)
                .findFirst();
    }

    /** The same with pipe bought in this length; empty: unknown. */
    public Building withStockM(OptionalDouble that) {
        return new Building(that, kerfM, spareShare, thread, prices);
    }

    /** The same with a saw that takes this; empty: unknown. */
    public Building withKerfM(OptionalDouble that) {
        return new Building(stockM, that, spareShare, thread, prices);
    }

    /** The same with so much bought to spare; empty: unknown. */
    public Building withSpareShare(OptionalDouble that) {
        return new Building(stockM, kerfM, that, thread, prices);
    }

    /** The same with taps of this thread; empty: unknown. */
    public Building withThread(Optional<String> that) {
        return new Building(stockM, kerfM, spareShare, that, prices);
    }

    /** The same with this price of a part; empty: that of its class. */
    public Building withPrice(String part, OptionalDouble price) {
        List<OwnPrice> after = new ArrayList<>(prices);
        after.removeIf(each -> each.part().equals(part));
        price.ifPresent(that -> after.add(new OwnPrice(part, that)));
        return new Building(stockM, kerfM, spareShare, thread, after);
    }
}
