package lungfish.measured;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Log;
import lungfish.room.Reading;
import lungfish.room.ReadingId;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** Facts about what is said of readings, beyond the trials. */
final class MeasuredRoomTest {
    private static final Plan GARAGE = DemoPlans.plan("garage-killifish");

    private static Room sound() {
        SplittableRandom random = new SplittableRandom(7);
        return new Keeper(new TrueRoom(GARAGE, Fault.NOTHING, random.split()), random.split()).file();
    }

    private static Optional<MeasuredRoom> measured(Room room) {
        return MeasuredRoom.of(new Planner(DemoPlans.CATALOGUE).plan(room), DemoPlans.CATALOGUE, Keeper.TODAY);
    }

    private static Room with(Room room, Reading.Measured measured) {
        List<Reading> readings = new ArrayList<>(room.log().readings());
        readings.add(
                new Reading(new ReadingId("further"), Keeper.TODAY, measured, Reading.Shut.NOTHING, Optional.empty()));
        return room.withLog(room.log().withReadings(readings));
    }

    @Test
    void nothingIsSaidWhereNothingWasRead() {
        assertThat(measured(GARAGE.room())).isEmpty();
        assertThat(measured(with(GARAGE.room().withLog(Log.EMPTY), new Reading.Level(40))))
                .isEmpty();
    }

    @Test
    void whatTellsNothingIsNamed() {
        MeasuredRoom measured = measured(with(sound(), new Reading.Level(40))).orElseThrow();

        assertThat(measured.unused()).extracting(Reading::id).containsExactly(new ReadingId("further"));
    }

    /** A gauge that was read at 5 to 7 kPa a minute ago does not read 2: no fault explains both, and with either gone all is well. */
    @Test
    void aReadingThatContradictsTheOthersIsFound() {
        MeasuredRoom measured = measured(with(sound(), new Reading.Gauge(Optional.empty(), 2000)))
                .orElseThrow();

        assertThat(measured.verdict()).isEqualTo(Verdict.CONTRADICTION);
        assertThat(measured.doubtful().get(0).id()).isEqualTo(new ReadingId("further"));
    }

    /** A worn blower draws about what it drew, as this one's data sheet says of pressures near by: watts tell it from nothing else. */
    @Test
    void wattsAreUsedWhereTheyWereReadBefore() {
        assertThat(measured(with(sound(), new Reading.Watts(Optional.empty(), 33)))
                        .orElseThrow()
                        .unused())
                .extracting(Reading::id)
                .containsExactly(new ReadingId("further"));
    }

    @Test
    void theSameReadingsGiveTheSameAnswer() {
        assertThat(measured(sound())).isEqualTo(measured(sound()));
    }
}
