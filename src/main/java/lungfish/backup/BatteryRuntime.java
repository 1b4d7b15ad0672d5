package lungfish.backup;

import static lungfish.reason.Assumable.BATTERY_TEMPERATURE;
import static lungfish.reason.Assumable.BATTERY_WEAR;
import static lungfish.reason.Assumable.INVERTER_EFFICIENCY;
import static lungfish.reason.Assumable.INVERTER_IDLE;
import static lungfish.reason.Assumable.RUNTIME;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.Catalogue;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Given;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import lungfish.room.Backup.Battery;
import lungfish.room.Backup.Inverter;
import lungfish.room.BatteryId;
import lungfish.room.Room;

/**
 * How long the batteries of a room carry its blower, and the battery for the runtime that is wished for. A lead-acid
 * battery loses to depth, cold, age and a hard load; the inverter takes its share and draws power while it idles.
 */
public final class BatteryRuntime {
    /** The kind that is proposed where the room has no battery. */
    private static final String PROPOSED = "lifepo4";

    private final Room room;
    private final Catalogue catalogue;
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    private BatteryRuntime(Room room, Catalogue catalogue) {
        this.room = room;
        this.catalogue = catalogue;
    }

    /**
     * Answers for a room and what its blower draws.
     *
     * @throws IllegalArgumentException if a battery names a kind that is not in the catalogue
     */
    public static BackupAnswer of(Room room, Catalogue catalogue, Load load) {
        return new BatteryRuntime(room, catalogue).answer(load);
    }

    /**
     * How long the batteries of a room carry a steady power, and nothing else of the answer; empty where there is none.
     *
     * @throws IllegalArgumentException if a battery names a kind that is not in the catalogue
     */
    public static OptionalDouble runtimeS(Room room, Catalogue catalogue, double watts) {
        return bank(room, catalogue)
                .map(bank -> OptionalDouble.of(bank.runtimeS(watts)))
                .orElseGet(OptionalDouble::empty);
    }

    /** The batteries of a room behind its inverter; empty where there are none. */
    static Optional<Bank> bank(Room room, Catalogue catalogue) {
        BatteryRuntime own = new BatteryRuntime(room, catalogue);
        List<Store> stores = own.stores();
        return stores.isEmpty() ? Optional.empty() : Optional.of(new Bank(stores, own.inverting()));
    }

    private List<Store> stores() {
        return room.backup().batteries().stream()
                .map(battery -> store(battery, battery.id().part()))
                .toList();
    }

    private BackupAnswer answer(Load load) {
        List<Store> stores = stores();
        Given wished = given(room.wishes().runtimeS(), RUNTIME, PartId.ROOM);
        Bank bank = new Bank(stores.isEmpty() ? List.of(store(proposed(), PartId.ROOM)) : stores, inverting());
        double sizes = bank.sizeFor(load.runningW(), wished.si());
        List<Finding> findings = new ArrayList<>();
        if (!stores.isEmpty() && bank.runtimeS(load.runningW()) < wished.si()) {
            findings.add(tooShort(bank, load, wished, sizes));
        }
        findings.addAll(Cautions.of(room, stores, load));
        return new BackupAnswer(
                stores.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(bank.runtimeS(load.runningW())),
                essential(stores, bank, load),
                wished,
                needed(bank, sizes, wished),
                findings,
                List.copyOf(assumptions),
                stores.isEmpty() ? Optional.<Why>empty() : Optional.of(Waterfall.of(bank, load.runningW())));
    }

    private static OptionalDouble essential(List<Store> stores, Bank bank, Load load) {
        return stores.isEmpty() || load.essentialW().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(bank.runtimeS(load.essentialW().getAsDouble()));
    }

    private static Finding tooShort(Bank bank, Load load, Given wished, double sizes) {
        double moreC = (sizes - 1) * bank.ratedJ() / voltageV(bank);
        return Finding.of(
                Code.RUNTIME_SHORT,
                PartId.ROOM,
                new Amount("found", bank.runtimeS(load.runningW()), Dimension.DURATION),
                new Amount("allowed", wished.si(), Dimension.DURATION),
                new Amount("needed", moreC, Dimension.CHARGE));
    }

    private static Needed needed(Bank bank, double sizes, Given wished) {
        double voltageV = voltageV(bank);
        return new Needed(bank.stores().get(0).kind(), voltageV, sizes * bank.ratedJ() / voltageV, wished.si());
    }

    private static double voltageV(Bank bank) {
        return bank.stores().get(0).battery().voltageV();
    }

    private Battery proposed() {
        BatteryClass kind = catalogue
                .battery(PROPOSED)
                .orElseGet(() -> catalogue.batteries().get(0));
        return new Battery(
                new BatteryId(kind.id()),
                kind.id(),
                1,
                kind.blockV(),
                100 * 3600,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private Store store(Battery battery, PartId where) {
        BatteryClass kind = catalogue
                .battery(battery.kind())
                .orElseThrow(() -> new IllegalArgumentException("no battery kind '" + battery.kind() + "'"));
        return new Store(
                battery,
                kind,
                given(battery.temperatureK(), BATTERY_TEMPERATURE, where),
                given(battery.wear(), BATTERY_WEAR, where));
    }

    private Inverting inverting() {
        Optional<Inverter> inverter = room.backup().inverter();
        PartId part = new PartId(PartId.Kind.INVERTER, "");
        return new Inverting(
                given(inverter.map(Inverter::efficiency).orElse(OptionalDouble.empty()), INVERTER_EFFICIENCY, part),
                given(
                        inverter.map(Inverter::idleW).orElse(OptionalDouble.empty()),
                        Inverting.idle(
                                catalogue.assumed(INVERTER_IDLE),
                                inverter.map(Inverter::ratedW).orElse(OptionalDouble.empty())),
                        part));
    }

    private Given given(OptionalDouble typed, Assumable otherwise, PartId where) {
        return given(typed, catalogue.assumed(otherwise), where);
    }

    private Given given(OptionalDouble typed, AssumedValue assumed, PartId where) {
        Given given = Given.typedOr(typed, assumed.given());
        if (given.isAssumed()) {
            assumptions.add(assumed.about(where));
        }
        return given;
    }
}
