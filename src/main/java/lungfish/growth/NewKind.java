package lungfish.growth;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.headroom.Newcomer;
import lungfish.plan.Basis;
import lungfish.room.Classes;

/**
 * Which outlets are to be hung on.
 *
 * @param device a class of the catalogue or of the room; absent, or no longer there: what most outlets have
 * @param depthM of their air release; absent: as deep as the deepest of that kind, or of the commonest where none is there
 */
public record NewKind(Optional<String> device, OptionalDouble depthM) {
    /** Like the commonest outlet, at its deepest: as the headline counts. */
    public static final NewKind COMMONEST = new NewKind(Optional.empty(), OptionalDouble.empty());

    Newcomer newcomer(Basis basis) {
        Classes classes = new Classes(basis.room().ownClasses(), basis.catalogue());
        Newcomer commonest = Newcomer.commonest(basis.piped().needs());
        return Newcomer.of(
                basis.piped().needs(), device.flatMap(classes::device).orElse(commonest.device()), depthM);
    }
}
