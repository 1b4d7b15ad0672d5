package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;
import lungfish.sizing.Running;

/** What is wrong, or good to know, about the blower. */
final class DutyFindings {
    /** A blower that keeps more than this share beyond the need is far too big: common practice, no source. */
    private static final double FAR_TOO_BIG_SHARE = 3;

    private final Setup setup;
    private final Duty duty;
    private final double wishedSparePa;
    private final List<Finding> findings = new ArrayList<>();

    private DutyFindings(Setup setup, Duty duty, double wishedSparePa) {
        this.setup = setup;
        this.duty = duty;
        this.wishedSparePa = wishedSparePa;
    }

    static List<Finding> of(Setup setup, Duty duty, double wishedSparePa) {
        DutyFindings own = new DutyFindings(setup, duty, wishedSparePa);
        own.limits();
        own.index();
        own.machine();
        return own.findings;
    }

    private PartId part() {
        return duty.candidate().fleet().placed().get(0).machine().part();
    }

    private void add(Code code, double found, double allowed, Dimension dimension) {
        findings.add(Finding.of(
                        code, part(), new Amount("found", found, dimension), new Amount("allowed", allowed, dimension))
                .with("blower", duty.candidate().fleet().name()));
    }

    private void limits() {
        Candidate candidate = duty.candidate();
        if (duty.recommended() && !candidate.serves()) {
            findings.add(Finding.of(Code.NO_BLOWER_FITS, PartId.ROOM)
                    .with("limit", "the nearest is " + candidate.fleet().name()));
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

    /** Noise and runtime are told by those who know more of them. */
    private static Optional<Code> code(Limit limit) {
        return switch (limit) {
            case FLOW -> Optional.of(Code.TOO_LITTLE_AIR);
            case PRESSURE -> Optional.of(Code.TOO_LITTLE_PRESSURE);
            case RATING -> Optional.of(Code.OVER_RATING);
            case RESERVE -> Optional.of(Code.BELOW_RESERVE);
            case LEAST_FLOW -> Optional.of(Code.BELOW_LEAST_FLOW);
            case MAINS -> Optional.of(Code.VOLTAGE_DIFFERS);
            case HEAT, NOISE, RUNTIME -> Optional.empty();
        };
    }

    private void index() {
        double sparePa = duty.candidate().tired().gaugePa() - duty.needed().pressurePa();
        if (duty.candidate().reserveShare() >= 0 && sparePa < wishedSparePa * (1 - 1e-6)) {
            findings.add(Finding.of(
                    Code.INDEX_BELOW_RESERVE,
                    duty.needed().index().id().part(),
                    new Amount("found", Math.max(0, sparePa), Dimension.PRESSURE),
                    new Amount("allowed", wishedSparePa, Dimension.PRESSURE)));
        }
    }

    private void machine() {
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
        if (candidate.reserveShare() > FAR_TOO_BIG_SHARE && !duty.recommended()) {
            double gives = (1 + candidate.reserveShare()) * duty.needed().freeM3PerS();
            add(Code.FAR_TOO_BIG, gives, duty.needed().freeM3PerS(), Dimension.AIR_FLOW);
        }
        frequency(candidate.kind());
        if (candidate.kind().kind() == BlowerClass.Kind.ROTARY_VANE && !hasReliefValve()) {
            findings.add(Finding.of(Code.NEEDS_RELIEF_VALVE, part())
                    .with("blower", candidate.fleet().name()));
        }
    }

    /** One that cannot give the air has no meeting with the demand: the place on its curve says nothing. */
    private static boolean isShort(Candidate candidate) {
        return candidate.reserveShare() < 0;
    }

    private void frequency(BlowerClass kind) {
        OptionalDouble mains = setup.room().supply().frequencyHz();
        if (mains.isPresent()
                && kind.frequencyHz().isPresent()
                && mains.getAsDouble() != kind.frequencyHz().getAsDouble()) {
            add(Code.FREQUENCY_DIFFERS, kind.frequencyHz().getAsDouble(), mains.getAsDouble(), Dimension.FREQUENCY);
        }
    }

    private boolean hasReliefValve() {
        return setup.planned().stream().map(Blower::fittings).allMatch(fittings -> fittings.reliefPa()
                .isPresent());
    }
}
