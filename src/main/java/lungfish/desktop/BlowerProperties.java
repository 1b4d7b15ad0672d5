package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.edit.MachineEdits;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/** What can be said of one machine; several have little in common but their place. */
final class BlowerProperties {
    private static final int MOST_MACHINES = 8;

    private final BlowerId id;
    private final Catalogue catalogue;

    private BlowerProperties(BlowerId id, Catalogue catalogue) {
        this.id = id;
        this.catalogue = catalogue;
    }

    static List<Property> of(Room room, Selection chosen, Catalogue catalogue) {
        List<BlowerId> ids = chosen.ids(Part.Kind.BLOWER, BlowerId::new);
        return ids.size() == 1 ? new BlowerProperties(ids.get(0), catalogue).all(room) : List.of();
    }

    private List<Property> all(Room room) {
        List<BlowerClass> classes = new ArrayList<>(room.ownClasses().blowers());
        classes.addAll(catalogue.blowers());
        return List.of(
                new Property.Words(
                        "Name",
                        said(blower -> Optional.of(blower.name())),
                        (now, name) -> MachineEdits.rename(now, id, name)),
                new Property.OneOf<>(
                        "Kind of machine",
                        PropertyFields.orNothing(classes.stream()),
                        kind -> kind.map(BlowerClass::name).orElse("whatever the plan recommends"),
                        said(blower -> blower.machine().flatMap(name -> classes.stream()
                                .filter(kind -> kind.id().equals(name))
                                .findFirst())),
                        (now, kind) -> MachineEdits.machine(now, id, kind)),
                new Property.OneOf<>(
                        "What it is for",
                        PropertyFields.always(Stream.of(Blower.Role.values())),
                        role -> role.map(BlowerProperties::words).orElse(""),
                        said(blower -> Optional.of(blower.role())),
                        (now, role) -> MachineEdits.role(now, id, role.orElseThrow())),
                new Property.OneOf<>(
                        "How many, side by side",
                        PropertyFields.always(
                                Stream.iterate(1, many -> many + 1).limit(MOST_MACHINES)),
                        many -> many.map(String::valueOf).orElse(""),
                        said(blower -> Optional.of(blower.count())),
                        (now, many) -> MachineEdits.count(now, id, many.orElseThrow())),
                new Property.Amount(
                        "Air that it draws",
                        Dimension.TEMPERATURE,
                        Property.Usual.words("as the room"),
                        said(blower -> Properties.boxed(blower.siting().intakeTemperatureK())),
                        (now, k) -> MachineEdits.intakeK(now, id, k)));
    }

    static String words(Blower.Role role) {
        return switch (role) {
            case PLANNED -> "the planned blower";
            case STANDBY -> "a standby";
            case TODAY -> "a pump of today";
        };
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Blower, Optional<V>> says) {
        return room -> Properties.said(
                room.blowers().stream().filter(blower -> blower.id().equals(id)), says);
    }
}
