package lungfish.plan;

import java.util.Optional;
import lungfish.backup.BackupAnswer;
import lungfish.oxygen.TankTime;

/**
 * How long the fish are safe when the mains fail: while the battery carries the blower, and then until the first tank is in
 * danger, at worst.
 *
 * @param runtimeS how long the battery carries all; 0 without one
 * @param first the tank that is first in danger once the air stops; absent where none of those that are judged ever is
 * @param wishedS how long it should hold
 */
public record Safe(double runtimeS, Optional<TankTime> first, double wishedS) {
    /** Of a plan; empty where no tank can be judged, or nothing is known that draws power. */
    public static Optional<Safe> of(Plan plan) {
        return plan.backup().filter(backup -> !plan.airless().tanks().isEmpty()).map(backup -> of(plan, backup));
    }

    private static Safe of(Plan plan, BackupAnswer backup) {
        return new Safe(
                backup.runtimeS().orElse(0),
                plan.airless().first(),
                backup.wishedS().si());
    }

    /** From the failure until the first tank is in danger, at worst, s; infinite where none ever is. */
    public double safeS() {
        return runtimeS
                + first.stream()
                        .flatMapToDouble(tank -> tank.cautiousS().stream())
                        .findFirst()
                        .orElse(Double.POSITIVE_INFINITY);
    }

    /** By how much that is longer than wished for, s; negative: shorter. */
    public double spareS() {
        return safeS() - wishedS;
    }

    public boolean isShort() {
        return spareS() < 0;
    }
}
