package lungfish.desktop;

import java.util.List;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.edit.OwnValues;
import lungfish.edit.RoomValues;
import lungfish.edit.SpreadValues;
import lungfish.reason.Assumable;
import lungfish.reason.PartId;
import lungfish.room.Spread;

/** What can be said of what surrounds the room: its air, its mains, and what is wished for. */
final class SettingProperties {
    private static final List<PartId> ROOM = List.of(PartId.ROOM);

    private SettingProperties() {}

    static List<Property> all() {
        return Stream.of(
                        air().stream(),
                        Stream.of(Properties.amount(
                                RoomValues.COLDEST_PIPE.label(),
                                RoomValues.COLDEST_PIPE,
                                Property.Usual.words("not known"))),
                        others().flatMap(SettingProperties::assumable))
                .flatMap(each -> each)
                .toList();
    }

    /** What the air around it is like. */
    static List<Property> air() {
        return Stream.of(Assumable.ROOM_TEMPERATURE, Assumable.ALTITUDE, Assumable.HUMIDITY)
                .flatMap(SettingProperties::assumable)
                .toList();
    }

    private static Stream<Property> assumable(Assumable key) {
        return OwnValues.of(key, ROOM)
                .map(value -> Properties.amount(value.label(), value, Property.Usual.assumed(key, ROOM)))
                .stream();
    }

    private static Stream<Assumable> others() {
        return Stream.of(
                Assumable.GROWTH_RESERVE,
                Assumable.INDEX_SPARE,
                Assumable.LOUDEST,
                Assumable.ABSORPTION,
                Assumable.RUNTIME,
                Assumable.JAR,
                Assumable.VOLTAGE,
                Assumable.FREQUENCY,
                Assumable.ENERGY_PRICE);
    }

    /** How far what is said may be off. */
    static List<Property> spreads(Catalogue catalogue) {
        return Stream.of(Spread.values())
                .map(spread -> Properties.amount(
                        SpreadValues.of(spread).label(),
                        SpreadValues.of(spread),
                        Property.Usual.of(
                                "usual", catalogue.assumed(spread.usual()).si())))
                .toList();
    }
}
