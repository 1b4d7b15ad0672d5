package lungfish.desktop;

import static lungfish.desktop.Properties.amount;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.Catalogue;
import lungfish.desktop.BackupPart.Adding;
import lungfish.desktop.BackupPart.Thing;
import lungfish.edit.Attempt;
import lungfish.edit.BackupEdits;
import lungfish.edit.BackupValues;
import lungfish.edit.BatteryEdits;
import lungfish.edit.OwnValues;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Code;
import lungfish.room.Backup;
import lungfish.room.Backup.Battery;
import lungfish.room.Backup.Inverter;
import lungfish.room.Blower;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** What keeps the air on in a room: what power comes from when the mains fail, and what gives air then. */
final class BackupParts {
    private final Room room;
    private final Catalogue catalogue;
    private final Consumer<Attempt> does;
    private final Runnable drawsStandby;

    /**
     * Of a room.
     *
     * @param does does an edit, or tells why it cannot be done
     * @param drawsStandby leads to the drawing with a standby in the hand
     */
    BackupParts(Room room, Catalogue catalogue, Consumer<Attempt> does, Runnable drawsStandby) {
        this.room = room;
        this.catalogue = catalogue;
        this.does = does;
        this.drawsStandby = drawsStandby;
    }

    List<BackupPart> all() {
        List<BackupPart> all = new ArrayList<>(List.of(batteries(), inverter(), generator(), pumps(), standby()));
        all.addAll(new BackupHabits(room, catalogue, does).all());
        return all;
    }

    private Backup backup() {
        return room.backup();
    }

    private BackupPart batteries() {
        List<Battery> all = backup().batteries();
        List<Thing> things = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            things.add(battery(all.get(i), all.size() == 1 ? "Battery" : "Battery " + (i + 1)));
        }
        if (!all.isEmpty()) {
            things.add(new Thing("charger", "", List.of(charger()), Optional.empty()));
        }
        return new BackupPart(
                "Batteries",
                "None.",
                things,
                Optional.of(new Adding(
                        "Add a battery",
                        catalogue.batteries().stream()
                                .map(kind -> kind(kind.name(), now -> BatteryEdits.add(now, kind)))
                                .toList())),
                EnumSet.of(
                        Code.RUNTIME_SHORT,
                        Code.BATTERY_COLD_CHARGE,
                        Code.BATTERY_FUSE,
                        Code.BATTERY_VENTILATION,
                        Code.CHARGER_WITH_HEATERS));
    }

    private Thing battery(Battery battery, String name) {
        List<Property> fields = new ArrayList<>(List.of(
                new Property.OneOf<>(
                        "Kind",
                        PropertyFields.always(catalogue.batteries().stream()),
                        kind -> kind.map(BatteryClass::name).orElse(""),
                        said(battery, each -> catalogue.battery(each.kind())),
                        (now, kind) -> BatteryEdits.kind(now, battery.id(), kind.orElseThrow())),
                whole(
                        "How many",
                        said(battery, each -> Optional.of((double) each.count())),
                        many -> BatteryEdits.count(room, battery.id(), many)),
                amount("Voltage of one", BatteryEdits.voltage(battery.id()), Property.Usual.NONE),
                amount("Capacity of one", BatteryEdits.capacity(battery.id()), Property.Usual.NONE)));
        fields.addAll(ofPart(battery, "Temperature", Assumable.BATTERY_TEMPERATURE));
        fields.addAll(ofPart(battery, "Capacity left", Assumable.BATTERY_WEAR));
        fields.add(Properties.circuit(
                "Charged from",
                room,
                this.<CircuitId>said(battery, Battery::chargedFrom),
                (now, circuit) -> BatteryEdits.chargedFrom(now, battery.id(), circuit)));
        return new Thing(battery.id().text(), name, fields, Optional.of(now -> BatteryEdits.remove(now, battery.id())));
    }

    private List<Property> ofPart(Battery battery, String label, Assumable key) {
        return OwnValues.of(key, List.of(battery.id().part())).stream()
                .map(value -> amount(label, value, assumed(key)))
                .toList();
    }

    private <V> Function<Room, Property.Said<V>> said(Battery battery, Function<Battery, Optional<V>> says) {
        return now -> Properties.said(
                now.backup().batteries().stream().filter(each -> each.id().equals(battery.id())), says);
    }

    private Property charger() {
        double share = catalogue.assumed(Assumable.CHARGE_RATE).si();
        return amount(
                "Power of the charger",
                BackupValues.CHARGER,
                Property.Usual.words(Math.round(100 * share) + " % an hour, assumed"));
    }

    private BackupPart inverter() {
        Optional<Adding> adding = adding("Add an inverter", BackupClass.Kind.INVERTER, BackupEdits::addInverter);
        return one(
                "Inverter",
                "None: a battery alone runs no mains blower.",
                backup().inverter().isPresent(),
                () -> List.of(
                        amount("Rated power", BackupValues.INVERTER_RATED, Property.Usual.words("not known")),
                        amount("Surge power", BackupValues.INVERTER_SURGE, Property.Usual.words("not known")),
                        wave(),
                        amount("Efficiency", BackupValues.INVERTER_EFFICIENCY, assumed(Assumable.INVERTER_EFFICIENCY)),
                        amount("Idle draw", BackupValues.INVERTER_IDLE, assumed(Assumable.INVERTER_IDLE))),
                BackupEdits::removeInverter,
                adding,
                EnumSet.of(
                        Code.INVERTER_MISSING,
                        Code.INVERTER_UNSAID,
                        Code.INVERTER_TOO_SMALL,
                        Code.STARTING_SURGE,
                        Code.WAVEFORM));
    }

    private Property wave() {
        return new Property.OneOf<>(
                "Wave",
                PropertyFields.orNothing(Stream.of(Inverter.Wave.values())),
                wave -> wave.map(that -> switch (that) {
                            case SINE -> "sine";
                            case STEPPED -> "stepped";
                        })
                        .orElse("not known"),
                now -> new Property.Said<>(List.of(now.backup().inverter().flatMap(Inverter::wave))),
                BackupEdits::wave);
    }

    private BackupPart generator() {
        return one(
                "Generator",
                "None.",
                backup().generator().isPresent(),
                () -> List.of(
                        amount("Rated power", BackupValues.GENERATOR_RATED, Property.Usual.words("not known")),
                        amount("Fuel lasts", BackupValues.FUEL, assumed(Assumable.GENERATOR_FUEL)),
                        amount("Ready after", BackupValues.GENERATOR_READY, assumed(Assumable.READY))),
                BackupEdits::removeGenerator,
                adding("Add a generator", BackupClass.Kind.GENERATOR, BackupEdits::addGenerator),
                EnumSet.of(Code.GENERATOR));
    }

    private BackupPart pumps() {
        List<BackupClass> kinds = catalogue.backupGear(BackupClass.Kind.BATTERY_PUMP);
        return one(
                "Battery pumps",
                "None. They start by themselves, on the essential outlets.",
                backup().batteryPumps().isPresent(),
                () -> List.of(
                        new Property.OneOf<>(
                                "Kind",
                                PropertyFields.always(kinds.stream()),
                                kind -> kind.map(BackupClass::name).orElse(""),
                                now -> new Property.Said<>(List.of(now.backup()
                                        .batteryPumps()
                                        .flatMap(pumps -> catalogue.backupGear(pumps.kind())))),
                                (now, kind) -> BackupEdits.pumps(now, kind.orElseThrow())),
                        whole(
                                "How many",
                                now -> new Property.Said<>(
                                        List.of(now.backup().batteryPumps().map(pumps -> (double) pumps.count()))),
                                many -> BackupEdits.pumps(room, many))),
                BackupEdits::removePumps,
                Optional.of(new Adding(
                        "Add battery pumps",
                        kinds.stream()
                                .map(kind -> kind(kind.name(), now -> BackupEdits.pumps(now, kind)))
                                .toList())),
                Set.of());
    }

    private BackupPart standby() {
        boolean isThere = !room.blowers(Blower.Role.STANDBY).isEmpty();
        List<Property> fields = List.of(
                new Property.OneOf<>(
                        "Starts",
                        PropertyFields.orNothing(Stream.of(Backup.Standby.Start.values())),
                        start -> start.map(that -> switch (that) {
                                    case AUTOMATIC -> "by itself";
                                    case MANUAL -> "by hand";
                                })
                                .orElse("not said: by hand"),
                        now -> new Property.Said<>(
                                List.of(now.backup().standby().map(Backup.Standby::start))),
                        BackupEdits::start),
                amount("Gives air after", BackupValues.STANDBY_READY, assumed(Assumable.READY)));
        return new BackupPart(
                "Standby blower",
                "None. It stands beside the blower, behind a check valve of its own.",
                isThere ? List.of(new Thing("standby", "", fields, Optional.empty())) : List.of(),
                Optional.of(new Adding("Draw a standby", List.of(new Choice.Named<>("", drawsStandby)))),
                Set.of());
    }

    private interface Like {
        Attempt add(Room room, Optional<BackupClass> like);
    }

    private Optional<Adding> adding(String words, BackupClass.Kind gear, Like like) {
        Stream<Choice.Named<Runnable>> known = catalogue.backupGear(gear).stream()
                .map(kind -> kind(kind.name(), now -> like.add(now, Optional.of(kind))));
        Choice.Named<Runnable> unknown = kind("Nothing known of it", now -> like.add(now, Optional.empty()));
        return Optional.of(
                new Adding(words, Stream.concat(known, Stream.of(unknown)).toList()));
    }

    private Choice.Named<Runnable> kind(String name, Function<Room, Attempt> adds) {
        return new Choice.Named<>(name, () -> does.accept(adds.apply(room)));
    }

    /** What there is once or not at all. */
    static BackupPart one(
            String title,
            String says,
            boolean isThere,
            java.util.function.Supplier<List<Property>> fields,
            Function<Room, Attempt> remove,
            Optional<Adding> adding,
            Set<Code> found) {
        return new BackupPart(
                title,
                says,
                isThere ? List.of(new Thing(title, "", fields.get(), Optional.of(remove))) : List.of(),
                isThere ? Optional.empty() : adding,
                found);
    }

    private Property.Usual assumed(Assumable key) {
        return Property.Usual.of("assumed", catalogue.assumed(key).si());
    }

    /** A number of things. */
    private static Property whole(String label, Function<Room, Property.Said<Double>> now, IntFunction<Attempt> say) {
        return new Property.Amount(
                label, Dimension.COUNT, Property.Usual.NONE, now, (room, many) -> say.apply(rounded(many)));
    }

    private static int rounded(OptionalDouble many) {
        double there = many.orElse(0);
        return there == Math.rint(there) && there <= Integer.MAX_VALUE ? (int) there : 0;
    }
}
