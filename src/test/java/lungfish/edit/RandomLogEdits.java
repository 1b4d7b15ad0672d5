package lungfish.edit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.Room;
import lungfish.room.Service;
import lungfish.room.ServiceId;

/** What a keeper may write into the log, and say of building, right or wrong. */
final class RandomLogEdits {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
    private static final List<String> NOTES = List.of("", "after cleaning", "a\nb");

    static final List<BiFunction<AnyOf, Room, Attempt>> ALL = List.of(
            (any, room) -> LogEdits.read(room, day(any), measured(any), Reading.Shut.NOTHING, any.one(NOTES)),
            (any, room) -> LogEdits.read(room, day(any), measured(any), Reading.Shut.NOTHING, any.one(NOTES)),
            (any, room) -> room.log().readings().isEmpty()
                    ? LogEdits.forgetReadings(List.of())
                    : LogEdits.forgetReadings(
                            List.of(any.one(room.log().readings()).id())),
            (any, room) -> LogEdits.serve(
                    room,
                    new Service(
                            new ServiceId("x"),
                            day(any),
                            any.one(Service.Kind.class),
                            List.copyOf(any.outlets()),
                            Optional.empty(),
                            Optional.of(any.one(NOTES)).filter(note -> !note.isEmpty()))),
            (any, room) -> LogEdits.tick(any.one(List.of("bleed", "valve:A-1-1-a")), Optional.of(DAY)),
            (any, room) -> LogEdits.tick("bleed", Optional.empty()),
            (any, room) -> BuildingEdits.STOCK.say(room, any.maybe(-1, 6)),
            (any, room) -> BuildingEdits.KERF.say(room, any.maybe(0, 0.2)),
            (any, room) -> BuildingEdits.SPARE.say(room, any.maybe(0, 1.2)),
            (any, room) -> BuildingEdits.price("elbow-90", "Elbow", any.maybe(-1, 9)));

    private RandomLogEdits() {}

    private static LocalDate day(AnyOf any) {
        return DAY.plusDays(any.below(900));
    }

    private static Reading.Measured measured(AnyOf any) {
        return any.one(List.of(
                new Reading.Jar(new OutletId("A-1-1-a"), any.number(-1, 60), OptionalDouble.empty()),
                new Reading.Gauge(Optional.empty(), any.number(-100, 20_000)),
                new Reading.Watts(Optional.empty(), any.number(0, 100)),
                new Reading.Level(any.number(0, 90)),
                new Reading.Fall(any.number(0, 9000), any.number(0, 9000), any.number(-1, 60))));
    }
}
