package lungfish.build;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is bought to build the room as drawn.
 *
 * @param lines group by group
 */
public record PartsList(List<Line> lines) {
    /** What belongs together, in the order listed. */
    public enum Group {
        PIPE,
        FITTINGS,
        TAPS,
        OUTLETS,
        BLOWER,
        SMALL_PARTS,
        /** Bought later; not in the total. */
        LATER
    }

    /** What a line is counted in. */
    public enum Unit {
        PIECES,
        METRES
    }

    /**
     * One line.
     *
     * @param key short and lasting: what a price of the keeper's own is written for
     * @param name of the class
     * @param detail size, or what it is for; may be empty
     * @param counted from the drawing, in the line's unit
     * @param there what of it the room has already
     * @param spare bought beyond what is missing
     * @param buy in the line's unit; of pipe, whole stock lengths
     * @param price of one piece or metre; absent: nobody knows
     * @param ownPrice whether the keeper said that price
     */
    public record Line(
            Group group,
            String key,
            String name,
            String detail,
            Unit unit,
            double counted,
            double there,
            double spare,
            double buy,
            OptionalDouble price,
            boolean ownPrice) {
        /** Both lines of one part as one. */
        Line with(Line more) {
            return new Line(
                    group,
                    key,
                    name,
                    detail,
                    unit,
                    counted + more.counted,
                    there + more.there,
                    spare + more.spare,
                    buy + more.buy,
                    price,
                    ownPrice);
        }

        /** What the line costs; absent where its price is not known. */
        public OptionalDouble cost() {
            return price.isPresent() ? OptionalDouble.of(buy * price.getAsDouble()) : OptionalDouble.empty();
        }
    }

    public PartsList {
        lines = List.copyOf(lines);
    }

    /** What all lines cost that have a price and are not bought later. */
    public double total() {
        return lines.stream()
                .filter(line -> line.group() != Group.LATER)
                .mapToDouble(line -> line.cost().orElse(0))
                .sum();
    }

    /** How many lines have something to buy and no price. */
    public long unpriced() {
        return lines.stream()
                .filter(line -> line.group() != Group.LATER
                        && line.buy() > 0
                        && line.price().isEmpty())
                .count();
    }

    public List<Line> of(Group group) {
        return lines.stream().filter(line -> line.group() == group).toList();
    }

    /** The line of a key; empty where nothing of it is needed. */
    public Optional<Line> line(String key) {
        return lines.stream().filter(line -> line.key().equals(key)).findFirst();
    }
}
