package lungfish.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lungfish.demand.Need;
import lungfish.outage.Drill;
import lungfish.outage.Power;
import lungfish.outage.State;
import lungfish.outage.Stretch;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** An outage in a keeper's words. */
public final class OutageWords {
    /** Said wherever times to trouble stand. */
    public static final String ESTIMATES = "Estimates to plan by: watch the fish.";

    /** What is taken of tanks that do not say whether they were just fed. */
    public static final String MEAL =
            "Whether a tank was just fed: the likely figure takes no, the cautious one a large meal (up to 2.2 times the use).";

    /** For a time that is not reached. */
    public static final String NOT_REACHED = "–";

    private static final int NAMED = 3;

    private final Drill drill;
    private final Quantities quantities;

    public OutageWords(Drill drill, Quantities quantities) {
        this.drill = drill;
        this.quantities = quantities;
    }

    /** The tank that is first in danger, or that none is: a headline. */
    public String first() {
        if (drill.judged().isEmpty()) {
            return "No tank can be judged: the room says neither fish nor food";
        }
        return drill.first().map(this::inDanger).orElseGet(() -> "No tank comes into danger within " + looked());
    }

    private String inDanger(TankDrill tank) {
        double cautious = tank.dangerS(Case.CAUTIOUS).orElseThrow();
        if (tank.tank().survivalS().isPresent()) {
            return "First in trouble: " + called(tank) + ": the time typed for it is over after " + time(cautious);
        }
        String when = cautious == 0 ? "in danger even with its air on" : "danger after " + time(cautious);
        return "First in trouble: " + called(tank) + ": " + when + " (cautious), " + likely(tank) + " (likely)";
    }

    private String likely(TankDrill tank) {
        OptionalDouble likely = tank.dangerS(Case.LIKELY);
        return likely.isPresent() ? time(likely.getAsDouble()) : "not within " + looked();
    }

    /** "Rack A, Boesemani rainbows". */
    public static String called(TankDrill tank) {
        return tank.rack().name() + ", " + tank.tank().name();
    }

    /** How many tanks come into danger, of those that are judged. */
    public String counts() {
        int judged = drill.judged().size();
        int cautious = drill.inDanger(Case.CAUTIOUS).size();
        int likely = drill.inDanger(Case.LIKELY).size();
        return "Of " + Sentences.counted(judged, "tank") + " " + inDanger(cautious) + " by the cautious figure, "
                + likely + " by the likely one.";
    }

    private static String inDanger(int tanks) {
        return tanks == 1 ? "1 comes into danger" : tanks + " come into danger";
    }

    /** The tanks that cannot be judged, and why; empty where all are. */
    public String unjudged() {
        List<TankDrill> unknown =
                drill.tanks().stream().filter(tank -> !tank.isJudged()).toList();
        if (unknown.isEmpty()) {
            return "";
        }
        String more = unknown.size() > NAMED ? " and " + (unknown.size() - NAMED) + " more" : "";
        return "Not judged, for the room says neither fish, food nor how long they live without air: "
                + unknown.stream().limit(NAMED).map(OutageWords::called).collect(Collectors.joining("; ")) + more + ".";
    }

    /** "The battery carries all 70 outlets until 7 h 40 min." */
    public String says(Stretch stretch) {
        if (stretch.outletsOn() == 0) {
            return "No outlet gets air " + span(stretch) + ".";
        }
        if (stretch.power() == Power.MAINS && stretch.state().equals(State.WELL)) {
            return "All is well " + span(stretch) + ".";
        }
        return Sentences.capital(who(stretch)) + " " + outlets(stretch) + " " + span(stretch) + ".";
    }

    private String who(Stretch stretch) {
        return runs(stretch) + (runsMany(stretch) ? " carry" : " carries");
    }

    private boolean runsMany(Stretch stretch) {
        return stretch.power() == Power.NONE || !drill.plannedBlower();
    }

    /** What gives air in a stretch: "the battery", "the blower and the standby". */
    public String runs(Stretch stretch) {
        State state = stretch.state();
        String machines = drill.plannedBlower() ? "the blower" : "the small pumps";
        String main =
                switch (stretch.power()) {
                    case MAINS -> state.stopped().isEmpty() ? machines : "what is left of " + machines;
                    case BATTERY -> "the battery";
                    case GENERATOR -> "the generator";
                    case NONE -> "";
                };
        String standby = state.standby() ? (main.isEmpty() ? "" : " and ") + "the standby" : "";
        String pumps = state.batteryPumps() ? (main.isEmpty() ? "" : " and ") + "the battery pumps" : "";
        return main + standby + pumps;
    }

    /** "all 70 outlets", "12 of 70 outlets, 3 of them short". */
    public String outlets(Stretch stretch) {
        int on = stretch.outletsOn();
        int all = drill.needs().size();
        int below = below(stretch);
        String some = on == all ? "all " + Sentences.counted(all, "outlet") : on + " of " + all + " outlets";
        return some + (below == 0 ? "" : ", " + below + " of them short");
    }

    /** Outlets that get some air, and less than they do their work with. */
    private int below(Stretch stretch) {
        int below = 0;
        for (int i = 0; i < drill.needs().size(); i++) {
            Need need = drill.needs().get(i);
            double air = stretch.airM3PerS().get(i);
            below += air > 0 && air < need.leastM3PerS() ? 1 : 0;
        }
        return below;
    }

    private String span(Stretch stretch) {
        boolean fromStart = stretch.fromS() == 0;
        boolean toEnd = stretch.toS() >= drill.scene().untilS();
        if (toEnd) {
            return fromStart ? "for all of the " + looked() : "from " + time(stretch.fromS()) + " on";
        }
        return (fromStart ? "" : "from " + time(stretch.fromS()) + " ") + "until " + time(stretch.toS());
    }

    private String looked() {
        return time(drill.scene().untilS());
    }

    /** A time, or a dash where it is not reached. */
    public String time(OptionalDouble seconds) {
        return seconds.isPresent() ? time(seconds.getAsDouble()) : NOT_REACHED;
    }

    private String time(double seconds) {
        return seconds == 0 ? "at once" : quantities.show(seconds, Dimension.DURATION);
    }
}
