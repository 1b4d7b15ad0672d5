package lungfish.catalogue;

import static lungfish.catalogue.Practical.KPA;
import static lungfish.catalogue.Practical.KPA_PER_L_MIN;
import static lungfish.catalogue.Practical.KPA_PER_L_MIN2;
import static lungfish.catalogue.Practical.L_MIN;
import static lungfish.catalogue.Practical.MM;

import java.util.Optional;

/** Makes devices of their rows. */
final class DeviceRows {
    private DeviceRows() {}

    static DeviceClass device(Row row) {
        return new DeviceClass(
                row.text("id"),
                row.text("name"),
                row.one("kind", DeviceClass.Kind.class),
                resistance(row, "clean_"),
                resistance(row, "due_"),
                row.atLeastZero("least", L_MIN),
                row.aboveZero("typical", L_MIN),
                row.ifGiven("most", L_MIN),
                row.one("bubbles", DeviceClass.Bubbles.class),
                uplift(row),
                row.text("source"));
    }

    private static DeviceClass.Resistance resistance(Row row, String when) {
        return new DeviceClass.Resistance(
                row.atLeastZero(when + "p0", KPA),
                row.atLeastZero(when + "a", KPA_PER_L_MIN),
                row.atLeastZero(when + "b", KPA_PER_L_MIN2));
    }

    private static Optional<DeviceClass.Uplift> uplift(Row row) {
        if (row.isEmpty("uplift_bore_mm")) {
            return Optional.empty();
        }
        return Optional.of(new DeviceClass.Uplift(row.aboveZero("uplift_bore", MM), row.number("uplift_loss_factor")));
    }
}
