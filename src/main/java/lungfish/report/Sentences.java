package lungfish.report;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lungfish.quantity.Quantities;
import lungfish.reason.Amount;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.reason.Origin;
import lungfish.reason.PartId;
import lungfish.reason.Why;

/** Makes sentences of findings, terms and assumptions, with their amounts in the units of the reader. */
public final class Sentences {
    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");

    private final Quantities quantities;
    private final Names names;

    public Sentences(Quantities quantities, Names names) {
        this.quantities = quantities;
        this.names = names;
    }

    /** What is wrong. */
    public String says(Finding finding) {
        return filled(finding.code().says(), fillings(finding));
    }

    /** How to mend it. */
    public String mend(Finding finding) {
        return filled(finding.code().mend(), fillings(finding));
    }

    /** What a term of a sum is. */
    public String says(Why.Term term) {
        return fill(term.saying(), amounts(term.amounts()));
    }

    /** "room temperature: 22 °C assumed, because …". */
    public String says(Assumption assumption) {
        return says(new SharedAssumption(assumption, List.of(assumption.where())));
    }

    /** The same of what is assumed of several parts alike: "depth of the air release (4 outlets): 17 cm …". */
    public String says(SharedAssumption shared) {
        Assumption assumption = shared.first();
        String name = place(shared);
        String of = name.isEmpty() || assumption.what().contains(name) ? "" : " (" + name + ")";
        return assumption.what() + of + ": " + quantities.show(assumption.si(), assumption.dimension()) + " ("
                + assumption.because() + ")";
    }

    /** What it is assumed of: a name, or how many; empty for the room as a whole. */
    public String place(SharedAssumption shared) {
        PartId first = shared.first().where();
        if (shared.where().size() > 1) {
            return shared.where().size() + " " + first.kind().name().toLowerCase(Locale.ROOT) + "s";
        }
        return first.equals(PartId.ROOM) ? "" : names.of(first);
    }

    /** Where a number came from, in a word or few. */
    public static String says(Origin origin) {
        String kind =
                switch (origin.kind()) {
                    case TYPED -> "typed";
                    case DRAWN -> "from the drawing";
                    case CATALOGUE -> "catalogue";
                    case ASSUMED -> "assumed";
                    case COMPUTED -> "computed";
                    case CONSTANT -> "constant";
                };
        return origin.detail().isEmpty() ? kind : kind + ": " + origin.detail();
    }

    private Map<String, String> fillings(Finding finding) {
        Map<String, String> fillings = amounts(finding.amounts());
        finding.words().forEach(word -> fillings.put(word.name(), word.text()));
        fillings.put("where", names.of(finding.where()));
        return fillings;
    }

    private Map<String, String> amounts(List<Amount> amounts) {
        Map<String, String> shown = new HashMap<>();
        amounts.forEach(amount -> shown.put(amount.name(), quantities.show(amount.si(), amount.dimension())));
        return shown;
    }

    private static String filled(String template, Map<String, String> fillings) {
        return capital(fill(template, fillings));
    }

    /** Fit to begin a sentence. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** "1 outlet", "12 outlets". */
    public static String counted(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    /** A place that nothing fills stays as it is: an error of ours, which the tests look for. */
    private static String fill(String template, Map<String, String> fillings) {
        return PLACE.matcher(template)
                .replaceAll(place -> Matcher.quoteReplacement(fillings.getOrDefault(place.group(1), place.group())));
    }
}
