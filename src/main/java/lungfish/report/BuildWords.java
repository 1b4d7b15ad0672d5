package lungfish.report;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import lungfish.choice.Build;
import lungfish.choice.CheapestBuild;
import lungfish.choice.WishPrice;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Wishes;
import lungfish.sizing.Asked;
import lungfish.sizing.Limit;

/** What there is to say of the cheapest build, and of what each wish costs. */
public final class BuildWords {
    /** Prices differ by less where they are the same. */
    private static final double NOTHING = 0.005;

    /** Of the name of a class: "Linear" becomes "linear", "PVC" stays. */
    private static final Pattern FIRST_LETTER = Pattern.compile("(?<=^|× |and )[A-Z](?=[a-z])");

    private final CheapestBuild cheapest;
    private final Quantities quantities;
    private final PipeWords pipe;

    public BuildWords(CheapestBuild cheapest, Quantities quantities) {
        this.cheapest = cheapest;
        this.quantities = quantities;
        this.pipe = new PipeWords(quantities);
    }

    /** One sentence: what the cheapest build costs, or that there is none. */
    public String headline() {
        if (cheapest.best().isPresent()) {
            return "The cheapest build that meets every wish costs "
                    + money(cheapest.best().get().purchase()) + ".";
        }
        return cheapest.inTheWay().isEmpty()
                ? "No build meets every wish, and more than one is in the way."
                : "No build meets every wish: " + inTheWay() + " in the way.";
    }

    private String inTheWay() {
        List<WishPrice> all = cheapest.inTheWay();
        return all.stream().map(price -> name(price.limit())).collect(joining(" or "))
                + (all.size() == 1 ? " stands" : " stand");
    }

    /** The build that is shown: the cheapest, or what comes nearest. */
    public Optional<Build> shown() {
        return cheapest.best().or(cheapest::nearest);
    }

    /** "16 mm, open main, fed once, with Linear diaphragm blower, 40 L/min at 13 kPa". */
    public static String what(Build build) {
        return PipeWords.what(build.pipe().variant()) + ", with " + blower(build);
    }

    private static String blower(Build build) {
        String name = build.candidate().fleet().name();
        return FIRST_LETTER.matcher(name).replaceAll(letter -> letter.group().toLowerCase(Locale.ROOT));
    }

    /** What is bought, what it costs over the years, and the room as drawn beside it. */
    public String reason() {
        List<String> sentences = new ArrayList<>();
        shown().ifPresent(build -> {
            String nearest = cheapest.best().isPresent() ? "" : "The nearest: ";
            sentences.add(nearest + what(build) + ". " + money(build.purchase()) + " to buy, " + money(build.total())
                    + " over " + build.years() + " years.");
            if (!build.missed().isEmpty()) {
                sentences.add("It misses " + pipe.says(build.missed()) + ".");
            }
        });
        sentences.add(drawn());
        return String.join(" ", sentences);
    }

    private String drawn() {
        Build drawn = cheapest.drawn();
        if (shown().map(Build::room).equals(Optional.of(drawn.room()))) {
            return "It is the room as drawn.";
        }
        return "As drawn, with " + blower(drawn) + ": " + money(drawn.purchase()) + ", " + money(drawn.total())
                + " over "
                + drawn.years() + " years"
                + (drawn.missed().isEmpty() ? "." : ", and misses " + pipe.says(drawn.missed()) + ".");
    }

    /** What costs less over the years, though more to buy; empty where the cheapest to buy does. */
    public Optional<Build> lasting() {
        return cheapest.lasting()
                .filter(build ->
                        build.total() < cheapest.best().map(Build::total).orElse(0.0) - NOTHING);
    }

    /** That, in a sentence. */
    public Optional<String> toKeep() {
        return lasting()
                .map(build -> "Over " + build.years() + " years another costs least: " + what(build) + ". "
                        + money(build.purchase()) + " to buy, " + money(build.total()) + " over " + build.years()
                        + " years, " + money(cheapest.best().orElseThrow().total() - build.total()) + " less.");
    }

    /** Over those lines. */
    public String pricesTitle() {
        return cheapest.best().isPresent() ? "What each wish costs" : "Which wish is in the way";
    }

    /** A line for each wish, and for each limit that costs something. */
    public List<Line> prices() {
        return cheapest.prices().stream()
                .filter(price -> price.limit().isWish() || matters(price))
                .map(price -> new Line(wish(price.limit()) + assumed(price.limit()), costs(price), instead(price)))
                .toList();
    }

    /**
     * What one wish costs.
     *
     * @param wish what is asked, "a reserve of 25 %"
     * @param costs "costs 85 EUR", "costs nothing"
     * @param instead what would be built without it; empty where that is the same
     */
    public record Line(String wish, String costs, String instead) {}

    private boolean matters(WishPrice price) {
        return cheapest.best().isEmpty()
                ? price.build().isPresent()
                : price.costs().orElse(0) > NOTHING;
    }

    private String costs(WishPrice price) {
        if (cheapest.best().isEmpty()) {
            String not = cheapest.inTheWay().isEmpty() ? "not alone in the way" : "not in the way";
            return price.build().isPresent() ? "stands in the way" : not;
        }
        double costs = price.costs().orElse(0);
        return costs > NOTHING ? "costs " + money(costs) : "costs nothing";
    }

    private String instead(WishPrice price) {
        return price.build()
                .filter(build -> matters(price))
                .map(build -> "without it " + money(build.purchase()) + ": " + what(build))
                .orElse("");
    }

    /** The wish with what is asked; a limit by its name. */
    private String wish(Limit limit) {
        Asked asked = cheapest.drawn().pipe().basis().asked();
        Wishes wishes = cheapest.drawn().pipe().basis().room().wishes();
        return switch (limit) {
            case RESERVE -> "a reserve of " + quantities.show(asked.reserveShare(), Dimension.SHARE);
            case SPARE -> quantities.show(asked.sparePa(), Dimension.PRESSURE) + " spare at the worst-served outlet";
            case NOISE ->
                "no louder than " + quantities.show(asked.loudestDba().orElse(Double.NaN), Dimension.SOUND_LEVEL);
            case RUNTIME ->
                quantities.show(wishes.runtimeS().orElse(Double.NaN), Dimension.DURATION) + " on the battery";
            case MAINS, PRESSURE, FLOW, RATING, LEAST_FLOW, HEAT, SPEED -> "keeping to " + limit.words();
        };
    }

    private String assumed(Limit limit) {
        return cheapest.assumed().contains(limit) ? " (assumed)" : "";
    }

    /** The wish in a word or two. */
    private static String name(Limit limit) {
        return switch (limit) {
            case SPARE -> "the spare pressure";
            case RUNTIME -> "the runtime on the battery";
            case RESERVE, NOISE, MAINS, PRESSURE, FLOW, RATING, LEAST_FLOW, HEAT, SPEED -> limit.words();
        };
    }

    /** What was asked though nobody typed it; empty where all is the keeper's own. */
    public Optional<String> assumed() {
        return cheapest.assumed().isEmpty()
                ? Optional.empty()
                : Optional.of(cheapest.assumed().stream()
                        .sorted()
                        .map(this::wish)
                        .collect(joining(" and ", "Not typed, and asked all the same: ", ".")));
    }

    /** What the search does not weigh. */
    public static String notCounted() {
        return "Only money and the wishes are weighed. That a loop can be shut in parts for a repair, and a wider pipe "
                + "leaves room for more tanks than wished, is for you to weigh.";
    }

    private String money(double amount) {
        return pipe.money(amount);
    }
}
