package lungfish.edit;

import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.ValveClass;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;

/** What lies between the tap and the device of an outlet: valve, airline, check valve. Empty: unknown. */
public final class DropEdits {
    private DropEdits() {}

    /** Another valve; a new one has no setting yet. */
    public static Attempt valve(Room room, Collection<OutletId> ids, Optional<ValveClass> kind) {
        return OutletEdits.change(
                room,
                ids,
                "Change the valve of ",
                outlet -> outlet.withValve(kind.map(each -> valve(outlet, each.id()))));
    }

    /** The valve that it has, if it is of that kind, or a new one. */
    static Outlet.Valve valve(Outlet outlet, String kind) {
        return outlet.valve()
                .filter(valve -> valve.kind().equals(kind))
                .orElse(new Outlet.Valve(kind, OptionalDouble.empty()));
    }

    /** How far its valve is open today, 0 to 1. An outlet without a valve stays without. */
    public static Attempt opening(Room room, Collection<OutletId> ids, OptionalDouble share) {
        return OutletEdits.change(
                room,
                ids,
                "Set the valve of ",
                outlet -> outlet.withValve(outlet.valve().map(valve -> new Outlet.Valve(valve.kind(), share))));
    }

    public static Attempt airline(Room room, Collection<OutletId> ids, Optional<AirlineSize> size) {
        return OutletEdits.change(
                room, ids, "Change the airline of ", outlet -> tubed(outlet, size.map(AirlineSize::id)));
    }

    /** The length of its airline, m; empty: measured from the drawing. */
    public static Attempt airlineLength(Room room, Collection<OutletId> ids, OptionalDouble lengthM) {
        return OutletEdits.change(room, ids, "Set the airline of ", outlet -> tubed(outlet, lengthM));
    }

    static Outlet tubed(Outlet outlet, Optional<String> size) {
        OptionalDouble lengthM = outlet.airline().map(Outlet.Airline::lengthM).orElse(OptionalDouble.empty());
        return outlet.withAirline(said(new Outlet.Airline(size, lengthM)));
    }

    static Outlet tubed(Outlet outlet, OptionalDouble lengthM) {
        Optional<String> size = outlet.airline().flatMap(Outlet.Airline::size);
        return outlet.withAirline(said(new Outlet.Airline(size, lengthM)));
    }

    /** An airline of which nothing is said is none. */
    private static Optional<Outlet.Airline> said(Outlet.Airline airline) {
        boolean silent = airline.size().isEmpty() && airline.lengthM().isEmpty();
        return silent ? Optional.empty() : Optional.of(airline);
    }

    public static Attempt checkValve(Room room, Collection<OutletId> ids, CheckValveClass kind) {
        return OutletEdits.change(
                room, ids, "Fit a check valve to ", outlet -> outlet.withCheckValve(Optional.of(kind.id())));
    }

    /** It has none. */
    public static Attempt noCheckValve(Room room, Collection<OutletId> ids) {
        return OutletEdits.change(
                room,
                ids,
                "Take the check valve off ",
                outlet -> outlet.withCheckValve(Optional.of(Outlet.NO_CHECK_VALVE)));
    }
}
