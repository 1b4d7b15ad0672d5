package lungfish.report;

import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.outage.Drills;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** Makes the drill card of a room: how long there is, what to do in which order, which tanks first. */
public final class DrillCards {
    private DrillCards() {}

    /** The card of a plan; the mains' failure and that of a blower are played through for it. */
    public static DrillCard of(Plan plan, Catalogue catalogue, Quantities quantities) {
        Optional<DrillPlayed> played = Drills.of(plan, catalogue).map(drills -> DrillPlayed.of(plan, drills));
        DrillTimes times = new DrillTimes(plan.room(), plan.airless(), quantities);
        DrillWords words = new DrillWords(catalogue, quantities, times);
        DrillHands hands = new DrillHands(plan, catalogue, played, words);
        return new DrillCard(
                plan.room().name(),
                times.clock(),
                new DrillSteps(plan, played, words).parts(),
                times.rows(),
                times.later(),
                times.safe(),
                plan.airless().unknown(),
                hands.outlook(),
                hands.atHand(),
                hands.never(),
                DrillHands.blanks(),
                hands.cautions());
    }
}
