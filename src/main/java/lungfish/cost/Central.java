package lungfish.cost;

import java.util.List;

/**
 * The plan for a central blower.
 *
 * @param machines to buy
 * @param pipeAndParts price of pipe, fittings, taps and whatever else is bought with them
 */
public record Central(List<Running> machines, double pipeAndParts) {
    public Central {
        machines = List.copyOf(machines);
    }

    double purchase() {
        double bought = machines.stream()
                .mapToDouble(each -> each.count() * each.kind().price())
                .sum();
        return bought + pipeAndParts;
    }
}
