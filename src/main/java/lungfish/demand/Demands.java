package lungfish.demand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.Airlift;
import lungfish.air.Water;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.DeviceClass.Uplift;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.room.Classes;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Seat;

/** Asks every outlet of a room what air it needs. */
public final class Demands {
    /** An uplift tube's mouth stands this far above the water line: common practice, no source. */
    private static final double LIFT_M = 0.01;

    private final Classes classes;
    private final Surroundings surroundings;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Map<Lifting, Double> lifts = new HashMap<>();

    private Demands(Room room, Catalogue catalogue) {
        this.classes = new Classes(room.ownClasses(), catalogue);
        this.surroundings = Surroundings.of(room, catalogue);
    }

    /**
     * The demand of a room.
     *
     * @throws IllegalArgumentException when an outlet names a device class that is nowhere: the reader of files has told
     *     the keeper before
     */
    public static Demand of(Room room, Catalogue catalogue) {
        Demands demands = new Demands(room, catalogue);
        List<Need> here = new ArrayList<>();
        List<Need> planned = new ArrayList<>();
        for (Seat seat : room.seats()) {
            (seat.planned() ? planned : here).add(demands.need(seat));
        }
        return new Demand(here, planned, demands.findings, demands.assumptions);
    }

    private Need need(Seat seat) {
        DeviceClass device = classes.device(seat.outlet().device())
                .orElseThrow(() -> new IllegalArgumentException(
                        "no device class '" + seat.outlet().device() + "'"));
        Outlet.Flow flow = seat.outlet().flow();
        Given depth = depth(seat);
        Given target = target(seat, device, depth);
        OptionalDouble most = flow.mostM3PerS().isPresent() ? flow.mostM3PerS() : device.mostM3PerS();
        checkMost(seat, target, most);
        return new Need(
                seat,
                device,
                depth,
                surroundings.water(seat.tank()).densityKgPerM3(),
                target,
                flow.leastM3PerS().orElse(device.leastM3PerS()),
                most,
                lifted(seat, device, depth, target));
    }

    private Given depth(Seat seat) {
        double water = seat.tank().waterDepthM();
        OptionalDouble typed = seat.outlet().depthM();
        if (typed.isPresent()) {
            checkDepth(seat, typed.getAsDouble(), water);
            return new Given(typed.getAsDouble(), Origin.typed(""));
        }
        AssumedValue above = classes.catalogue().assumed(Assumable.WATER_ABOVE_BOTTOM);
        double depth = Math.max(0, water - above.si());
        assumptions.add(new Assumption(
                above.key(),
                seat.outlet().id().part(),
                "depth of the air release",
                depth,
                Dimension.DEPTH,
                above.source()));
        return new Given(depth, Origin.assumed(above.key(), above.source()));
    }

    private void checkDepth(Seat seat, double depth, double water) {
        if (depth > water) {
            findings.add(Finding.of(
                    Code.DEEPER_THAN_WATER,
                    seat.outlet().id().part(),
                    new Amount("found", depth, Dimension.DEPTH),
                    new Amount("allowed", water, Dimension.DEPTH)));
        }
    }

    private Given target(Seat seat, DeviceClass device, Given depth) {
        Outlet.Flow flow = seat.outlet().flow();
        if (flow.targetM3PerS().isPresent()) {
            return new Given(flow.targetM3PerS().getAsDouble(), Origin.typed(""));
        }
        if (flow.turnoverPerS().isPresent() && device.uplift().isPresent()) {
            return turned(seat, device, depth, flow.turnoverPerS().getAsDouble());
        }
        if (flow.turnoverPerS().isPresent()) {
            findings.add(Finding.of(
                    Code.TURNOVER_WITHOUT_TUBE,
                    seat.outlet().id().part(),
                    new Amount("found", device.typicalM3PerS(), Dimension.AIR_FLOW)));
        }
        assumptions.add(new Assumption(
                Assumable.OUTLET_TARGET,
                seat.outlet().id().part(),
                "target",
                device.typicalM3PerS(),
                Dimension.AIR_FLOW,
                "typical of the class " + device.name()));
        return new Given(device.typicalM3PerS(), Origin.catalogue(device.id()));
    }

    /** The least air that turns the tank over as asked; what the tube does at its most air where it cannot. */
    private Given turned(Seat seat, DeviceClass device, Given depth, double turnoverPerS) {
        double asked = turnoverPerS * seat.tank().waterM3();
        Airlift lift = airlift(device.uplift().orElseThrow(), depth.si());
        Water water = surroundings.water(seat.tank());
        OptionalDouble air = lift.freeAirM3PerS(asked, water, surroundings.freeAir());
        double most =
                seat.outlet().flow().mostM3PerS().orElse(device.mostM3PerS().orElse(device.typicalM3PerS() * 4));
        if (air.isPresent() && air.getAsDouble() <= most) {
            return new Given(air.getAsDouble(), Origin.computed("turnover through the airlift model"));
        }
        findings.add(Finding.of(
                Code.TURNOVER_NOT_REACHED,
                seat.outlet().id().part(),
                new Amount("found", lift.waterM3PerS(most, water, surroundings.freeAir()), Dimension.WATER_FLOW),
                new Amount("allowed", asked, Dimension.WATER_FLOW)));
        return new Given(most, Origin.computed("the most air that the device takes"));
    }

    private Optional<Need.Lifted> lifted(Seat seat, DeviceClass device, Given depth, Given target) {
        if (device.uplift().isEmpty() || depth.si() <= 0) {
            return Optional.empty();
        }
        Airlift lift = airlift(device.uplift().get(), depth.si());
        if (!lift.insideItsRange()) {
            findings.add(
                    Finding.of(Code.AIRLIFT_OUT_OF_RANGE, seat.outlet().id().part()));
        }
        Lifting lifting = new Lifting(lift, target.si(), surroundings.water(seat.tank()));
        return Optional.of(new Need.Lifted(lifts.computeIfAbsent(lifting, this::waterM3PerS), lift.insideItsRange()));
    }

    private double waterM3PerS(Lifting lifting) {
        return lifting.tube().waterM3PerS(lifting.airM3PerS(), lifting.water(), surroundings.freeAir());
    }

    private static Airlift airlift(Uplift uplift, double depthM) {
        return new Airlift(uplift.boreM(), depthM + LIFT_M, depthM, uplift.lossFactor());
    }

    private void checkMost(Seat seat, Given target, OptionalDouble most) {
        if (most.isPresent() && target.si() > most.getAsDouble() * (1 + 1e-9)) {
            findings.add(Finding.of(
                    Code.TARGET_ABOVE_MOST,
                    seat.outlet().id().part(),
                    new Amount("found", target.si(), Dimension.AIR_FLOW),
                    new Amount("allowed", most.getAsDouble(), Dimension.AIR_FLOW)));
        }
    }

    /** One of the few questions that a room of many equal outlets asks of the airlift model. */
    private record Lifting(Airlift tube, double airM3PerS, Water water) {}
}
