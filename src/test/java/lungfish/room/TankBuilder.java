package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fills a tank for a test. */
public final class TankBuilder {
    private final String id;
    private final List<Outlet> outlets = new ArrayList<>();
    private final List<Tank.Fish> fish = new ArrayList<>();
    private Tank.Kind kind = Tank.Kind.TANK;
    private Tank.Size outside = new Tank.Size(0.6, 0.3, 0.36);
    private double xM;
    private double waterDepthM = 0.3;
    private OptionalDouble temperatureK = OptionalDouble.empty();
    private OptionalDouble salinity = OptionalDouble.empty();
    private OptionalDouble survivalS = OptionalDouble.empty();
    private Optional<Tank.Feeding> feeding = Optional.empty();
    private Optional<Boolean> justFed = Optional.empty();

    TankBuilder(String id) {
        this.id = id;
    }

    public TankBuilder at(double alongShelfM) {
        xM = alongShelfM;
        return this;
    }

    public TankBuilder kind(Tank.Kind that) {
        kind = that;
        return this;
    }

    public TankBuilder sized(double lengthM, double widthM, double heightM) {
        outside = new Tank.Size(lengthM, widthM, heightM);
        return this;
    }

    public TankBuilder waterDepthM(double depth) {
        waterDepthM = depth;
        return this;
    }

    public TankBuilder temperatureK(double temperature) {
        temperatureK = OptionalDouble.of(temperature);
        return this;
    }

    public TankBuilder salinityKgPerKg(double salt) {
        salinity = OptionalDouble.of(salt);
        return this;
    }

    public TankBuilder survivalS(double seconds) {
        survivalS = OptionalDouble.of(seconds);
        return this;
    }

    public TankBuilder fish(int count, double massEachKg) {
        fish.add(new Tank.Fish("fish", count, massEachKg));
        return this;
    }

    public TankBuilder fed(double kgPerDay) {
        feeding = Optional.of(new Tank.Feeding(kgPerDay, OptionalDouble.empty()));
        return this;
    }

    public TankBuilder justFed(boolean that) {
        justFed = Optional.of(that);
        return this;
    }

    public TankBuilder with(OutletBuilder outlet) {
        outlets.add(outlet.build());
        return this;
    }

    public Tank build() {
        return new Tank(
                new TankId(id),
                "Tank " + id,
                kind,
                xM,
                outside,
                waterDepthM,
                temperatureK,
                salinity,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }
}
