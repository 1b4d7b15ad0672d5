package lungfish.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import lungfish.logbook.Due;
import lungfish.logbook.Forecast;
import lungfish.logbook.Logbook;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What a logbook says, in a keeper's words. */
public final class LogbookWords {
    private static final double DAY_S = 24 * 3600;
    private final Logbook logbook;
    private final Quantities quantities;
    private final Names names;

    public LogbookWords(Logbook logbook, Quantities quantities, Names names) {
        this.logbook = logbook;
        this.quantities = quantities;
        this.names = names;
    }

    /** What to begin with where nothing is written down yet. */
    public static final String FIRST =
            "Write down first the day on which the blower was new, and the gauge at the blower once every valve is set. Two readings"
                    + " two months apart tell when the blower will be too weak.";

    /** The log in a few words. */
    public String headline() {
        Forecast forecast = logbook.forecast();
        return switch (forecast.kind()) {
            case TOO_EARLY -> "Too early to say how long the blower lasts";
            case HOLDS -> "The blower holds";
            case FALLS ->
                forecast.likely()
                        .map(day -> "The blower is enough until about " + YearMonth.from(day))
                        .orElse("The blower fades, but slowly");
            case BELOW -> "The blower gives less than the room needs";
        };
    }

    /** What the last fall of the gauge says; empty where there was none. */
    public Optional<String> leak() {
        return logbook.leaks().stream()
                .reduce((before, last) -> last)
                .map(last -> "By the last fall of the gauge, leaks let out "
                        + quantities.show(last.si(), Dimension.SHARE)
                        + " of the room's air; the first start allows 1 %.");
    }

    /** When the blower will fall below what the room needs, in a sentence or two. */
    public String forecast() {
        Forecast forecast = logbook.forecast();
        return switch (forecast.kind()) {
            case TOO_EARLY ->
                "When the blower will fall below what the room needs cannot be told yet: it takes two readings of the gauge at"
                        + " the blower, two months apart, with the valves as they were set.";
            case HOLDS -> "The blower holds: no fall below what the room needs is in sight." + now();
            case FALLS -> "The blower will fall below what the room needs " + when(forecast) + "." + now();
            case BELOW ->
                "The blower gives less than the room needs already." + now() + " Rebuild it, or plan another.";
        };
    }

    private static String when(Forecast forecast) {
        String likely = forecast.likely()
                .map(day -> "about " + day)
                .orElse("in more than " + Forecast.HORIZON_YEARS + " years");
        String earliest = forecast.earliest()
                .map(day -> "; one in ten fall before " + day)
                .orElse("");
        String latest =
                forecast.latest().map(day -> ", one in ten after " + day).orElse("");
        return likely + earliest + latest;
    }

    private String now() {
        return logbook.trend()
                .map(trend -> " When it was last read it gave " + share(trend.at(trend.to()))
                        + " of what it gives new; the room needs "
                        + share(logbook.need().orElse(0)) + ".")
                .orElse("");
    }

    /** The same with its day: "due since 2026-01-27, 3 outlets". */
    public String stands(Due due) {
        String day = day(due.due(), "");
        return switch (due.state(logbook.today())) {
            case UNKNOWN -> "nothing in the log yet";
            case OVERDUE -> "due since " + day + outlets(due);
            case SOON -> "due soon, " + day;
            case LATER -> day;
        };
    }

    /** How something that is done again stands. */
    public String state(Due due) {
        return switch (due.state(logbook.today())) {
            case UNKNOWN -> "nothing in the log yet";
            case OVERDUE -> "overdue" + outlets(due);
            case SOON -> "soon";
            case LATER -> "";
        };
    }

    private static String outlets(Due due) {
        return due.outlets().isPresent()
                ? ", " + Sentences.counted(due.outlets().getAsInt(), "outlet")
                : "";
    }

    /** What is done again, and to which blower. */
    public String what(Due due) {
        return due.what() + due.where().map(part -> ": " + names.of(part)).orElse("");
    }

    String every(Due due) {
        return Sentences.counted(Math.round(due.everyS() / DAY_S), "day");
    }

    static String day(Optional<LocalDate> day, String otherwise) {
        return day.map(LocalDate::toString).orElse(otherwise);
    }

    private String share(double share) {
        return quantities.show(Math.round(share * 100) / 100.0, Dimension.SHARE);
    }
}
