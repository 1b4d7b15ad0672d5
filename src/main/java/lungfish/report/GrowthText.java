package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Place;
import lungfish.growth.RackFit;
import lungfish.growth.Stage;
import lungfish.growth.Stages;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.sizing.Needed;

/** How a room grows, as text for people: its stages, the way out, and where along the pipe there is room. */
public final class GrowthText {
    private final Room room;
    private final Quantities quantities;
    private final Names names;
    private final GrowthWords words;

    public GrowthText(Room room, Quantities quantities) {
        this.room = room;
        this.quantities = quantities;
        this.names = new Names(room);
        this.words = new GrowthWords(quantities, names);
    }

    /** The text; of a room that cannot be solved, a line that says so. */
    public String text(Optional<Stages> stages, Optional<HeadroomMap> map) {
        if (stages.isEmpty()) {
            return "The room cannot be solved, so it cannot be grown: 'check' says what is missing.\n";
        }
        Page page = new Page().heading(room.name() + ". " + words.headline(stages.get()));
        page.paragraph(GrowthWords.blower(stages.get()) + " Tired, with devices due for cleaning.");
        page.paragraph("").table(table(stages.get()));
        if (stages.get().firstToBreak().isPresent()) {
            mends(stages.get(), page);
        }
        map.ifPresent(there -> where(there, page));
        return page.text();
    }

    private Table table(Stages stages) {
        Table table = new Table(
                words(""),
                words("Stage"),
                numbers("Outlets"),
                numbers("Needs"),
                numbers("At"),
                numbers("Reserve"),
                numbers("More"),
                words("Racks that come"));
        for (Stage stage : stages.all()) {
            Needed needed = stage.needed();
            table.row(
                    GrowthWords.mark(stage.state()),
                    GrowthWords.when(stage.when()),
                    String.valueOf(stage.outlets()),
                    show(needed.freeM3PerS(), Dimension.AIR_FLOW),
                    show(needed.pressurePa(), Dimension.PRESSURE),
                    show(stage.standing().blower().reserveShare(), Dimension.SHARE),
                    String.valueOf(stage.standing().headroom().outlets()),
                    words.racks(stage));
        }
        return table;
    }

    private void mends(Stages stages, Page page) {
        page.paragraph("");
        for (Stage stage : stages.all()) {
            if (stage.state() == Stage.State.BREAKS) {
                page.item(
                        GrowthWords.mark(stage.state()),
                        GrowthWords.when(stage.when()) + ": " + words.verdict(stage) + ". "
                                + stage.standing().repair().map(words::mend).orElse(""));
            }
        }
        words.foresight(stages).ifPresent(says -> page.item("→", says));
    }

    private void where(HeadroomMap map, Page page) {
        page.heading("Where: " + words.headline(map));
        page.paragraph("Each " + words.newcomer(map.newcomer()) + "; a place stands alone, the counts do not add up.");
        if (map.placeMatters()) {
            page.table(runs(map));
        }
        for (RackFit rack : map.racks()) {
            page.item(
                    "◇",
                    names.of(rack.rack().part()) + ", " + Sentences.counted(rack.outlets(), "outlet") + ": "
                            + words.rack(rack) + ".");
        }
    }

    /** Of each run the place of the fewest and that of the most. */
    private Table runs(HeadroomMap map) {
        Map<RunId, List<Place>> byRun = new LinkedHashMap<>();
        map.places().forEach(place -> byRun.computeIfAbsent(place.run(), run -> new ArrayList<>())
                .add(place));
        Table table = new Table(
                words("Pipe"), numbers("Fewest"), words("at"), numbers("Most"), words("at"), words("First to break"));
        byRun.forEach((run, places) -> {
            Place least =
                    places.stream().min(Comparator.comparingInt(Place::outlets)).orElseThrow();
            Place most =
                    places.stream().max(Comparator.comparingInt(Place::outlets)).orElseThrow();
            table.row(
                    names.of(run.part()),
                    String.valueOf(least.outlets()),
                    show(least.alongM(), Dimension.LENGTH),
                    String.valueOf(most.outlets()),
                    show(most.alongM(), Dimension.LENGTH),
                    words.limit(least.fits().limit()));
        });
        return table;
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
