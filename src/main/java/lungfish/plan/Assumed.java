package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Climate;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Wishes;

/** What the plan takes for the room as a whole where the room does not say. */
final class Assumed {
    private static final String WIDE_OPEN = "as set, a valve without a setting stands open: common practice, no source";

    private final Setup setup;
    private final List<Assumption> assumptions = new ArrayList<>();

    private Assumed(Setup setup) {
        this.setup = setup;
    }

    static List<Assumption> of(Setup setup) {
        Assumed own = new Assumed(setup);
        Room room = setup.room();
        Climate climate = room.climate();
        Wishes wishes = room.wishes();
        own.where(climate.temperatureK(), Assumable.ROOM_TEMPERATURE);
        own.where(climate.altitudeM(), Assumable.ALTITUDE);
        own.where(wishes.growthReserve(), Assumable.GROWTH_RESERVE);
        own.where(wishes.indexSparePa(), Assumable.INDEX_SPARE);
        own.where(wishes.jarM3(), Assumable.JAR);
        own.where(room.supply().voltageV(), Assumable.VOLTAGE);
        if (dampMatters(room)) {
            own.where(climate.humidity(), Assumable.HUMIDITY);
        }
        own.outlets();
        return own.assumptions;
    }

    /** Where something is said to be colder than the room: its pipe, or the place of a blower. */
    private static boolean dampMatters(Room room) {
        return room.climate().coldestPipeK().isPresent()
                || room.runs().stream().anyMatch(run -> run.surroundingsK().isPresent())
                || room.blowers().stream().map(Blower::siting).anyMatch(Assumed::isElsewhere);
    }

    private static boolean isElsewhere(Blower.Siting siting) {
        return siting.outside() && siting.intakeTemperatureK().isPresent();
    }

    private void where(OptionalDouble typed, Assumable key) {
        if (typed.isEmpty()) {
            assumptions.add(setup.catalogue().assumed(key).about(PartId.ROOM));
        }
    }

    /** What is taken for all outlets alike is told once. */
    private void outlets() {
        List<Outlet> outlets = setup.demand().needs().stream()
                .map(need -> need.seat().outlet())
                .toList();
        if (outlets.stream().anyMatch(Assumed::isMeasuredFromTheDrawing)) {
            assumptions.add(setup.catalogue().assumed(Assumable.AIRLINE_SLACK).about(PartId.ROOM));
        }
        if (outlets.stream().anyMatch(Assumed::hasNoOpening)) {
            assumptions.add(new Assumption(
                    Assumable.VALVE_OPENING,
                    PartId.ROOM,
                    "opening of a valve whose setting is not filed",
                    1,
                    Dimension.SHARE,
                    WIDE_OPEN));
        }
    }

    private static boolean isMeasuredFromTheDrawing(Outlet outlet) {
        return outlet.airline()
                .map(Outlet.Airline::lengthM)
                .orElse(OptionalDouble.empty())
                .isEmpty();
    }

    private static boolean hasNoOpening(Outlet outlet) {
        return outlet.valve()
                .map(Outlet.Valve::opening)
                .orElse(OptionalDouble.empty())
                .isEmpty();
    }
}
