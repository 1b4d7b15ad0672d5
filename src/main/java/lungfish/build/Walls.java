package lungfish.build;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.PipeSize.Material;
import lungfish.catalogue.ThreadClass;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Run;

/**
 * Whether the wall of a pipe holds a thread.
 *
 * @param findings of the plan, where it says which pipe is warm
 */
record Walls(Ways ways, List<Finding> findings) {
    /** 110 °F: no threads in PVC above it, by a pipe maker's table of temperatures. */
    private static final double WARMEST_K = 273.15 + (110 - 32) / 1.8;

    private static final String SCHEDULE_40 = "Schedule 40";

    /** What holds the thread, and why it is not the wall. */
    record Verdict(Tap.Hold hold, List<Finding> findings) {}

    Verdict of(Run run, ThreadClass thread) {
        PipeSize pipe = ways.pipe(run.size());
        if (pipe.wallM() < thread.engagementM()) {
            return saddle(Finding.of(
                            Code.WALL_THIN_FOR_THREAD,
                            run.id().part(),
                            new Amount("found", pipe.wallM(), Dimension.BORE),
                            new Amount("allowed", thread.engagementM(), Dimension.BORE))
                    .with("thread", thread.name())
                    .with("thicker", thicker(pipe, thread)));
        }
        if (pipe.standard().contains(SCHEDULE_40)) {
            return saddle(
                    Finding.of(Code.NO_THREAD_IN_SCHEDULE_40, run.id().part()).with("thicker", thicker(pipe, thread)));
        }
        return warmK(run, pipe)
                .map(warm -> saddle(Finding.of(
                        Code.NO_THREAD_IN_WARM_PIPE,
                        run.id().part(),
                        new Amount("found", warm, Dimension.TEMPERATURE),
                        new Amount("allowed", WARMEST_K, Dimension.TEMPERATURE))))
                .orElseGet(() -> new Verdict(Tap.Hold.WALL, List.of()));
    }

    private static Verdict saddle(Finding why) {
        return new Verdict(Tap.Hold.SADDLE, List.of(why));
    }

    /** ", or PVC Schedule 80, 1 in, with a wall that holds it": of the same outside, or nothing. */
    private String thicker(PipeSize pipe, ThreadClass thread) {
        return ways.catalogue().pipes().stream()
                .filter(other -> other.outsideM() == pipe.outsideM() && other.material() == pipe.material())
                .filter(other -> other.wallM() >= thread.engagementM()
                        && !other.standard().contains(SCHEDULE_40))
                .findFirst()
                .map(other -> ", or " + other.name() + ", whose wall holds it")
                .orElse("");
    }

    private Optional<Double> warmK(Run run, PipeSize pipe) {
        if (pipe.material() != Material.PVC) {
            return Optional.empty();
        }
        double placeK = run.surroundingsK().orElse(0);
        double airK = findings.stream()
                .filter(finding -> finding.code() == Code.PIPE_WARM || finding.code() == Code.PIPE_TOO_WARM)
                .filter(finding -> finding.where().equals(run.id().part()))
                .flatMap(finding -> finding.amounts().stream())
                .filter(amount -> amount.name().equals("hot") || amount.name().equals("found"))
                .mapToDouble(Amount::si)
                .max()
                .orElse(0);
        double warmest = Math.max(placeK, airK);
        return warmest > WARMEST_K ? Optional.of(warmest) : Optional.empty();
    }
}
