package lungfish.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.outage.Drill;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Power;
import lungfish.outage.Scene;
import lungfish.oxygen.Case;
import lungfish.plan.Plan;
import lungfish.room.BlowerId;

/**
 * The two outages that a card is for, played through a day as the room is.
 *
 * @param mains the mains fail and stay away
 * @param blower the blower stops whose loss is felt first; absent where the air comes from none
 */
record DrillPlayed(Drill mains, Optional<Drill> blower) {
    static final double HOURS = 24;
    private static final double HOUR_S = 3600;

    static DrillPlayed of(Plan plan, Drills drills) {
        Drill mains = drills.play(Scene.mains(HOURS));
        Optional<Drill> worst = blowers(plan, mains)
                .map(id -> drills.play(new Scene(new Failing.BlowerStops(id), OptionalDouble.empty(), HOURS * HOUR_S)))
                .min(Comparator.comparingDouble(DrillPlayed::firstDangerS));
        return new DrillPlayed(mains, worst);
    }

    private static Stream<BlowerId> blowers(Plan plan, Drill mains) {
        Stream<String> ids = mains.plannedBlower()
                ? plan.duty().stream()
                        .flatMap(duty -> duty.candidate().fleet().placed().stream())
                        .map(placed -> placed.machine().part().id())
                : plan.pumps().stream().map(pump -> pump.pump().id().text());
        return ids.distinct().map(BlowerId::new);
    }

    /** By the cautious figure; infinite where there is none. */
    static double firstDangerS(Drill drill) {
        return drill.first()
                .map(tank -> tank.dangerS(Case.CAUTIOUS).orElse(Double.POSITIVE_INFINITY))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether something drives the blowers for a while when the mains are out. */
    boolean runsOn(Power power) {
        return mains.stretches().stream().anyMatch(stretch -> stretch.power() == power);
    }

    List<Drill> all() {
        return Stream.concat(Stream.of(mains), blower.stream()).toList();
    }
}
