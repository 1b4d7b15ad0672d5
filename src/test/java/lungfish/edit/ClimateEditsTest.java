package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import lungfish.room.Climate;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;

final class ClimateEditsTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private static final Room DESCRIBED = Rooms.aRoom()
            .with(new Climate(
                    OptionalDouble.of(293.15), OptionalDouble.of(0.6), OptionalDouble.of(340), OptionalDouble.of(282)))
            .build();

    @Test
    void theTemperatureChangesAndNothingElse() {
        assertThat(ClimateEdits.temperatureK(OptionalDouble.of(300)).of(DESCRIBED))
                .isEqualTo(DESCRIBED.withClimate(new Climate(
                        OptionalDouble.of(300),
                        OptionalDouble.of(0.6),
                        OptionalDouble.of(340),
                        OptionalDouble.of(282))));
    }

    @Test
    void theAltitudeChangesAndNothingElse() {
        assertThat(ClimateEdits.altitudeM(OptionalDouble.of(1600)).of(DESCRIBED))
                .isEqualTo(DESCRIBED.withClimate(new Climate(
                        OptionalDouble.of(293.15),
                        OptionalDouble.of(0.6),
                        OptionalDouble.of(1600),
                        OptionalDouble.of(282))));
    }

    @Test
    void whatIsKnownCanBecomeUnknownAgain() {
        Room silent = ClimateEdits.altitudeM(UNKNOWN)
                .of(ClimateEdits.temperatureK(UNKNOWN).of(DESCRIBED));
        assertThat(silent.climate())
                .isEqualTo(new Climate(UNKNOWN, OptionalDouble.of(0.6), UNKNOWN, OptionalDouble.of(282)));
    }
}
