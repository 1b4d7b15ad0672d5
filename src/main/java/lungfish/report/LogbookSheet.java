package lungfish.report;

import static lungfish.document.Part.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.document.Document.Section;
import lungfish.document.Figure;
import lungfish.document.Part;
import lungfish.drawing.ReadingsPicture;
import lungfish.logbook.Due;
import lungfish.logbook.Logbook;
import lungfish.measured.MeasuredRoom;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** The log of a room: what it says of the blower, what is due, what was read and done. */
public final class LogbookSheet {
    private final Plan plan;
    private final Logbook logbook;
    private final LogbookWords words;
    private final LogWords said;

    private LogbookSheet(Plan plan, Logbook logbook, Quantities quantities) {
        this.plan = plan;
        this.logbook = logbook;
        Names names = new Names(plan.room());
        this.words = new LogbookWords(logbook, quantities, names);
        this.said = new LogWords(quantities, names);
    }

    /**
     * The section of a logbook, of this plan.
     *
     * @param measured the room as it was measured by that day; empty: nothing was read that tells
     */
    public static Section of(Plan plan, Logbook logbook, Optional<MeasuredRoom> measured, Quantities quantities) {
        LogbookSheet sheet = new LogbookSheet(plan, logbook, quantities);
        List<Part> parts = new ArrayList<>(sheet.told());
        measured.ifPresent(room -> parts.addAll(new MeasuredSheet(plan, quantities).parts(room)));
        parts.addAll(sheet.kept());
        return new Section("log", "Log", true, parts);
    }

    private List<Part> told() {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part.Paragraph(words.forecast()));
        if (ReadingsPicture.isWorthIt(logbook)) {
            parts.add(new Part.Picture(
                    new Figure.Readings(),
                    "What was read over time. The dotted lines are the band in which eight of ten lie.",
                    "Readings over time. " + words.forecast()));
        }
        words.leak().map(Part.Paragraph::new).ifPresent(parts::add);
        return parts;
    }

    private List<Part> kept() {
        List<Part> parts = new ArrayList<>();
        parts.add(dues());
        Stream.of(readings(), services()).filter(grid -> !grid.rows().isEmpty()).forEach(parts::add);
        return parts;
    }

    private Part.Grid dues() {
        Grids grid =
                new Grids("due", "What is due", words("What"), words("Every"), words("Last"), words("Due"), words(""));
        for (Due due : logbook.dues()) {
            grid.row(
                    words.what(due),
                    words.every(due),
                    LogbookWords.day(due.last(), "never"),
                    LogbookWords.day(due.due(), ""),
                    words.state(due));
        }
        return grid.grid();
    }

    private Part.Grid readings() {
        Grids grid = new Grids("readings", "What was read", words("Day"), words("What"));
        LogWords.newestFirst(plan.room().log()).stream()
                .filter(reading -> !reading.on().isAfter(logbook.today()))
                .forEach(reading -> grid.row(reading.on().toString(), said.says(reading)));
        return grid.grid();
    }

    private Part.Grid services() {
        Grids grid = new Grids("services", "What was done", words("Day"), words("What"));
        LogWords.servicesNewestFirst(plan.room().log()).stream()
                .filter(service -> !service.on().isAfter(logbook.today()))
                .forEach(service -> grid.row(service.on().toString(), said.says(service)));
        return grid.grid();
    }
}
