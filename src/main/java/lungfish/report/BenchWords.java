package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lungfish.choice.BenchReason;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Wishes.Wish;
import lungfish.sizing.Limit;

/** Says why a blower stands where it stands, in the words of a keeper and on one line. */
public final class BenchWords {
    private final BlowerBench bench;
    private final Quantities quantities;

    public BenchWords(BlowerBench bench, Quantities quantities) {
        this.bench = bench;
        this.quantities = quantities;
    }

    /** "the quietest that keeps 25 % in reserve", "3 dB too loud at the desk", "short of 12 L/min when tired". */
    public String reason(BenchRow row) {
        BenchReason reason = row.reason();
        if (!row.candidate().suitsMains() || !row.candidate().serves()) {
            return grave(reason.broken());
        }
        String best = reason.isFirst() ? picked(reason) : alone(reason);
        String but = but(reason);
        if (best.isEmpty()) {
            return but;
        }
        return but.isEmpty() ? best : best + ", but " + but;
    }

    private String grave(List<Limit.Broken> broken) {
        return broken.stream()
                .filter(each -> !each.limit().isWish())
                .map(this::shortOf)
                .findFirst()
                .orElse("");
    }

    /** What the first one is among those that serve. */
    private String picked(BenchReason reason) {
        if (reason.best().isEmpty()) {
            return (bench.serving() == 1 ? "the only one " : "as good as any ") + that(reason, false);
        }
        List<String> words = reason.best().stream()
                .filter(wish -> wish != Wish.RESERVE)
                .map(BenchWords::most)
                .collect(Collectors.toCollection(ArrayList::new));
        if (words.isEmpty()) {
            return "the only one " + that(reason, false);
        }
        String last = words.remove(words.size() - 1);
        return words.isEmpty()
                ? "the " + last + " " + that(reason, false)
                : "the " + last + " of the " + String.join(" and ", words) + " " + that(reason, true);
    }

    /** What the first one does, or all of those among which it is the first. */
    private String that(BenchReason reason, boolean several) {
        String keeps = several ? "that keep " : "that keeps ";
        String serves = several ? "that serve the room" : "that serves the room";
        double share = bench.asked().reserveShare();
        if (reason.broken().isEmpty() && othersMissWishes()) {
            return keeps + "every wish";
        }
        return reason.broken().isEmpty() && share > 0
                ? keeps + quantities.show(share, Dimension.SHARE) + " in reserve"
                : serves;
    }

    /** Whether one that keeps the reserve misses another wish. */
    private boolean othersMissWishes() {
        return bench.rows().stream()
                .map(BenchRow::candidate)
                .anyMatch(each -> each.serves()
                        && !each.fits()
                        && each.shortOf(Limit.RESERVE).isEmpty());
    }

    private static String alone(BenchReason reason) {
        return reason.best().stream()
                .filter(wish -> wish != Wish.RESERVE)
                .map(wish -> "the " + most(wish))
                .findFirst()
                .orElse("");
    }

    private String but(BenchReason reason) {
        if (!reason.broken().isEmpty()) {
            return reason.broken().stream().map(this::shortOf).collect(Collectors.joining(", and "));
        }
        if (reason.isFirst()) {
            return "";
        }
        return reason.behind()
                .map(this::behind)
                .orElse(reason.best().isEmpty() ? "as good as the first by every wish" : "");
    }

    private String behind(BenchReason.Behind behind) {
        if (Double.isNaN(behind.bySi())) {
            return "nobody knows how loud it is";
        }
        String by = show(behind.bySi(), behind.wish());
        return switch (behind.wish()) {
            case RESERVE -> "";
            case SMALLEST -> by + " larger than the first";
            case CHEAPEST -> by + " dearer than the first";
            case QUIETEST -> by + " louder than the first";
            case CHEAPEST_TO_RUN -> by + " a year dearer to run than the first";
            case LONGEST_LIVED -> "lives " + by + " less than the first";
        };
    }

    private String show(double si, Wish wish) {
        return switch (wish) {
            case RESERVE -> quantities.show(si, Dimension.SHARE);
            case SMALLEST -> quantities.show(si, Dimension.AIR_FLOW);
            case CHEAPEST, CHEAPEST_TO_RUN -> quantities.show(si, Dimension.MONEY);
            case QUIETEST -> decibels(si);
            case LONGEST_LIVED -> quantities.show(si, Dimension.DURATION);
        };
    }

    private String shortOf(Limit.Broken broken) {
        String by = quantities.show(broken.bySi(), broken.limit().dimension());
        String found = quantities.show(broken.foundSi(), broken.limit().dimension());
        String allowed = quantities.show(broken.allowedSi(), broken.limit().dimension());
        return switch (broken.limit()) {
            case MAINS -> "made for " + found + ", the room has " + allowed;
            case PRESSURE -> "does not reach the bubbles: " + by + " short when tired";
            case FLOW -> "short of " + by + " when tired";
            case RATING -> "held " + by + " above what it bears all day";
            case LEAST_FLOW -> "passes " + by + " less than it must";
            case HEAT ->
                "its air is " + quantities.show(broken.bySi(), Dimension.TEMPERATURE_RISE) + " too warm for the pipe";
            case RESERVE -> "keeps " + found + " in reserve, not " + allowed;
            case NOISE ->
                decibels(broken.bySi()) + " too loud at " + bench.listener().orElse("the listener");
            case RUNTIME -> "runs " + found + " on battery, not " + allowed;
            case SPARE -> "leaves " + found + " to spare at the worst-served outlet, not " + allowed;
            case SPEED -> "drives the air at " + found + " through the pipe, more than " + allowed;
        };
    }

    /** The levels stand beside it in whole decibels. */
    private static String decibels(double by) {
        long whole = Math.round(by);
        return whole < 1 ? "less than 1 dB" : whole + " dB";
    }

    /** "quietest". */
    private static String most(Wish wish) {
        return switch (wish) {
            case RESERVE -> "one with the most in reserve";
            case SMALLEST -> "smallest";
            case CHEAPEST -> "cheapest to buy";
            case QUIETEST -> "quietest";
            case CHEAPEST_TO_RUN -> "cheapest to run";
            case LONGEST_LIVED -> "longest-lived";
        };
    }

    /** The verdict in a word or few. */
    public static String verdict(BenchRow row) {
        if (row.candidate().fits()) {
            return "fits";
        }
        return row.candidate().serves() ? "serves, short of a wish" : "does not serve";
    }

    /** The wishes in their order: "reserve, small, cheap to buy". */
    public static String order(List<Wish> order) {
        return order.stream().map(Wish::words).collect(Collectors.joining(", "));
    }

    /** Fit for a heading or a button: "Cheap to buy". */
    public static String name(Wish wish) {
        return Sentences.capital(wish.words());
    }
}
