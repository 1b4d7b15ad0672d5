package lungfish.backup;

import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.room.Backup;
import lungfish.room.Backup.Battery;
import lungfish.room.BatteryId;
import org.junit.jupiter.api.Test;

final class RechargeTest {
    private static final double HOUR_S = 3600;
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    /** By hand: 2.16 MJ in ten hours are 60 W; 0.6 of 1.08 MJ at 51 W and then 4 h: 27 106 s. */
    @Test
    void whereNobodySaysTheChargerGivesATenthInAnHour() {
        Recharge recharge = of(Backup.NONE.withBatteries(List.of(lead())));
        assertThat(recharge.chargerW()).isCloseTo(60, within(1e-9));
        assertThat(recharge.forS()).isCloseTo(27_106, within(1.0));
        assertThat(recharge.slowEndS()).isCloseTo(4 * HOUR_S, within(1e-6));
        assertThat(recharge.assumptions()).extracting(Assumption::key).containsExactly(Assumable.CHARGE_RATE);
    }

    /** By hand: 0.6 of 1.08 MJ at 20 W · 0.85 = 17 W take 38 118 s; the rest 25 412 s, more than the 4 h of the slow end. */
    @Test
    void aWeakChargerIsSlowerThanTheSlowEnd() {
        Recharge recharge = of(Backup.NONE.withBatteries(List.of(lead())).withChargerW(OptionalDouble.of(20)));
        assertThat(recharge.forS()).isCloseTo(63_529, within(1.0));
        assertThat(recharge.slowEndS()).isZero();
        assertThat(recharge.assumptions()).isEmpty();
    }

    @Test
    void withoutBatteriesThereIsNothingToFill() {
        assertThat(Recharge.of(aRoom().build(), CATALOGUE, 10)).isEmpty();
    }

    private static Recharge of(Backup backup) {
        return Recharge.of(aRoom().with(backup).build(), CATALOGUE, 10).orElseThrow();
    }

    private static Battery lead() {
        return new Battery(
                new BatteryId("B"),
                "lead-sealed",
                1,
                12,
                50 * HOUR_S,
                OptionalDouble.of(298.15),
                OptionalDouble.of(1),
                Optional.empty());
    }
}
