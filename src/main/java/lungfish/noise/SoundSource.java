package lungfish.noise;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.reason.PartId;
import lungfish.room.Blower;

/**
 * One machine, or several alike at one place, as the ear finds it.
 *
 * @param name for people
 * @param fitted filters and silencers
 */
public record SoundSource(
        String name, PartId part, BlowerClass kind, int count, Blower.Siting siting, List<AccessoryClass> fitted) {
    public SoundSource {
        fitted = List.copyOf(fitted);
    }

    /** A class in the place of a blower of the room, with what is fitted there. */
    public static SoundSource of(Blower blower, BlowerClass kind, Catalogue catalogue) {
        List<AccessoryClass> fitted = Stream.of(
                        blower.fittings().inletFilter(), blower.fittings().silencer())
                .flatMap(Optional::stream)
                .flatMap(id -> catalogue.accessory(id).stream())
                .toList();
        return new SoundSource(blower.name(), blower.id().part(), kind, blower.count(), blower.siting(), fitted);
    }

    /** What its filters and silencers take off the air path together, dB. */
    double insertionLossDb() {
        return fitted.stream().mapToDouble(AccessoryClass::insertionLossDb).sum();
    }
}
