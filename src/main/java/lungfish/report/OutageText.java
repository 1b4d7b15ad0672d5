package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.outage.Drill;
import lungfish.outage.Power;
import lungfish.outage.Stretch;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Room;

/** An outage played through, as a page of text. */
public final class OutageText {
    /** Where nothing gives air. */
    public static final String NO_AIR =
            "Nothing gives air in this room yet, so nothing can fail: 'check' says what is missing.\n";

    /** A longer list is read by nobody in a hurry; all of it is in the JSON. */
    private static final int MOST_TANKS = 15;

    private static final double KG_PER_G = 1e-3;

    private final Room room;
    private final Quantities quantities;
    private final Names names;
    private final Page page = new Page();

    public OutageText(Room room, Quantities quantities) {
        this.room = room;
        this.quantities = quantities;
        this.names = new Names(room);
    }

    /** A page for people. */
    public String text(Drill drill) {
        OutageWords words = new OutageWords(drill, quantities);
        page.heading(room.name()).paragraph(words.first() + ".");
        page.paragraph(new FailingWords(quantities, names).scene(drill) + " " + OutageWords.ESTIMATES);
        page.paragraph("").table(stretches(drill, words));
        tanks(drill, words);
        if (!drill.assumptions().isEmpty() || drill.isMealUnsaid()) {
            assumed(drill);
        }
        page.heading("Take care");
        OutageCautions.of(room.backup(), quantities).forEach(caution -> page.item("!", caution));
        return page.text();
    }

    private Table stretches(Drill drill, OutageWords words) {
        Table table = new Table(
                numbers("From"), numbers("Until"), words("Runs"), words("Outlets with air"), numbers("Battery"));
        for (Stretch stretch : drill.stretches()) {
            String runs = words.runs(stretch);
            table.row(
                    time(stretch.fromS()),
                    time(stretch.toS()),
                    runs.isEmpty() ? "nothing" : runs,
                    stretch.outletsOn() == 0 ? "none" : words.outlets(stretch),
                    battery(stretch));
        }
        return table;
    }

    private String battery(Stretch stretch) {
        boolean moves = stretch.power() == Power.BATTERY || stretch.chargeFrom() != stretch.chargeTo();
        return moves ? share(stretch.chargeFrom()) + " → " + share(stretch.chargeTo()) : share(stretch.chargeFrom());
    }

    private void tanks(Drill drill, OutageWords words) {
        List<TankDrill> troubled = drill.inTrouble();
        if (!troubled.isEmpty()) {
            page.heading("Tanks in trouble, the first first: oxygen with the air on, and times, cautious / likely");
            page.table(table(troubled, words));
            below(drill, troubled.size());
        }
        page.paragraph("");
        if (!drill.judged().isEmpty()) {
            page.paragraph(words.counts() + " " + above(drill, troubled.size()));
        }
        if (!words.unjudged().isEmpty()) {
            page.paragraph(words.unjudged());
        }
    }

    private void below(Drill drill, int troubled) {
        String more = troubled > MOST_TANKS ? "And " + (troubled - MOST_TANKS) + " more, later than these. " : "";
        page.item(
                "",
                more + "● essential. Alarm below " + level(drill.levels().alarmGPerM3()) + ", danger below "
                        + level(drill.levels().dangerGPerM3()) + "; " + OutageWords.NOT_REACHED
                        + " not in the time looked at.");
    }

    private static String above(Drill drill, int troubled) {
        int never = drill.judged().size() - troubled;
        return never == 0
                ? "None stays above the alarm level by both figures."
                : never + (never == 1 ? " stays" : " stay") + " above the alarm level by both figures.";
    }

    private Table table(List<TankDrill> troubled, OutageWords words) {
        Table table = new Table(
                words(""),
                words("Tank"),
                words("Rack"),
                numbers("Water"),
                numbers("Oxygen"),
                numbers("Alarm after"),
                numbers("Danger after"));
        troubled.stream()
                .limit(MOST_TANKS)
                .forEach(tank -> table.row(
                        tank.essential() ? "●" : "",
                        tank.tank().name(),
                        tank.rack().name(),
                        quantities.show(tank.tank().waterM3(), Dimension.VOLUME),
                        start(tank),
                        both(tank, tank.alarmS(Case.CAUTIOUS), tank.alarmS(Case.LIKELY), words),
                        both(tank, tank.dangerS(Case.CAUTIOUS), tank.dangerS(Case.LIKELY), words)));
        return table;
    }

    /** A time that is typed is the same in both. */
    private static String both(TankDrill tank, OptionalDouble cautious, OptionalDouble likely, OutageWords words) {
        boolean typed = tank.tank().survivalS().isPresent();
        return words.time(cautious) + (typed ? "" : " / " + words.time(likely));
    }

    private String start(TankDrill tank) {
        return tank.tank().survivalS().isPresent()
                ? "as typed"
                : tank.courses()
                        .map(both -> number(both.cautious().startGPerM3()) + " / "
                                + level(both.likely().startGPerM3()))
                        .orElse("");
    }

    private void assumed(Drill drill) {
        Sentences sentences = new Sentences(quantities, names);
        page.heading("Assumed, for the room does not say");
        drill.assumptions().forEach(assumption -> page.item("", Sentences.capital(sentences.says(assumption)) + "."));
        if (drill.isMealUnsaid()) {
            page.item("", OutageWords.MEAL);
        }
    }

    private String time(double seconds) {
        return seconds == 0 ? "0" : quantities.show(seconds, Dimension.DURATION);
    }

    private String level(double gPerM3) {
        return quantities.show(KG_PER_G * gPerM3, Dimension.CONCENTRATION);
    }

    private String number(double gPerM3) {
        return quantities.number(KG_PER_G * gPerM3, Dimension.CONCENTRATION);
    }

    private String share(double share) {
        return quantities.show(share, Dimension.SHARE);
    }
}
