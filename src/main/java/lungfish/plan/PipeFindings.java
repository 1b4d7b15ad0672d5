package lungfish.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.air.Air;
import lungfish.blower.Discharge;
import lungfish.catalogue.PipeSize;
import lungfish.piping.Stretch;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Run;
import lungfish.room.RunId;

/** What is wrong, or good to know, about the pipe: heat, thin walls, fast air, water that gathers. */
final class PipeFindings {
    /** Three full threads of a 1/8 in, 27 to the inch taper thread: common practice, no source. */
    private static final double LEAST_WALL_M = 3 * 0.0254 / 27;

    /** Air hotter than this burns skin that touches its pipe. Common practice, no source. */
    private static final double HOT_K = Air.ZERO_CELSIUS_K + 60;

    private final Setup setup;
    private final AirSide air;
    private final List<Finding> findings = new ArrayList<>();

    private PipeFindings(Setup setup, AirSide air) {
        this.setup = setup;
        this.air = air;
    }

    static List<Finding> of(Setup setup, AirSide air) {
        PipeFindings own = new PipeFindings(setup, air);
        own.heat();
        own.walls();
        own.speed();
        own.findings.addAll(Condensation.of(setup, air));
        own.plastic();
        return own.findings;
    }

    private Optional<PipeSize> size(Run run) {
        return setup.catalogue().pipe(run.size());
    }

    private void heat() {
        Discharge discharge = air.duty().candidate().tired().discharge();
        Set<RunId> fed = fedRuns();
        setup.room().runs().stream().filter(run -> fed.contains(run.id())).forEach(run -> size(run)
                .ifPresent(size -> heat(run, size, discharge)));
        if (discharge.hotK() > HOT_K) {
            findings.add(Finding.of(
                    Code.HOT_DISCHARGE,
                    discharge.machine(),
                    temperature("found", discharge.coolK()),
                    temperature("hot", discharge.hotK())));
        }
    }

    /** The runs that the blowers' hoses lead to: there the air is hottest. */
    private Set<RunId> fedRuns() {
        Collection<String> outlets = air.piped().blowerNodes().values();
        return air.piped().network().pipes().stream()
                .filter(pipe -> outlets.contains(pipe.from()))
                .flatMap(pipe -> Optional.ofNullable(air.piped().spots().get(pipe.to())).stream())
                .flatMap(spot -> spot.run().stream())
                .collect(Collectors.toSet());
    }

    private void heat(Run run, PipeSize size, Discharge discharge) {
        PartId part = run.id().part();
        if (discharge.coolK() > size.warmestK()) {
            findings.add(Finding.of(
                    Code.PIPE_TOO_WARM,
                    part,
                    temperature("found", discharge.coolK()),
                    temperature("allowed", size.warmestK())));
        } else if (discharge.hotK() > size.warmestK() && findings.stream().noneMatch(this::isWarm)) {
            findings.add(Finding.of(
                    Code.PIPE_WARM,
                    part,
                    temperature("found", discharge.coolK()),
                    temperature("hot", discharge.hotK()),
                    temperature("allowed", size.deratedAboveK())));
        }
    }

    private boolean isWarm(Finding finding) {
        return finding.code() == Code.PIPE_WARM;
    }

    private static Amount temperature(String name, double kelvin) {
        return new Amount(name, kelvin, Dimension.TEMPERATURE);
    }

    /** One finding for each size that is too thin: its first run. */
    private void walls() {
        Set<RunId> tapped = air.piped().network().drops().stream()
                .flatMap(drop -> Optional.ofNullable(air.piped().spots().get(drop.node())).stream())
                .flatMap(spot -> spot.run().stream())
                .collect(Collectors.toSet());
        Set<String> told = new HashSet<>();
        for (Run run : setup.room().runs()) {
            size(run)
                    .filter(size -> size.wallM() < LEAST_WALL_M && tapped.contains(run.id()))
                    .filter(size -> told.add(size.id()))
                    .ifPresent(size -> findings.add(Finding.of(
                            Code.PIPE_WALL_THIN,
                            run.id().part(),
                            new Amount("found", size.wallM(), Dimension.BORE),
                            new Amount("allowed", LEAST_WALL_M, Dimension.BORE))));
        }
    }

    private void speed() {
        AirSpeed fastest = AirSpeed.of(air.predicted(), pipe -> true);
        if (fastest.isFast()) {
            findings.add(Finding.of(
                    Code.FAST_AIR,
                    part(fastest.pipe()),
                    new Amount("found", fastest.metresPerS(), Dimension.SPEED),
                    new Amount("allowed", AirSpeed.FAST_M_PER_S, Dimension.SPEED)));
        }
    }

    private PartId part(int pipe) {
        return air.piped().stretch(pipe).map(Stretch::run).map(RunId::part).orElse(PartId.ROOM);
    }

    private void plastic() {
        setup.room().runs().stream()
                .filter(run -> size(run)
                        .filter(size -> size.material() == PipeSize.Material.PVC)
                        .isPresent())
                .findFirst()
                .ifPresent(run ->
                        findings.add(Finding.of(Code.PVC_AND_AIR, run.id().part())));
    }
}
