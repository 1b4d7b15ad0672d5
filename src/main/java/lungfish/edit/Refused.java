package lungfish.edit;

import java.util.List;
import java.util.function.Function;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Amount;

/**
 * An edit that cannot be done, in the keeper's words. Names in braces are filled by the amounts, in the reader's units.
 *
 * @param what what is in the way: {@code "Tank 3 would end {end} from the left, beyond its shelf ({most})."}
 * @param mend what to do instead: {@code "Take a shorter tank, or make the rack wider."}
 */
public record Refused(String what, String mend, List<Amount> amounts) implements Attempt {
    public Refused {
        amounts = List.copyOf(amounts);
    }

    static Refused because(String what, String mend, Amount... amounts) {
        return new Refused(what, mend, List.of(amounts));
    }

    /** Where what was meant is not in the room, or is nothing. */
    static Refused nothing(String kind) {
        return because("No " + kind + " is chosen.", "Choose one first.");
    }

    /** A length among the amounts. */
    static Amount length(String name, double lengthM) {
        return new Amount(name, lengthM, Dimension.DEPTH);
    }

    /** Both sentences, as this reader reads numbers. */
    public String sentence(Quantities shown) {
        String text = what + " " + mend;
        for (Amount amount : amounts) {
            text = text.replace("{" + amount.name() + "}", shown.show(amount.si(), amount.dimension()));
        }
        return text;
    }

    @Override
    public <R> R match(Function<Edit, R> edit, Function<Refused, R> refused) {
        return refused.apply(this);
    }
}
