package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.outage.Drill;
import lungfish.outage.Stretch;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.oxygen.Course;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** An outage in short, as a sheet tells it: always both figures, at worst and likely. */
public final class OutageBrief {
    /** What to do where nothing can be judged. */
    public static final String TELL_WHO = "not judged: tell who lives there";

    private static final double KG_PER_G = 1e-3;

    /** A reason is one line: what comes later is seen on the time line. */
    private static final int STRETCHES = 3;

    private final Drill drill;
    private final OutageWords words;
    private final Quantities quantities;

    public OutageBrief(Drill drill, Quantities quantities) {
        this.drill = drill;
        this.words = new OutageWords(drill, quantities);
        this.quantities = quantities;
    }

    /** The first tank in trouble with both figures, or that none is. */
    public String headline() {
        if (drill.judged().isEmpty()) {
            return "No tank can be judged yet";
        }
        return drill.first()
                .map(tank -> tank.tank().name() + ": " + danger(tank))
                .orElseGet(() ->
                        "No tank comes into danger in " + time(drill.scene().untilS()));
    }

    /** What runs till when; where nothing can be judged, what to say. */
    public String because() {
        if (drill.judged().isEmpty()) {
            return "Nobody says which fish live here, or how they are fed. Choose a tank and say who lives in it.";
        }
        List<String> said = new ArrayList<>();
        drill.inTrouble().stream().findFirst().map(this::where).ifPresent(said::add);
        List<Stretch> stretches = drill.stretches();
        for (int i = 0; i < Math.min(STRETCHES, stretches.size()); i++) {
            said.add(words.says(stretches.get(i)));
        }
        return String.join(" ", said);
    }

    private String where(TankDrill tank) {
        return tank.dangerS(Case.CAUTIOUS).isPresent()
                ? "It stands in " + tank.rack().name() + "."
                : "First below the alarm level: " + OutageWords.called(tank) + ", " + alarm(tank) + ".";
    }

    /** "danger after 1 h 10 min at worst, likely 14 h". */
    public String danger(TankDrill tank) {
        if (!tank.isJudged()) {
            return TELL_WHO;
        }
        OptionalDouble worst = tank.dangerS(Case.CAUTIOUS);
        if (worst.isEmpty()) {
            return "no danger in " + time(drill.scene().untilS());
        }
        if (tank.tank().survivalS().isPresent()) {
            return "the time typed for it is over after " + time(worst.getAsDouble());
        }
        String first = worst.getAsDouble() == 0
                ? "in danger at worst even with its air on"
                : "danger after " + time(worst.getAsDouble()) + " at worst";
        return first + ", " + likely(tank.dangerS(Case.LIKELY));
    }

    private String likely(OptionalDouble seconds) {
        return seconds.isPresent()
                ? "likely " + time(seconds.getAsDouble())
                : "likely not in " + time(drill.scene().untilS());
    }

    /** "alarm after 50 min at worst, likely 9 h"; empty where that is not told of it. */
    public String alarm(TankDrill tank) {
        OptionalDouble worst = tank.alarmS(Case.CAUTIOUS);
        if (worst.isEmpty() || tank.tank().survivalS().isPresent()) {
            return "";
        }
        String first = worst.getAsDouble() == 0
                ? "alarm from the start at worst"
                : "alarm after " + time(worst.getAsDouble()) + " at worst";
        return first + ", " + likely(tank.alarmS(Case.LIKELY));
    }

    /** "4.2 mg/L at worst, likely 5.6 mg/L". */
    public String tells(TankDrill tank, double atS) {
        return tank.courses()
                .map(both -> level(both.cautious(), atS) + " at worst, likely " + level(both.likely(), atS))
                .orElseGet(() -> danger(tank));
    }

    private String level(Course course, double atS) {
        return quantities.show(KG_PER_G * course.atS(atS), Dimension.CONCENTRATION);
    }

    /** What runs at a time: "After 2 h 10 min: all 90 outlets have air from the battery; battery 63 %." */
    public String runs(double atS) {
        Stretch stretch = drill.at(atS);
        String when = atS == 0 ? "As it fails" : "After " + time(atS);
        String air = stretch.outletsOn() == 0
                ? "no outlet has air"
                : words.outlets(stretch) + ", with air from " + words.runs(stretch);
        return when + ": " + air + battery(stretch, atS) + ".";
    }

    private String battery(Stretch stretch, double atS) {
        double part = (atS - stretch.fromS()) / (stretch.toS() - stretch.fromS());
        double share = stretch.chargeFrom() + Math.min(1, part) * (stretch.chargeTo() - stretch.chargeFrom());
        boolean isAny = drill.stretches().stream().anyMatch(each -> each.chargeFrom() > 0);
        return isAny ? "; battery " + quantities.show(share, Dimension.SHARE) : "";
    }

    private String time(double seconds) {
        return seconds == 0 ? "at once" : quantities.show(seconds, Dimension.DURATION);
    }
}
