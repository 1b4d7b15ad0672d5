package lungfish.oxygen;

import static org.assertj.core.api.Assertions.assertThat;

import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumable;
import org.junit.jupiter.api.Test;

/** Warm-water fish, by a teaching page, Principles of Aquaculture, Dissolved oxygen requirements of fish; mg/L. */
final class PublishedLimitsTest {
    private static final double DIE_WITHIN_HOURS = 0.3;
    private static final double MOST_DIE_AFTER_DAYS = 1.5;
    private static final double WANTED_FOR_GROWTH = 5.0;

    /** Cautious: what is called danger lies above what kills, and the alarm before it below what is wanted every day. */
    @Test
    void dangerLiesAboveWhatKillsAndAlarmBelowWhatIsWanted() {
        double danger = mgPerL(Assumable.DANGER_OXYGEN);
        double alarm = mgPerL(Assumable.ALARM_OXYGEN);
        assertThat(danger).isGreaterThan(MOST_DIE_AFTER_DAYS).isGreaterThan(DIE_WITHIN_HOURS);
        assertThat(alarm).isGreaterThan(danger).isLessThan(WANTED_FOR_GROWTH);
    }

    private static double mgPerL(Assumable level) {
        Catalogue catalogue = CatalogueFiles.load();
        return 1000 * catalogue.assumed(level).si();
    }
}
