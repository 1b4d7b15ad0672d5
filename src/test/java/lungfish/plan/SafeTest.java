package lungfish.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.oxygen.TankTime;
import lungfish.room.Tank;
import org.junit.jupiter.api.Test;

/** Facts about how long the fish are safe: the battery first, then the water. */
final class SafeTest {
    private static final double HOUR_S = 3600;
    private static final Tank TANK =
            DemoPlans.room("starting-out").racks().get(0).tanks().findFirst().orElseThrow();

    /** In danger an hour after the air stops, at worst; likely after ten. */
    private static final TankTime FIRST = new TankTime(
            TANK, OptionalDouble.of(10 * HOUR_S), OptionalDouble.of(HOUR_S), OptionalDouble.empty(), false);

    /** 2 h on battery and 1 h of water are 3 h. */
    @Test
    void itIsTheRuntimeAndThenTheTimeToDangerAtWorst() {
        assertThat(new Safe(2 * HOUR_S, Optional.of(FIRST), 0).safeS()).isEqualTo(3 * HOUR_S);
    }

    @Test
    void itIsShortByWhatIsLackingOfTheTimeWished() {
        Safe safe = new Safe(2 * HOUR_S, Optional.of(FIRST), 4 * HOUR_S);
        assertThat(safe.isShort()).isTrue();
        assertThat(safe.spareS()).isEqualTo(-HOUR_S);
    }

    @Test
    void whereNoTankEverIsInDangerItIsNeverShort() {
        Safe safe = new Safe(0, Optional.empty(), 100 * HOUR_S);
        assertThat(safe.isShort()).isFalse();
        assertThat(safe.safeS()).isInfinite();
    }

    /** Without a battery the garage has only its water, and wishes for the 8 h that are usual. */
    @Test
    void aRoomWithoutABatteryHasOnlyItsWater() {
        Plan garage = DemoPlans.plan("garage-killifish");
        Safe safe = Safe.of(garage).orElseThrow();
        assertThat(safe.runtimeS()).isZero();
        assertThat(safe.safeS())
                .isEqualTo(garage.airless().first().orElseThrow().cautiousS().orElseThrow());
    }
}
