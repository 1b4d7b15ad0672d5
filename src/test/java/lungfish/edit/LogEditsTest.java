package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.ReadingId;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Service;
import lungfish.room.ServiceId;
import org.junit.jupiter.api.Test;

final class LogEditsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
    private static final Room ROOM = Rooms.small();

    private static Room done(Room room, Attempt attempt) {
        return attempt.edit().orElseThrow().of(room);
    }

    private static Attempt jar(Room room, double s) {
        Reading.Jar jar = new Reading.Jar(new OutletId("A-1-1-a"), s, OptionalDouble.empty());
        return LogEdits.read(room, DAY, jar, Reading.Shut.NOTHING, " after cleaning ");
    }

    @Test
    void whatIsReadComesLastUnderAnIdOfItsOwn() {
        Room one = done(ROOM, jar(ROOM, 20));
        Room two = done(one, jar(one, 21));
        assertThat(two.log().readings()).extracting(each -> each.id().text()).containsExactly("r-1", "r-2");
        assertThat(two.log().readings().get(1).note()).contains("after cleaning");
    }

    @Test
    void aJarThatTakesNoTimeIsRefused() {
        assertThat(jar(ROOM, 0).edit()).isEmpty();
    }

    @Test
    void aNoteOfTwoLinesIsRefused() {
        assertThat(LogEdits.read(ROOM, DAY, new Reading.Level(40), Reading.Shut.NOTHING, "a\nb")
                        .edit())
                .isEmpty();
    }

    @Test
    void aGaugeThatDoesNotFallIsRefusedWithBothFigures() {
        Attempt attempt = LogEdits.read(ROOM, DAY, new Reading.Fall(9000, 9500, 60), Reading.Shut.NOTHING, "");
        String sentence = attempt.match(edit -> "", refused -> refused.sentence(Quantities.in(DisplayUnits.METRIC)));
        assertThat(sentence).startsWith("The gauge fell from 9.00 kPa to 9.50 kPa, which is no fall.");
    }

    private static Attempt gauge(double atM) {
        Reading.Gauge gauge = new Reading.Gauge(
                Optional.of(new Outlet.OnRun(ROOM.runs().get(0).id(), atM)), 9000);
        return LogEdits.read(ROOM, DAY, gauge, Reading.Shut.NOTHING, "");
    }

    @Test
    void aGaugeBeyondTheEndOfItsPipeIsRefused() {
        double lengthM = ROOM.runs().get(0).lengthM();
        assertThat(gauge(lengthM / 2).edit()).isPresent();
        assertThat(gauge(lengthM + 0.1).edit()).isEmpty();
        assertThat(gauge(-0.1).edit()).isEmpty();
    }

    @Test
    void aCorrectedReadingKeepsItsPlace() {
        Room one = done(ROOM, jar(ROOM, 20));
        Room two = done(one, jar(one, 21));
        Reading wrong = two.log().readings().get(0);
        Reading right =
                new Reading(wrong.id(), DAY, new Reading.Gauge(Optional.empty(), 9000), wrong.shut(), wrong.note());
        Room after = done(two, LogEdits.correct(two, right));
        assertThat(after.log().readings())
                .containsExactly(right, two.log().readings().get(1));
    }

    @Test
    void onlyTheReadingsMeantAreForgotten() {
        Room one = done(ROOM, jar(ROOM, 20));
        Room two = done(one, jar(one, 21));
        Room after = done(two, LogEdits.forgetReadings(List.of(new ReadingId("r-1"))));
        assertThat(after.log().readings()).extracting(each -> each.id().text()).containsExactly("r-2");
    }

    @Test
    void aStepIsTickedOnceAndUntickedAgain() {
        Room ticked = LogEdits.tick("bleed", Optional.of(DAY))
                .of(LogEdits.tick("bleed", Optional.of(DAY)).of(ROOM));
        assertThat(ticked.log().ticks()).hasSize(1);
        assertThat(LogEdits.tick("bleed", Optional.empty()).of(ticked)).isEqualTo(ROOM);
    }

    @Test
    void aServiceGetsAnIdOfItsOwn() {
        Service drained = new Service(
                new ServiceId("any"), DAY, Service.Kind.DRAINED, List.of(), Optional.empty(), Optional.empty());
        Room one = done(ROOM, LogEdits.serve(ROOM, drained));
        Room two = done(one, LogEdits.serve(one, drained));
        assertThat(two.log().services()).extracting(each -> each.id().text()).containsExactly("s-1", "s-2");
    }

    @Test
    void aPriceCanBeSaidAndTakenBack() {
        Room said = done(ROOM, BuildingEdits.price("elbow-90", "Elbow", OptionalDouble.of(1.2)));
        assertThat(said.building().price("elbow-90")).hasValue(1.2);
        assertThat(done(said, BuildingEdits.price("elbow-90", "Elbow", OptionalDouble.empty())))
                .isEqualTo(ROOM);
        assertThat(BuildingEdits.price("elbow-90", "Elbow", OptionalDouble.of(-1))
                        .edit())
                .isEmpty();
    }
}
