package lungfish.report;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lungfish.catalogue.PipeSize;
import lungfish.choice.PipeLayout;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;
import lungfish.choice.PipeVariant;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sizing.Limit;

/** What there is to say of the pipe of a room, in the words and units of its reader. */
public final class PipeWords {
    /** The measure in a size's name: "1 1/4 in", "25 mm", "22 × 1 mm". */
    private static final Pattern MEASURE = Pattern.compile("\\d[\\d /×.]* (mm|in)");

    private final Quantities quantities;
    private final Limits limits;

    public PipeWords(Quantities quantities) {
        this.quantities = quantities;
        this.limits = new Limits(quantities);
    }

    /** "loop, fed once". */
    public static String layout(PipeLayout layout) {
        return (layout.main() == PipeLayout.Main.CLOSED ? "loop, " : "open main, ") + feeds(layout);
    }

    /** "Loop". */
    public static String main(PipeLayout layout) {
        return switch (layout.main()) {
            case CLOSED -> "Loop";
            case OPEN -> "Open main";
        };
    }

    /** "fed once". */
    public static String feeds(PipeLayout layout) {
        return layout.feeds() > 1 ? "fed twice" : "fed once";
    }

    /** "16 mm, open main, fed once". */
    public static String what(PipeVariant variant) {
        return size(variant) + ", " + layout(variant.layout());
    }

    /** The size without its standard. */
    public static String size(PipeVariant variant) {
        return variant.size().map(PipeWords::size).orElse("mixed");
    }

    private static String size(PipeSize size) {
        Matcher measure = MEASURE.matcher(size.name());
        return measure.find() ? measure.group() : size.name();
    }

    /** The standard of the pipe: the name of a size without its measure. */
    public static String family(PipeStudy study) {
        String name = study.results().stream()
                .flatMap(each -> each.variant().size().stream())
                .map(PipeSize::name)
                .findFirst()
                .orElse("");
        return MEASURE.matcher(name)
                .replaceFirst("")
                .replaceAll("^[ ,]+|[ ,]+$", "")
                .replaceAll(" *,", ",");
    }

    /** The plain truth about the pipe, one sentence. */
    public String headline(PipeStudy study) {
        Optional<PipeResult> smallest = smallest(study);
        if (smallest.isEmpty()) {
            return "No size of this pipe is good enough as the main is laid.";
        }
        String size = size(smallest.get().variant());
        return study.pipeMatters()
                ? size + " is the smallest pipe that is good enough."
                : "The pipe does not matter: " + pressure(smallest.get().spreadPa())
                        + " from best to worst tap even in " + size + ".";
    }

    private static Optional<PipeResult> smallest(PipeStudy study) {
        return study.smallest(study.asDrawn().variant().layout());
    }

    /** What stands under the headline. */
    public String reason(PipeStudy study) {
        PipeResult drawn = study.asDrawn();
        String asDrawn = "As drawn (" + size(drawn.variant()) + ", "
                + layout(drawn.variant().layout()) + ") the pipe takes "
                + pressure(drawn.pipePa()) + " of the " + pressure(drawn.neededPa())
                + " that the blower must make.";
        return asDrawn
                + narrower(study)
                        .map(each -> " In " + size(each.variant()) + ": " + misses(each) + ".")
                        .orElse("")
                + smallest(study)
                        .filter(PipeResult::matters)
                        .map(each -> felt(study, each))
                        .orElse("");
    }

    private String felt(PipeStudy study, PipeResult smallest) {
        String wide = study.with(smallest.variant().layout()).stream()
                .filter(each -> each.variant().size().isPresent() && each.good() && !each.matters())
                .findFirst()
                .map(each -> "; from " + size(each.variant()) + " on the pipe does not matter")
                .orElse("");
        return " " + size(smallest.variant()) + " is felt, with " + pressure(smallest.spreadPa())
                + " from best to worst tap" + wide + ".";
    }

    /** The widest that is not good enough as the main is drawn: why one must not go below. */
    private static Optional<PipeResult> narrower(PipeStudy study) {
        return study.with(study.asDrawn().variant().layout()).stream()
                .filter(each -> !each.good() && each.variant().size().isPresent())
                .reduce((one, other) -> other);
    }

    /** The verdict on one pipe: a shape and words. */
    public String verdict(PipeResult result) {
        return mark(result) + " " + judged(result);
    }

    private String judged(PipeResult result) {
        if (!result.good()) {
            return misses(result);
        }
        return result.matters() ? "good enough, but felt" : "good enough";
    }

    /** The shape alone. */
    public static String mark(PipeResult result) {
        if (!result.good()) {
            return "×";
        }
        return result.matters() ? "○" : "●";
    }

    /** All of one pipe, to be heard. */
    public String spoken(PipeResult result) {
        return what(result.variant()) + (result.variant().asDrawn() ? ", as drawn" : "") + ": " + judged(result) + ", "
                + money(result.variant().price().total()) + ", " + pressure(result.spreadPa())
                + " from best to worst tap";
    }

    /** All of one pipe, in sentences. */
    public String whole(PipeResult result) {
        var price = result.variant().price();
        return Sentences.capital(what(result.variant()))
                + (result.variant().asDrawn() ? ", as drawn" : "") + ": " + judged(result) + ". "
                + pressure(result.worstTapPa()) + " at the worst tap, " + pressure(result.spreadPa())
                + " less than at the best. The pipe takes "
                + pressure(result.pipePa())
                + " on the way to the worst-served outlet; its fastest air goes "
                + quantities.show(result.metresPerS(), Dimension.SPEED) + ". Pipe " + money(price.pipe())
                + ", fittings "
                + money(price.fittings()) + ", taps " + money(price.taps()) + ".";
    }

    private String misses(PipeResult result) {
        return result.faults().stream().map(limits::says).collect(joining("; "));
    }

    /** "12 Pa": small ones in pascals, as only they are told apart by that. */
    public String pressure(double pascals) {
        return quantities.show(pascals, Dimension.PRESSURE);
    }

    public String money(double amount) {
        return quantities.show(amount, Dimension.MONEY);
    }

    /** What a build misses, in words. */
    String says(List<Limit.Broken> missed) {
        return missed.stream().map(limits::says).collect(joining("; "));
    }
}
