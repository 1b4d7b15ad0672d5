package lungfish.report;

import java.util.Optional;
import lungfish.oxygen.TankTime;
import lungfish.plan.Plan;
import lungfish.plan.Safe;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** Whether the fish are safe for the time wished when the mains fail, in few words. */
public final class SafeWords {
    private final Plan plan;
    private final Quantities quantities;

    public SafeWords(Plan plan, Quantities quantities) {
        this.plan = plan;
        this.quantities = quantities;
    }

    /** "safe 2 h 45 min longer than the 6 h wished for", "short by 4 h 55 min of the 6 h wished for"; empty where nobody can tell. */
    public Optional<String> verdict() {
        return Safe.of(plan).map(this::verdict);
    }

    private String verdict(Safe safe) {
        if (safe.first().isEmpty()) {
            return "safe: no tank comes into danger without air";
        }
        String wished = "the " + time(safe.wishedS()) + " wished for";
        return safe.isShort()
                ? "short by " + time(-safe.spareS()) + " of " + wished
                : "safe " + time(safe.spareS()) + " longer than " + wished;
    }

    /** "without air Kribs are in danger after 1 h 10 min at worst, likely 14 h"; what to say where nobody can tell. */
    public String first() {
        if (plan.airless().tanks().isEmpty()) {
            return "not judged how long the fish last: tell who lives in the tanks";
        }
        return plan.airless().first().map(this::first).orElse("no tank comes into danger without air");
    }

    private String first(TankTime tank) {
        String worst = time(tank.cautiousS().orElse(0));
        String name = "without air " + tank.tank().name() + ": ";
        if (tank.typed()) {
            return name + worst + " as typed";
        }
        String likely = tank.likelyS().isPresent() ? time(tank.likelyS().getAsDouble()) : "never";
        return name + "danger after " + worst + " at worst, likely " + likely;
    }

    private String time(double seconds) {
        return seconds == 0 ? "at once" : quantities.show(seconds, Dimension.DURATION);
    }
}
