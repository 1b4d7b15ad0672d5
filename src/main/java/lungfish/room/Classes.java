package lungfish.room;

import java.util.Optional;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;

/** Finds a class by its id: the room's own first, then the catalogue's. */
public record Classes(OwnClasses own, Catalogue catalogue) {
    public Optional<DeviceClass> device(String id) {
        return own.devices().stream()
                .filter(device -> device.id().equals(id))
                .findFirst()
                .or(() -> catalogue.device(id));
    }

    public Optional<BlowerClass> blower(String id) {
        return own.blowers().stream()
                .filter(blower -> blower.id().equals(id))
                .findFirst()
                .or(() -> catalogue.blower(id));
    }
}
