package lungfish.backup;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.reason.Given;
import lungfish.reason.Why;

/**
 * What keeps the air on.
 *
 * @param runtimeS how long the batteries carry the blower where it runs; absent without batteries
 * @param essentialRuntimeS how long with only the essential outlets on
 * @param wishedS how long it should hold
 * @param needed the battery that would hold so long
 * @param why how the runtime comes about; absent with it
 */
public record BackupAnswer(
        OptionalDouble runtimeS,
        OptionalDouble essentialRuntimeS,
        Given wishedS,
        Needed needed,
        List<Finding> findings,
        List<Assumption> assumptions,
        Optional<Why> why) {
    public BackupAnswer {
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }
}
