package lungfish.cost;

import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import lungfish.reason.Why.Term;

/**
 * What machines cost over some years, in the keeper's currency.
 *
 * @param energyPerYear power where they run, all the year, at the price of a joule
 * @param purchase at the start
 * @param energy over all years
 * @param wearParts rebuilds over all years
 * @param replacements machines at the end of their life, over all years
 * @param byYear spent up to the end of each year, the first year first
 * @param events how often somebody kneels before them, over all years
 */
public record Bill(
        double energyPerYear,
        double purchase,
        double energy,
        double wearParts,
        double replacements,
        List<Double> byYear,
        Events events) {
    /** Rebuilds and replacements, each machine counted. */
    public record Events(long rebuilds, long replaced) {
        /** All of them in one year, on average. */
        public double perYear(int years) {
            return (double) (rebuilds + replaced) / years;
        }
    }

    public Bill {
        byYear = List.copyOf(byYear);
    }

    public double total() {
        return purchase + energy + wearParts + replacements;
    }

    /** How the total comes about. */
    Why why(String figure, Given pricePerJ, double watts) {
        return new Why(
                figure,
                total(),
                Dimension.MONEY,
                Why.Adding.SUM,
                List.of(
                        new Term(
                                "purchase, middle of the price band, with pipe and parts",
                                purchase,
                                Origin.catalogue("")),
                        new Term("energy", energy, Origin.computed("")),
                        new Term("wear parts", wearParts, Origin.catalogue("")),
                        new Term("machines replaced at the end of their life", replacements, Origin.catalogue(""))),
                List.of(
                        new Why.Input("power", watts, Dimension.POWER, Origin.computed("where they run")),
                        new Why.Input("years", byYear.size(), Dimension.COUNT, Origin.computed("")),
                        new Why.Input("price of energy", pricePerJ, Dimension.ENERGY_PRICE)),
                "purchase + P · t · price + rebuilds + replacements",
                "arithmetic; intervals and prices of the classes are common practice, no source");
    }
}
