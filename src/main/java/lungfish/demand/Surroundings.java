package lungfish.demand;

import lungfish.air.Atmosphere;
import lungfish.air.FreeAir;
import lungfish.air.Water;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumable;
import lungfish.reason.Given;
import lungfish.room.Room;
import lungfish.room.Tank;

/** The air of a room and the water of its tanks, typed or assumed. */
public record Surroundings(Given temperatureK, Given altitudeM) {
    public static Surroundings of(Room room, Catalogue catalogue) {
        return new Surroundings(
                Given.typedOr(
                        room.climate().temperatureK(),
                        catalogue.assumed(Assumable.ROOM_TEMPERATURE).given()),
                Given.typedOr(
                        room.climate().altitudeM(),
                        catalogue.assumed(Assumable.ALTITUDE).given()));
    }

    /** The state at which this room counts free air. */
    public FreeAir freeAir() {
        return new FreeAir(ambientPa(), temperatureK.si());
    }

    /** The water of a tank. */
    public Water water(Tank tank) {
        return new Water(waterK(tank), tank.salinityKgPerKg().orElse(0) * 1000);
    }

    /** Absolute pressure of the room's air, Pa. */
    public double ambientPa() {
        return Atmosphere.pressurePa(altitudeM.si());
    }

    /** Temperature of a tank's water: typed, else that of the room. */
    public double waterK(Tank tank) {
        return tank.temperatureK().orElse(temperatureK.si());
    }
}
