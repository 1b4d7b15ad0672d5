package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.DeviceClass;

/** Makes random classes as a keeper would type them from a data sheet. */
final class OwnClassMaker {
    private final Dice dice;

    OwnClassMaker(Dice dice) {
        this.dice = dice;
    }

    OwnClasses classes() {
        return new OwnClasses(dice.some(1, 2, this::device), dice.some(1, 2, this::blower));
    }

    private DeviceClass device(int number) {
        return new DeviceClass(
                "own-device-" + number,
                dice.name(),
                dice.one(DeviceClass.Kind.class),
                resistance(),
                resistance(),
                dice.between(0, 1e-5),
                dice.between(1.1e-5, 4e-5),
                dice.maybe(5e-5, 1e-4),
                dice.one(DeviceClass.Bubbles.class),
                dice.maybe(() -> new DeviceClass.Uplift(dice.between(0.01, 0.04), dice.between(0, 10))),
                dice.name());
    }

    private DeviceClass.Resistance resistance() {
        return new DeviceClass.Resistance(dice.between(0, 5000), dice.between(0, 1e8), dice.between(0, 1e12));
    }

    private BlowerClass blower(int number) {
        return new BlowerClass(
                "own-blower-" + number,
                dice.name(),
                dice.one(BlowerClass.Kind.class),
                dice.between(1e-4, 5e-3),
                dice.between(1000, 20000),
                curve(),
                dice.between(20000, 30000),
                dice.maybe(() -> new BlowerClass.Level(dice.between(30, 70), dice.between(0.5, 2))),
                dice.between(0.005, 0.05),
                dice.between(10, 100),
                dice.between(101, 300),
                dice.between(10, 90),
                dice.between(1e7, 1e8),
                dice.between(1e8, 5e8),
                dice.between(0.5, 1),
                dice.between(0, 0.5),
                dice.between(0.1, 0.5),
                dice.between(1, 5),
                dice.maybe(100, 240),
                dice.maybe(50, 60),
                dice.name());
    }

    private List<BlowerClass.CurvePoint> curve() {
        List<BlowerClass.CurvePoint> points = new ArrayList<>();
        double pressure = 0;
        double flow = dice.between(1e-3, 5e-3);
        int many = dice.whole(2, 5);
        for (int i = 0; i < many; i++) {
            points.add(new BlowerClass.CurvePoint(pressure, flow, dice.between(10, 100)));
            pressure += dice.between(1000, 5000);
            flow *= dice.between(0.5, 0.9);
        }
        return points;
    }
}
