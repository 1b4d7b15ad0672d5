package lungfish.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A machine that gives air: a small pump of today, the planned blower, or a standby.
 *
 * @param machine a class of the catalogue or one of the room's own; absent: the plan recommends one
 * @param count how many of them, side by side, each behind its own check valve
 * @param serves the outlets that a pump of today feeds
 * @param feeds where it joins the pipe; absent: the nearest point of the main
 */
public record Blower(
        BlowerId id,
        String name,
        Role role,
        Optional<String> machine,
        int count,
        Siting siting,
        Fittings fittings,
        Bleed bleed,
        Optional<CircuitId> circuit,
        OptionalDouble ageS,
        List<OutletId> serves,
        Optional<Outlet.OnRun> feeds) {
    /** What it is to the room. */
    public enum Role {
        TODAY,
        PLANNED,
        STANDBY
    }

    /**
     * Where it stands.
     *
     * @param outside it stands outside the room: in a closet, an attic
     * @param wallDb what the wall between takes off its sound, when it stands outside
     * @param intakeTemperatureK of the air that it draws
     */
    public record Siting(
            Optional<Point> place, boolean outside, OptionalDouble wallDb, OptionalDouble intakeTemperatureK) {
        /** The same, standing there; absent: unknown. */
        public Siting at(Optional<Point> that) {
            return new Siting(that, outside, wallDb, intakeTemperatureK);
        }
    }

    /**
     * What is fitted to it.
     *
     * @param inletFilter a class of the catalogue
     * @param silencer a class of the catalogue
     * @param hoseM the flexible connector to the pipe
     * @param portM bore of the port
     * @param reliefPa at which its relief valve opens, gauge
     */
    public record Fittings(
            Optional<String> inletFilter,
            Optional<String> silencer,
            OptionalDouble hoseM,
            OptionalDouble portM,
            OptionalDouble reliefPa) {
        public static final Fittings UNKNOWN = new Fittings(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());

        /** The same, on a hose so long, m; empty: unknown. */
        public Fittings withHoseM(OptionalDouble that) {
            return new Fittings(inletFilter, silencer, that, portM, reliefPa);
        }

        /** The same, drawing its air through this class of the catalogue; empty: none known. */
        public Fittings withInletFilter(Optional<String> that) {
            return new Fittings(that, silencer, hoseM, portM, reliefPa);
        }

        /** The same, quieted by this class of the catalogue; empty: none known. */
        public Fittings withSilencer(Optional<String> that) {
            return new Fittings(inletFilter, that, hoseM, portM, reliefPa);
        }

        /** The same, with a relief valve that opens at this, Pa gauge; empty: none known. */
        public Fittings withReliefPa(OptionalDouble that) {
            return new Fittings(inletFilter, silencer, hoseM, portM, that);
        }
    }

    /** What happens to the air that the outlets do not take. */
    public sealed interface Bleed permits Unbled, BledTo, Unsaid {}

    /** Nothing is let out: the pressure rises until the tuned valves take it all up. */
    public record Unbled() implements Bleed {}

    /**
     * Air is let out until the pressure at the blower is this.
     *
     * @param gaugePa absent: just what the room needs, with the wished spare
     */
    public record BledTo(OptionalDouble gaugePa) implements Bleed {}

    /** The room does not say. */
    public record Unsaid() implements Bleed {}

    public Blower {
        serves = List.copyOf(serves);
    }

    /** A planned blower of which nothing else is said: the plan recommends the machine. */
    public static Blower planned(BlowerId id) {
        return new Blower(
                id,
                "planned blower",
                Role.PLANNED,
                Optional.empty(),
                1,
                new Siting(Optional.empty(), false, OptionalDouble.empty(), OptionalDouble.empty()),
                Fittings.UNKNOWN,
                new Unsaid(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty());
    }

    /** Another machine, or the plan's choice, in the same place. */
    public Blower withMachine(Optional<String> that) {
        return new Blower(id, name, role, that, count, siting, fittings, bleed, circuit, ageS, serves, feeds);
    }

    /** The same machine, with its surplus treated otherwise. */
    public Blower withBleed(Bleed that) {
        return new Blower(id, name, role, machine, count, siting, fittings, that, circuit, ageS, serves, feeds);
    }

    /** The same machine, standing elsewhere. */
    public Blower sited(Siting that) {
        return new Blower(id, name, role, machine, count, that, fittings, bleed, circuit, ageS, serves, feeds);
    }

    /** The same machine with other things fitted to it. */
    public Blower fitted(Fittings that) {
        return new Blower(id, name, role, machine, count, siting, that, bleed, circuit, ageS, serves, feeds);
    }

    /** The same machine under another name. */
    public Blower named(String that) {
        return new Blower(id, that, role, machine, count, siting, fittings, bleed, circuit, ageS, serves, feeds);
    }

    /** The same machine, something else to the room. */
    public Blower as(Role that) {
        return new Blower(id, name, that, machine, count, siting, fittings, bleed, circuit, ageS, serves, feeds);
    }

    /** So many of the same machine, side by side. */
    public Blower times(int that) {
        return new Blower(id, name, role, machine, that, siting, fittings, bleed, circuit, ageS, serves, feeds);
    }

    /** The same machine, so old, s; empty: unknown. */
    public Blower aged(OptionalDouble that) {
        return new Blower(id, name, role, machine, count, siting, fittings, bleed, circuit, that, serves, feeds);
    }

    /** The same machine on this circuit; empty: unknown. */
    public Blower on(Optional<CircuitId> that) {
        return new Blower(id, name, role, machine, count, siting, fittings, bleed, that, ageS, serves, feeds);
    }

    /** The same pump of today, feeding these outlets. */
    public Blower serving(List<OutletId> those) {
        return new Blower(id, name, role, machine, count, siting, fittings, bleed, circuit, ageS, those, feeds);
    }

    /** The same machine, joining the pipe elsewhere; absent: at the nearest point. */
    public Blower feeding(Optional<Outlet.OnRun> that) {
        return new Blower(id, name, role, machine, count, siting, fittings, bleed, circuit, ageS, serves, that);
    }
}
