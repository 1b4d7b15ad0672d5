package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.TankSize;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.edit.TankEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** What can be said of tanks. */
final class TankProperties {
    private final List<TankId> ids;
    private final Catalogue catalogue;

    private TankProperties(List<TankId> ids, Catalogue catalogue) {
        this.ids = ids;
        this.catalogue = catalogue;
    }

    static List<Property> of(View view, Selection chosen) {
        List<TankId> ids = chosen.ids(Part.Kind.TANK, TankId::new);
        List<Property> all =
                new ArrayList<>(new TankProperties(ids, view.desk().shared().catalogue()).all());
        all.addAll(ContentProperties.of(view, ids));
        return all;
    }

    private List<Property> all() {
        List<Property> all = new ArrayList<>();
        if (ids.size() == 1) {
            all.add(new Property.Words(
                    "Name",
                    said(tank -> Optional.of(tank.name())),
                    (room, name) -> TankEdits.rename(room, ids.get(0), name)));
        }
        all.add(new Property.OneOf<>(
                "Size",
                PropertyFields.orNothing(catalogue.tankSizes().stream()),
                size -> size.map(TankSize::name).orElse("own size"),
                said(this::common),
                (room, size) ->
                        TankEdits.resize(room, ids, size.map(TankEdits::outside).orElseGet(() -> first(room)
                                .outside()))));
        all.add(new Property.OneOf<>(
                "Vessel",
                PropertyFields.always(Stream.of(Tank.Kind.values())),
                kind -> kind.map(TankProperties::words).orElse(""),
                said(tank -> Optional.of(tank.kind())),
                (room, kind) -> TankEdits.makeKind(room, ids, kind.orElseThrow())));
        all.add(side("Length", Tank.Size::lengthM, (size, m) -> new Tank.Size(m, size.widthM(), size.heightM())));
        all.add(side(
                "Front to back", Tank.Size::widthM, (size, m) -> new Tank.Size(size.lengthM(), m, size.heightM())));
        all.add(side("Height", Tank.Size::heightM, (size, m) -> new Tank.Size(size.lengthM(), size.widthM(), m)));
        all.add(new Property.Amount(
                "Depth of water",
                Dimension.DEPTH,
                Property.Usual.NONE,
                said(tank -> Optional.of(tank.waterDepthM())),
                (room, m) ->
                        TankEdits.fill(room, ids, m.orElseGet(() -> first(room).waterDepthM()))));
        return all;
    }

    private static String words(Tank.Kind kind) {
        return switch (kind) {
            case TANK -> "tank";
            case HATCHING_CONE -> "hatching cone";
            case EGG_TUMBLER -> "egg tumbler";
        };
    }

    private Property side(
            String label,
            Function<Tank.Size, Double> side,
            java.util.function.BiFunction<Tank.Size, Double, Tank.Size> with) {
        return new Property.Amount(
                label,
                Dimension.DEPTH,
                Property.Usual.NONE,
                said(tank -> Optional.of(side.apply(tank.outside()))),
                (room, si) -> {
                    Tank.Size now = first(room).outside();
                    return TankEdits.resize(room, ids, with.apply(now, si.orElse(side.apply(now))));
                });
    }

    /** The common size that a tank has, if it has one. */
    private Optional<TankSize> common(Tank tank) {
        return catalogue.tankSizes().stream()
                .filter(size -> TankEdits.outside(size).equals(tank.outside()))
                .findFirst();
    }

    private Tank first(Room room) {
        return tanks(room).findFirst().orElseThrow();
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Tank, Optional<V>> says) {
        return room -> Properties.said(tanks(room), says);
    }

    private Stream<Tank> tanks(Room room) {
        return room.racks().stream().flatMap(rack -> rack.tanks()).filter(tank -> ids.contains(tank.id()));
    }
}
