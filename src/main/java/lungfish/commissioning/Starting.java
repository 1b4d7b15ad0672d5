package lungfish.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.blower.Wear;
import lungfish.build.Placing;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.commissioning.FirstStep.Kind;
import lungfish.piping.PipedRoom;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.sizing.Fleet;

/** Lays the steps of one first start, in order. */
final class Starting {
    private final Plan plan;
    private final Catalogue catalogue;
    private final Fleet fleet;
    private final double holdPa;
    private final LeakTest leak;
    private final Tuning tuning;
    private final List<FirstStep> steps = new ArrayList<>();

    Starting(Plan plan, Catalogue catalogue) {
        this.plan = plan;
        this.catalogue = catalogue;
        Duty duty = plan.duty().orElseThrow();
        PipedRoom piped = plan.piped().orElseThrow();
        this.fleet = duty.candidate().fleet();
        this.holdPa = duty.candidate().fresh().gaugePa();
        this.leak = LeakTest.of(
                fleet, piped.network().pipes(), holdPa, duty.needed().freeM3PerS());
        this.tuning = new Tuning(plan, piped, fleet, holdPa, catalogue);
    }

    /** Empty where a state on the way cannot be solved. */
    Optional<FirstStart> start() {
        before();
        pipe();
        List<FirstStep> set = tuning.steps();
        Optional<HeldRoom.Stand> last = tuning.last();
        if (set.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        starts();
        steps.addAll(set);
        then();
        return Optional.of(new FirstStart(
                steps,
                leak,
                holdPa,
                limitPa(fleet),
                fleet.watts(holdPa, Wear.NEW),
                last.get().bledM3PerS(),
                hasBleed(),
                alarmPa()));
    }

    private boolean hasBleed() {
        return !(fleet.bleed() instanceof Blower.Unbled);
    }

    /** The gauge that every machine of a fleet bears. */
    private static double limitPa(Fleet fleet) {
        double limitPa = Double.POSITIVE_INFINITY;
        for (int i = 0; i < fleet.placed().size(); i++) {
            limitPa = Math.min(limitPa, LeakTest.limitPa(fleet, i));
        }
        return limitPa;
    }

    private void before() {
        if (isCemented()) {
            steps.add(FirstStep.still("joints-cured", Kind.CURED, Reads.NOTHING));
        }
        steps.add(FirstStep.still("valves-shut", Kind.VALVES_SHUT, Reads.NOTHING));
        steps.add(FirstStep.still("check-valves", Kind.CHECK_VALVES, Reads.NOTHING));
        for (Fleet.Placed placed : fleet.placed()) {
            Optional<Blower> drawn = plan.room().blowers().stream()
                    .filter(blower -> blower.id().part().equals(placed.machine().part()))
                    .findFirst();
            Placing.reliefPa(placed.machine(), drawn)
                    .ifPresent(pa -> steps.add(FirstStep.still(
                                    "relief:" + placed.machine().part().id(),
                                    Kind.RELIEF,
                                    Reads.gauge(Expected.atMost(Math.min(pa, limitPa(fleet)))))
                            .at(placed.machine().part())));
        }
        steps.add(FirstStep.still("power", Kind.POWER, Reads.NOTHING));
        steps.add(FirstStep.still("gauge-zero", Kind.GAUGE_ZERO, Reads.gauge(Expected.near(0, Expected.GAUGE_PA))));
    }

    private boolean isCemented() {
        return plan.room().runs().stream()
                .flatMap(run -> catalogue.pipe(run.size()).stream())
                .anyMatch(pipe -> pipe.material() == PipeSize.Material.PVC);
    }

    private void pipe() {
        steps.add(FirstStep.running(
                "blow-out",
                Kind.BLOWN_OUT,
                Reads.gauge(Expected.atMost(Math.min(leak.testPa(), tuning.openPa() + Expected.GAUGE_PA)))));
        steps.add(FirstStep.running(
                        "leak-test", Kind.LEAK_TEST, Reads.gauge(Expected.near(leak.testPa(), Expected.GAUGE_PA)))
                .at(fleet.placed().get(leak.place()).machine().part()));
        steps.add(FirstStep.still(
                "leak-fall", Kind.LEAK_FALL, Reads.gauge(Expected.atLeast(leak.leastLeftPa(leak.testPa())))));
    }

    private void starts() {
        steps.add(FirstStep.still("devices-on", Kind.DEVICES_ON, Reads.NOTHING));
        for (Fleet.Placed placed : fleet.placed()) {
            steps.add(FirstStep.running(
                            "start:" + placed.machine().part().id(), Kind.STARTED, Reads.gauge(Expected.atMost(holdPa)))
                    .at(placed.machine().part()));
        }
    }

    private void then() {
        steps.addAll(new Standbys(plan, catalogue, fleet, holdPa, tuning.setK()).steps());
        alarmPa().ifPresent(pa -> {
            steps.add(FirstStep.still("alarm-set", Kind.ALARM_SET, Reads.NOTHING));
            steps.add(
                    FirstStep.still("alarm-test", Kind.ALARM_TEST, Reads.gauge(Expected.near(pa, Expected.GAUGE_PA))));
        });
        steps.add(FirstStep.running("baseline", Kind.BASELINE, tuning.settled()));
    }

    /** Where the room's alarm is set, or else should be. */
    private OptionalDouble alarmPa() {
        OptionalDouble said =
                plan.room().backup().alarm().map(Backup.Alarm::setPa).orElse(OptionalDouble.empty());
        return said.isPresent() ? said : plan.alarmPa();
    }
}
