package lungfish.room;

import java.util.List;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.DeviceClass;

/** Classes that the keeper typed in, from the data sheet in hand. Found before those of the catalogue. */
public record OwnClasses(List<DeviceClass> devices, List<BlowerClass> blowers) {
    public static final OwnClasses NONE = new OwnClasses(List.of(), List.of());

    public OwnClasses {
        devices = List.copyOf(devices);
        blowers = List.copyOf(blowers);
    }
}
