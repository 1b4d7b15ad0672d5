package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.edit.Attempt;
import lungfish.edit.RoomEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Shell;

/** What can be said of the room itself. */
final class RoomProperties {
    private RoomProperties() {}

    static List<Property> all(Catalogue catalogue) {
        return Stream.of(own(), SettingProperties.all(), SettingProperties.spreads(catalogue))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Property> own() {
        return List.of(
                new Property.Words(
                        "Name of the room",
                        now -> new Property.Said<>(List.of(Optional.of(now.name()))),
                        RoomEdits::rename),
                side(
                        "Length",
                        Shell::lengthM,
                        (now, m) -> RoomEdits.resize(
                                now, m, now.shell().widthM(), now.shell().heightM())),
                side(
                        "Width",
                        Shell::widthM,
                        (now, m) -> RoomEdits.resize(
                                now, now.shell().lengthM(), m, now.shell().heightM())),
                side(
                        "Height",
                        Shell::heightM,
                        (now, m) -> RoomEdits.resize(
                                now, now.shell().lengthM(), now.shell().widthM(), m)));
    }

    private static Property side(String label, ToDoubleFunction<Shell> side, BiFunction<Room, Double, Attempt> say) {
        return new Property.Amount(
                label,
                Dimension.LENGTH,
                Property.Usual.NONE,
                now -> new Property.Said<>(List.of(Optional.of(side.applyAsDouble(now.shell())))),
                (now, si) -> say.apply(now, si.orElse(side.applyAsDouble(now.shell()))));
    }
}
