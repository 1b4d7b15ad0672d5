package lungfish.plan;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.blower.Machine;
import lungfish.catalogue.BlowerClass;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Supply;
import lungfish.sizing.Asked;
import lungfish.sizing.Bench;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Running;

/** What is wrong, or good to know, about the blower. */
final class DutyFindings {
    private final Setup setup;
    private final Duty duty;
    private final Asked asked;
    private final List<Finding> findings = new ArrayList<>();

    private DutyFindings(Setup setup, Duty duty, Asked asked) {
        this.setup = setup;
        this.duty = duty;
        this.asked = asked;
    }

    static List<Finding> of(Setup setup, Duty duty, Asked asked) {
        DutyFindings own = new DutyFindings(setup, duty, asked);
        own.limits();
        own.index();
        own.shares();
        own.running();
        own.fleet().placed().forEach(each -> own.machine(each.machine()));
        return own.findings;
    }

    private void add(Code code, double found, double allowed, Dimension dimension) {
        add(code, fleet().placed().get(0).machine().part(), fleet().name(), found, allowed, dimension);
    }

    private void add(Code code, Machine machine, double found, double allowed, Dimension dimension) {
        add(code, machine.part(), machine.name(), found, allowed, dimension);
    }

    private void add(Code code, PartId part, String name, double found, double allowed, Dimension dimension) {
        findings.add(
                Finding.of(code, part, new Amount("found", found, dimension), new Amount("allowed", allowed, dimension))
                        .with("blower", name));
    }

    private Fleet fleet() {
        return duty.candidate().fleet();
    }

    private void limits() {
        Candidate candidate = duty.candidate();
        if (duty.recommended() && !candidate.serves()) {
            findings.add(Finding.of(Code.NO_BLOWER_FITS, PartId.ROOM).with("limit", stopped(candidate)));
        }
        for (Limit.Broken broken : candidate.broken()) {
            code(broken.limit())
                    .ifPresent(code -> add(
                            code,
                            broken.foundSi(),
                            broken.allowedSi(),
                            broken.limit().dimension()));
        }
    }

    private static String stopped(Candidate candidate) {
        return candidate.broken().stream()
                .filter(broken -> !broken.limit().isWish())
                .map(broken -> broken.limit().words())
                .distinct()
                .collect(joining(" and ", "the nearest is " + candidate.fleet().name() + ", stopped by ", ""));
    }

    /** Mains are told machine by machine; heat, noise, runtime, spare and speed by those who know more of them. */
    private static Optional<Code> code(Limit limit) {
        return switch (limit) {
            case FLOW -> Optional.of(Code.TOO_LITTLE_AIR);
            case PRESSURE -> Optional.of(Code.TOO_LITTLE_PRESSURE);
            case RATING -> Optional.of(Code.OVER_RATING);
            case RESERVE -> Optional.of(Code.BELOW_RESERVE);
            case LEAST_FLOW -> Optional.of(Code.BELOW_LEAST_FLOW);
            case MAINS, HEAT, NOISE, RUNTIME, SPARE, SPEED -> Optional.empty();
        };
    }

    private void index() {
        double runsPa = duty.candidate().tired().gaugePa();
        double neededPa = duty.needed().pressurePa();
        if (isShort(duty.candidate())) {
            return;
        }
        if (runsPa < neededPa * (1 - Misses.ROUNDING)) {
            add(Code.BLED_BELOW_NEED, runsPa, neededPa, Dimension.PRESSURE);
            return;
        }
        PartId index = duty.needed().index().id().part();
        Misses.spare(duty.needed(), duty.candidate(), asked.sparePa())
                .ifPresent(broken -> findings.add(Finding.of(
                        Code.INDEX_BELOW_RESERVE,
                        index,
                        new Amount("found", broken.foundSi(), Dimension.PRESSURE),
                        new Amount("allowed", broken.allowedSi(), Dimension.PRESSURE))));
    }

    private void shares() {
        List<Optional<Limit.Broken>> shares =
                isShort(duty.candidate()) ? List.of() : Misses.shares(duty.needed(), fleet());
        for (int i = 0; i < shares.size(); i++) {
            Machine machine = fleet().placed().get(i).machine();
            shares.get(i)
                    .ifPresent(broken ->
                            add(Code.SHARE_SHORT, machine, broken.foundSi(), broken.allowedSi(), Dimension.AIR_FLOW));
        }
    }

    private void running() {
        Candidate candidate = duty.candidate();
        Running running = candidate.tired();
        if (!running.insideCurve() && !isShort(candidate)) {
            List<BlowerClass.CurvePoint> points = candidate.kind().points();
            add(
                    Code.OUTSIDE_CURVE,
                    running.gaugePa(),
                    points.get(points.size() - 1).gaugePa(),
                    Dimension.PRESSURE);
        }
    }

    private void machine(Machine machine) {
        BlowerClass kind = machine.kind();
        Supply supply = setup.room().supply();
        Bench.otherMains(kind, asked)
                .ifPresent(mains ->
                        add(Code.VOLTAGE_DIFFERS, machine, mains.foundSi(), mains.allowedSi(), Dimension.VOLTAGE));
        double mainsHz = supply.frequencyHz().orElse(0);
        double madeForHz = kind.frequencyHz().orElse(mainsHz);
        if (supply.frequencyHz().isPresent() && madeForHz != mainsHz) {
            add(Code.FREQUENCY_DIFFERS, machine, madeForHz, mainsHz, Dimension.FREQUENCY);
        }
        OptionalDouble reliefPa = reliefPa(machine.part());
        if (kind.kind() == BlowerClass.Kind.ROTARY_VANE && reliefPa.isEmpty()) {
            findings.add(Finding.of(Code.NEEDS_RELIEF_VALVE, machine.part()).with("blower", machine.name()));
        }
        reliefPa.ifPresent(opensPa -> relief(machine, opensPa));
    }

    /** It must open before the machine is overloaded, and stay shut where the machine runs, new as well as tired. */
    private void relief(Machine machine, double opensPa) {
        double ratedPa = machine.kind().continuousPa();
        double runsPa = Math.max(
                duty.candidate().tired().gaugePa(), duty.candidate().fresh().gaugePa());
        if (opensPa > ratedPa) {
            add(Code.RELIEF_TOO_HIGH, machine, opensPa, ratedPa, Dimension.PRESSURE);
        }
        if (opensPa <= runsPa) {
            add(Code.RELIEF_OPENS, machine, opensPa, runsPa, Dimension.PRESSURE);
        }
    }

    private OptionalDouble reliefPa(PartId part) {
        return setup.planned().stream()
                .filter(blower -> blower.id().part().equals(part))
                .flatMapToDouble(blower -> blower.fittings().reliefPa().stream())
                .findFirst();
    }

    /** One that cannot give the air has no meeting with the demand: the place on its curve says nothing. */
    private static boolean isShort(Candidate candidate) {
        return candidate.reserveShare() < 0;
    }
}
