package lungfish.reason;

import java.util.List;
import lungfish.quantity.Dimension;

/**
 * Why a figure is what it is: terms that add up to it, the numbers that went in, the equation and its source.
 *
 * @param figure the figure's name in plain words, "pressure the room needs"
 * @param totalSi the figure itself
 * @param adding how the terms add up to the total
 * @param equation the equation in plain signs
 * @param source where the equation is published
 */
public record Why(
        String figure,
        double totalSi,
        Dimension dimension,
        Adding adding,
        List<Term> terms,
        List<Input> inputs,
        String equation,
        String source) {

    /** How terms make a total. */
    public enum Adding {
        /** Plain sum. */
        SUM,
        /** Levels by energy: {@code 10 lg Σ 10^(L/10)}. */
        LEVELS
    }

    /** One term: a sentence with places for amounts, and what it adds (negative where it takes away). */
    public record Term(String saying, List<Amount> amounts, double si, Origin origin) {
        public Term {
            amounts = List.copyOf(amounts);
        }

        public Term(String saying, double si, Origin origin) {
            this(saying, List.of(), si, origin);
        }
    }

    /** One number that went in. */
    public record Input(String name, double si, Dimension dimension, Origin origin) {
        public Input(String name, Given given, Dimension dimension) {
            this(name, given.si(), dimension, given.origin());
        }
    }

    public Why {
        terms = List.copyOf(terms);
        inputs = List.copyOf(inputs);
    }

    /** The same under another name. */
    public Why named(String name) {
        return new Why(name, totalSi, dimension, adding, terms, inputs, equation, source);
    }

    /** What a term measures. A sum of temperatures begins with one; what is added to it are differences. */
    public Dimension termDimension(int term) {
        boolean isRise = dimension == Dimension.TEMPERATURE && term > 0;
        return isRise ? Dimension.TEMPERATURE_RISE : dimension;
    }

    /** What the terms add up to; equals {@link #totalSi} but for rounding. */
    public double sumSi() {
        return switch (adding) {
            case SUM -> terms.stream().mapToDouble(Term::si).sum();
            case LEVELS ->
                10
                        * Math.log10(terms.stream()
                                .mapToDouble(term -> Math.pow(10, term.si() / 10))
                                .sum());
        };
    }
}
