package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.catalogue.BlowerClass;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;

/** Edits of single machines: the planned blower, standbys, pumps of today. Which machine and bleed the plan takes: {@link BlowerEdits}. */
public final class MachineEdits {
    private MachineEdits() {}

    /** A new machine there; without a class the plan recommends one. It joins the pipe at the nearest point. */
    public static Attempt place(Room room, Blower.Role role, Optional<BlowerClass> kind, Point place) {
        return Edit.tried(room, "Place a " + word(role), before -> {
            List<Blower> blowers = new ArrayList<>(before.blowers());
            blowers.add(machine(before, role, kind, place));
            return before.withBlowers(blowers);
        });
    }

    private static Blower machine(Room room, Blower.Role role, Optional<BlowerClass> kind, Point place) {
        String word = word(role);
        BlowerId id = new BlowerId(Fresh.blowers(room).like(word));
        Blower silent = Blower.planned(id)
                .as(role)
                .named(Names.unique(Words.opening(word), Taken.blowerNames(room)))
                .withMachine(kind.map(BlowerClass::id));
        return silent.sited(silent.siting().at(Optional.of(place)));
    }

    private static String word(Blower.Role role) {
        return switch (role) {
            case TODAY -> "pump";
            case PLANNED -> "blower";
            case STANDBY -> "standby";
        };
    }

    /** The outlets that a pump of today feeds; another pump of today that fed them lets them go. */
    public static Attempt serve(Room room, BlowerId id, List<OutletId> outlets) {
        List<OutletId> there =
                Find.outlets(room, outlets).stream().map(Outlet::id).toList();
        return Find.blower(room, id.text())
                .map(pump -> Edit.tried(
                        room,
                        "Set what " + pump.name() + " feeds",
                        before -> before.withBlowers(Each.changed(
                                before.blowers(),
                                blower -> served(blower, blower.id().equals(id), there)))))
                .orElse(Refused.nothing("pump"));
    }

    private static Blower served(Blower blower, boolean isMeant, List<OutletId> outlets) {
        return isMeant
                ? blower.serving(outlets)
                : blower.serving(Each.kept(blower.serves(), outlet -> !outlets.contains(outlet)));
    }

    /** Another class in its place; empty: the plan recommends one. */
    public static Attempt machine(Room room, BlowerId id, Optional<BlowerClass> kind) {
        return change(room, id, "Change ", blower -> blower.withMachine(kind.map(BlowerClass::id)));
    }

    public static Attempt place(Room room, BlowerId id, Point place) {
        return change(room, id, "Move ", blower -> blower.sited(blower.siting().at(Optional.of(place))));
    }

    /** It stands outside the room, behind a wall that takes so many decibels off its sound; empty: unknown. */
    public static Attempt standOutside(Room room, BlowerId id, OptionalDouble wallDb) {
        return change(
                room,
                id,
                "Move outside: ",
                blower -> blower.sited(new Blower.Siting(
                        blower.siting().place(), true, wallDb, blower.siting().intakeTemperatureK())));
    }

    /** It stands in the room. */
    public static Attempt standInside(Room room, BlowerId id) {
        return change(
                room,
                id,
                "Move inside: ",
                blower -> blower.sited(new Blower.Siting(
                        blower.siting().place(),
                        false,
                        OptionalDouble.empty(),
                        blower.siting().intakeTemperatureK())));
    }

    /** The temperature of the air that it draws, K; empty: unknown. */
    public static Attempt intakeK(Room room, BlowerId id, OptionalDouble temperatureK) {
        return change(
                room,
                id,
                "Set the intake of ",
                blower -> blower.sited(new Blower.Siting(
                        blower.siting().place(),
                        blower.siting().outside(),
                        blower.siting().wallDb(),
                        temperatureK)));
    }

    /** The circuit on which it hangs; empty: unknown. */
    public static Attempt circuit(Room room, BlowerId id, Optional<CircuitId> circuit) {
        return CircuitEdits.isThere(room, circuit)
                ? change(room, id, "Set the circuit of ", blower -> blower.on(circuit))
                : Refused.nothing("circuit");
    }

    /** How old it is, s; empty: unknown. */
    public static Attempt age(Room room, BlowerId id, OptionalDouble ageS) {
        return change(room, id, "Set the age of ", blower -> blower.aged(ageS));
    }

    /** What is fitted to it: filter, silencer, hose, relief valve. */
    public static Attempt fit(Room room, BlowerId id, UnaryOperator<Blower.Fittings> change) {
        return change(room, id, "Change what is fitted to ", blower -> blower.fitted(change.apply(blower.fittings())));
    }

    /** The same at a machine that may not be there. */
    public static Attempt fit(Room room, Optional<BlowerId> id, UnaryOperator<Blower.Fittings> change) {
        return id.map(there -> fit(room, there, change)).orElse(noMachine());
    }

    /** A bleed valve, set to what the room needs, at a machine that may not be there. */
    public static Attempt bleed(Room room, Optional<BlowerId> id) {
        return id.map(there -> bleed(room, there, new Blower.BledTo(OptionalDouble.empty())))
                .orElse(noMachine());
    }

    private static Attempt noMachine() {
        return Refused.because("No machine stands at that place.", "Click on the blower; place it first.");
    }

    /** What happens to its surplus air. */
    public static Attempt bleed(Room room, BlowerId id, Blower.Bleed bleed) {
        return change(room, id, "Set the bleed of ", blower -> blower.withBleed(bleed));
    }

    public static Attempt role(Room room, BlowerId id, Blower.Role role) {
        return change(room, id, "Make a " + word(role) + " of ", blower -> blower.as(role));
    }

    /** So many of them, side by side. */
    public static Attempt count(Room room, BlowerId id, int many) {
        return change(room, id, "Set how many of ", blower -> blower.times(many));
    }

    /** Where it joins the pipe; empty: at the nearest point. */
    public static Attempt feed(Room room, BlowerId id, Optional<Outlet.OnRun> at) {
        boolean leadsNowhere = at.isPresent() && Seats.place(room, at.get()).isEmpty();
        return leadsNowhere
                ? Refused.nothing("pipe")
                : change(room, id, "Move the joint of ", blower -> blower.feeding(at.map(seat -> on(room, seat))));
    }

    private static Outlet.OnRun on(Room room, Outlet.OnRun seat) {
        double lengthM = Find.run(room, seat.run().text()).orElseThrow().lengthM();
        return new Outlet.OnRun(seat.run(), seat.atM() >= 0 ? Math.min(seat.atM(), lengthM) : 0);
    }

    public static Attempt rename(Room room, BlowerId id, String name) {
        Optional<Refused> trouble = Names.trouble(name);
        return trouble.isPresent() ? trouble.get() : change(room, id, "Rename ", blower -> blower.named(name));
    }

    private static Attempt change(Room room, BlowerId id, String verb, UnaryOperator<Blower> change) {
        return Find.blower(room, id.text())
                .map(blower -> Edit.tried(
                        room,
                        verb + blower.name(),
                        before -> before.withBlowers(Each.changed(
                                before.blowers(), Each.where(each -> each.id().equals(id), change)))))
                .orElse(Refused.nothing("blower"));
    }
}
