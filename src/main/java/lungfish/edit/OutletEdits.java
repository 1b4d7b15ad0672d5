package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.catalogue.DeviceClass;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Edits of outlets. An empty value is unknown: the plan then assumes one, visibly. Where they leave the pipe: {@link TapEdits}. */
public final class OutletEdits {
    private OutletEdits() {}

    /** One more outlet in each of these tanks, of which nothing is known but its device. */
    public static Attempt add(Room room, Collection<TankId> into, DeviceClass device) {
        List<Tank> tanks = Find.tanks(room, into);
        return tanks.isEmpty()
                ? Refused.nothing("tank")
                : Edit.tried(room, "Add " + Words.count(tanks.size(), "outlet"), before -> {
                    Fresh ids = Fresh.outlets(before);
                    return Each.tank(
                            before, Each.where(tank -> into.contains(tank.id()), tank -> with(tank, ids, device)));
                });
    }

    private static Tank with(Tank tank, Fresh ids, DeviceClass device) {
        return with(tank, ids, device, OptionalDouble.empty());
    }

    private static Tank with(Tank tank, Fresh ids, DeviceClass device, OptionalDouble depthM) {
        List<Outlet> outlets = new ArrayList<>(tank.outlets());
        OutletId id = new OutletId(ids.lettered(tank.id().text()));
        outlets.add(TankMaker.outlet(id, device.id()).withDepthM(depthM));
        return tank.withOutlets(outlets);
    }

    /** One more outlet in a tank, its air release that deep below the water line, m. */
    public static Attempt addAt(Room room, TankId into, DeviceClass device, double depthM) {
        return Edit.tried(room, "Add 1 outlet", before -> {
            Fresh ids = Fresh.outlets(before);
            return Each.tank(
                    before,
                    Each.where(
                            tank -> tank.id().equals(into),
                            tank -> with(tank, ids, device, OptionalDouble.of(depthM))));
        });
    }

    /**
     * Moves outlets into another tank, as high above its bottom as they were. In the same rack they keep tap and airline; in
     * another one they leave the pipe at the nearest point.
     */
    public static Attempt carry(Room room, Collection<OutletId> ids, TankId to) {
        List<Outlet> outlets = Find.outlets(room, ids);
        return outlets.isEmpty() || Find.tank(room, to.text()).isEmpty()
                ? Refused.nothing("outlet or tank")
                : Edit.tried(room, "Move " + PartWords.outlets(outlets), before -> carried(before, ids, to));
    }

    private static Room carried(Room room, Collection<OutletId> ids, TankId to) {
        Optional<Rack> rack = Find.rackOfTank(room, to);
        Optional<Tank> tank = Find.tank(room, to.text());
        List<Outlet> carried = room.seats().stream()
                .filter(seat ->
                        ids.contains(seat.outlet().id()) && !seat.tank().id().equals(to))
                .map(seat -> {
                    Outlet here = new Clip.Hung(seat.outlet(), seat.tank().waterDepthM())
                            .in(tank.map(Tank::waterDepthM).orElse(0.0));
                    return rack.filter(seat.rack()::equals).isPresent() ? here : elsewhere(here);
                })
                .toList();
        List<OutletId> gone = carried.stream().map(Outlet::id).toList();
        Room without = Each.outlets(room, outlets -> Each.kept(outlets, outlet -> !gone.contains(outlet.id())));
        return Each.tank(without, Each.where(each -> each.id().equals(to), each -> {
            List<Outlet> all = new ArrayList<>(each.outlets());
            all.addAll(carried);
            return each.withOutlets(all);
        }));
    }

    private static Outlet elsewhere(Outlet outlet) {
        return outlet.tappedAt(Optional.empty())
                .withAirline(outlet.airline()
                        .flatMap(Outlet.Airline::size)
                        .map(size -> new Outlet.Airline(Optional.of(size), OptionalDouble.empty())));
    }

    public static Attempt device(Room room, Collection<OutletId> ids, DeviceClass device) {
        return change(room, ids, "Change the device of ", outlet -> outlet.withDevice(device.id()));
    }

    /** The depth of the air release below the water line, m. */
    public static Attempt depthM(Room room, Collection<OutletId> ids, OptionalDouble depth) {
        return change(room, ids, "Set the depth of ", outlet -> outlet.withDepthM(depth));
    }

    /** The air that it should get, m³/s. A turnover that was asked for gives way. */
    public static Attempt target(Room room, Collection<OutletId> ids, OptionalDouble flowM3PerS) {
        return change(room, ids, "Set the target of ", outlet -> outlet.withFlow(targeted(outlet.flow(), flowM3PerS)));
    }

    static Outlet.Flow targeted(Outlet.Flow flow, OptionalDouble targetM3PerS) {
        OptionalDouble turnover = targetM3PerS.isPresent() ? OptionalDouble.empty() : flow.turnoverPerS();
        return new Outlet.Flow(flow.leastM3PerS(), targetM3PerS, flow.mostM3PerS(), turnover);
    }

    /** How often in a second the water of its tank should pass the device. A target that was given gives way. */
    public static Attempt turnover(Room room, Collection<OutletId> ids, OptionalDouble perS) {
        return change(room, ids, "Set the turnover of ", outlet -> {
            Outlet.Flow flow = outlet.flow();
            OptionalDouble target = perS.isPresent() ? OptionalDouble.empty() : flow.targetM3PerS();
            return outlet.withFlow(new Outlet.Flow(flow.leastM3PerS(), target, flow.mostM3PerS(), perS));
        });
    }

    /** The least air with which it does its work, m³/s. */
    public static Attempt least(Room room, Collection<OutletId> ids, OptionalDouble flowM3PerS) {
        return change(room, ids, "Set the least of ", outlet -> outlet.withFlow(least(outlet.flow(), flowM3PerS)));
    }

    static Outlet.Flow least(Outlet.Flow flow, OptionalDouble leastM3PerS) {
        return new Outlet.Flow(leastM3PerS, flow.targetM3PerS(), flow.mostM3PerS(), flow.turnoverPerS());
    }

    /** The most air that the device, or what lives there, bears, m³/s. */
    public static Attempt most(Room room, Collection<OutletId> ids, OptionalDouble flowM3PerS) {
        return change(room, ids, "Set the most of ", outlet -> outlet.withFlow(most(outlet.flow(), flowM3PerS)));
    }

    static Outlet.Flow most(Outlet.Flow flow, OptionalDouble mostM3PerS) {
        return new Outlet.Flow(flow.leastM3PerS(), flow.targetM3PerS(), mostM3PerS, flow.turnoverPerS());
    }

    public static Attempt use(Room room, Collection<OutletId> ids, Outlet.Use use) {
        return change(room, ids, "Set the use of ", outlet -> outlet.used(use));
    }

    /** Whether it is kept going when the air is cut down. */
    public static Attempt essential(Room room, Collection<OutletId> ids, Optional<Boolean> that) {
        return change(room, ids, "Set what is essential of ", outlet -> outlet.withEssential(that));
    }

    static Attempt change(Room room, Collection<OutletId> ids, String verb, UnaryOperator<Outlet> change) {
        List<Outlet> outlets = Find.outlets(room, ids);
        return outlets.isEmpty()
                ? Refused.nothing("outlet")
                : Edit.tried(
                        room,
                        verb + PartWords.outlets(outlets),
                        before -> Each.outlet(before, Each.where(outlet -> ids.contains(outlet.id()), change)));
    }
}
