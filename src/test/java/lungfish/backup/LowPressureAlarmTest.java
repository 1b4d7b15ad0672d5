package lungfish.backup;

import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Backup;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** Shares of the needed pressure: common practice, no source. */
final class LowPressureAlarmTest {
    @Test
    void aMissingAlarmIsFoundWithItsSetPoint() {
        assertThat(LowPressureAlarm.check(aRoom().build(), 8000))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.code()).isEqualTo(Code.ALARM_MISSING);
                    assertThat(each.amounts().get(0).si()).isEqualTo(5600);
                });
    }

    @Test
    void anAlarmAtItsSetPointIsFine() {
        assertThat(LowPressureAlarm.check(withAlarm(OptionalDouble.of(5600)), 8000))
                .isEmpty();
    }

    @Test
    void anAlarmWhoseSetPointIsUnknownIsNotBlamed() {
        assertThat(LowPressureAlarm.check(withAlarm(OptionalDouble.empty()), 8000))
                .isEmpty();
    }

    @Test
    void anAlarmThatCriesWolfOrSleepsIsFoundOut() {
        for (double setPa : List.of(7900.0, 1000.0)) {
            assertThat(LowPressureAlarm.check(withAlarm(OptionalDouble.of(setPa)), 8000))
                    .extracting(Finding::code)
                    .containsExactly(Code.ALARM_SET_WRONG);
        }
    }

    private static Room withAlarm(OptionalDouble setPa) {
        return aRoom().with(new Backup(
                        List.of(),
                        Optional.empty(),
                        Optional.of(new Backup.Alarm(setPa)),
                        Optional.empty(),
                        Optional.empty()))
                .build();
    }
}
