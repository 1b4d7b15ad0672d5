package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.catalogue.AssumedValue;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Climate;
import lungfish.room.Room;
import lungfish.room.Wishes;

/** What the plan takes for the room as a whole where the room does not say. */
final class Assumed {
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
        own.where(climate.temperatureK(), AssumedValue.Key.ROOM_TEMPERATURE);
        own.where(climate.altitudeM(), AssumedValue.Key.ALTITUDE);
        own.where(wishes.growthReserve(), AssumedValue.Key.GROWTH_RESERVE);
        own.where(wishes.indexSparePa(), AssumedValue.Key.INDEX_SPARE);
        own.where(wishes.jarM3(), AssumedValue.Key.JAR);
        own.where(room.supply().voltageV(), AssumedValue.Key.VOLTAGE);
        return own.assumptions;
    }

    private void where(OptionalDouble typed, AssumedValue.Key key) {
        if (typed.isEmpty()) {
            assumptions.add(setup.catalogue().assumed(key).about(PartId.ROOM));
        }
    }
}
