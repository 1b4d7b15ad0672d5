package lungfish.edit;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumable;
import lungfish.room.Wishes;

/** The levels of oxygen at which one must be there: the alarm goes before there is danger. */
final class OxygenLevels {
    private OxygenLevels() {}

    /** What is wrong with them; a level that is not said counts as it will be assumed. */
    static Optional<Refused> trouble(Wishes wishes) {
        double alarm = level(wishes.alarmKgPerM3(), Assumable.ALARM_OXYGEN);
        double danger = level(wishes.dangerKgPerM3(), Assumable.DANGER_OXYGEN);
        boolean isSaid =
                wishes.alarmKgPerM3().isPresent() || wishes.dangerKgPerM3().isPresent();
        return isSaid && danger >= alarm
                ? Optional.of(Refused.because(
                        "The alarm at {alarm}" + assumed(wishes.alarmKgPerM3())
                                + " would not go before the danger at {danger}" + assumed(wishes.dangerKgPerM3()) + ".",
                        "Let the alarm go at more oxygen than where the danger begins.",
                        new Amount("alarm", alarm, Dimension.CONCENTRATION),
                        new Amount("danger", danger, Dimension.CONCENTRATION)))
                : Optional.empty();
    }

    private static double level(OptionalDouble said, Assumable otherwise) {
        return said.orElseGet(() -> CatalogueFiles.load().assumed(otherwise).si());
    }

    private static String assumed(OptionalDouble said) {
        return said.isPresent() ? "" : " (assumed)";
    }
}
