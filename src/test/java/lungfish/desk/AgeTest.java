package lungfish.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import lungfish.blower.Wear;
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Upkeep;
import lungfish.headroom.Headroom;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;

final class AgeTest {
    private static final Plan PLAN = new Planner(CatalogueFiles.load()).plan(Rooms.small());
    private static final Duty DUTY = PLAN.duty().orElseThrow();
    private static final Headroom HEADROOM = PLAN.headroom().orElseThrow();
    private static final double SAME_SUM_M3_PER_S = 1e-12; // the same terms, added elsewhere

    private static final Age NEW_AND_CLEAN = new Age(Wear.NEW, Upkeep.CLEAN);

    @Test
    void headlinesAreOfTheTiredBlowerWithDevicesDue() {
        assertThat(Age.OF_HEADLINES.running(DUTY)).isEqualTo(DUTY.candidate().tired());
        assertThat(Age.OF_HEADLINES.needed(DUTY)).isEqualTo(DUTY.needed());
    }

    @Test
    void eachHalfChangesItsOwnAnswer() {
        Age newAndDue = Age.OF_HEADLINES.with(Wear.NEW);
        assertThat(newAndDue.running(DUTY)).isEqualTo(DUTY.candidate().fresh());
        assertThat(newAndDue.needed(DUTY)).isEqualTo(DUTY.needed());
        Age tiredAndClean = Age.OF_HEADLINES.with(Upkeep.CLEAN);
        assertThat(tiredAndClean.running(DUTY)).isEqualTo(DUTY.candidate().tired());
        assertThat(tiredAndClean.needed(DUTY)).isEqualTo(DUTY.neededClean());
    }

    @Test
    void theAirToSpareIsThatOfTheHeadroomAtBothEnds() {
        assertThat(Age.OF_HEADLINES.spareM3PerS(DUTY)).isCloseTo(HEADROOM.freeM3PerS(), within(SAME_SUM_M3_PER_S));
        assertThat(NEW_AND_CLEAN.spareM3PerS(DUTY)).isCloseTo(HEADROOM.freshFreeM3PerS(), within(SAME_SUM_M3_PER_S));
    }

    @Test
    void ageNeverHelps() {
        double both = Age.OF_HEADLINES.spareM3PerS(DUTY);
        double tired = Age.OF_HEADLINES.with(Upkeep.CLEAN).spareM3PerS(DUTY);
        double due = Age.OF_HEADLINES.with(Wear.NEW).spareM3PerS(DUTY);
        assertThat(both).isLessThan(Math.min(tired, due));
        assertThat(NEW_AND_CLEAN.spareM3PerS(DUTY)).isGreaterThan(Math.max(tired, due));
    }

    @Test
    void twoChoicesMakeOneAge() {
        assertThat(Optional.of(Age.OF_HEADLINES.with(Wear.NEW).with(Upkeep.CLEAN)))
                .hasValue(NEW_AND_CLEAN);
    }
}
