package lungfish.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.Valve;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.catalogue.ValveClass;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Check;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Tubing;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Seat;

/** Makes the drop of an outlet: valve, airline, check valve, device, water. What the room leaves out is assumed, visibly. */
final class DropMaker {
    private final Catalogue catalogue;
    private final double networkWaterKgPerM3;
    private final List<Assumption> assumptions = new ArrayList<>();

    DropMaker(Catalogue catalogue, double networkWaterKgPerM3) {
        this.catalogue = catalogue;
        this.networkWaterKgPerM3 = networkWaterKgPerM3;
    }

    /** The drop of a need, hung on a node that lies at a place. */
    Drop drop(Need need, String node, Point from) {
        Outlet outlet = need.seat().outlet();
        Valve valve = valve(outlet);
        return new Drop(
                outlet.id().text(),
                node,
                Math.min(Drop.SHUT_K, valve.kAt(opening(outlet))),
                valve.openK(),
                Optional.of(tubing(need, from)),
                check(outlet),
                Optional.of(device(need.resistance(Upkeep.DUE))),
                depthInNetworkWaterM(need),
                OptionalDouble.of(need.targetM3PerS().si()));
    }

    static Device device(Resistance resistance) {
        return new Device(resistance.p0Pa(), resistance.aPaSPerM3(), resistance.bPaS2PerM6());
    }

    /** The network knows one water; a column of salt or cold water becomes the depth of that water that weighs the same. */
    private double depthInNetworkWaterM(Need need) {
        return need.depthM().si() * need.waterDensityKgPerM3() / networkWaterKgPerM3;
    }

    private Valve valve(Outlet outlet) {
        ValveClass kind = outlet.valve()
                .map(valve -> catalogue
                        .valve(valve.kind())
                        .orElseThrow(() -> new IllegalArgumentException("no valve '" + valve.kind() + "'")))
                .orElseGet(() -> assumedValve(outlet));
        return ValveMaker.of(kind);
    }

    private ValveClass assumedValve(Outlet outlet) {
        ValveClass first = catalogue.valves().get(0);
        assumptions.add(new Assumption(
                Assumable.VALVE_KIND,
                outlet.id().part(),
                "valve: " + first.name(),
                first.openLossFactor(),
                Dimension.RATIO,
                first.source()));
        return first;
    }

    private double opening(Outlet outlet) {
        return outlet.valve().flatMap(valve -> optional(valve.opening())).orElse(1.0);
    }

    private static Optional<Double> optional(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private Optional<Check> check(Outlet outlet) {
        String kind = outlet.checkValve().orElse(Outlet.NO_CHECK_VALVE);
        if (kind.equals(Outlet.NO_CHECK_VALVE)) {
            return Optional.empty();
        }
        CheckValveClass valve = catalogue
                .checkValve(kind)
                .orElseThrow(() -> new IllegalArgumentException("no check valve '" + kind + "'"));
        return Optional.of(new Check(valve.openPa(), valve.slopePaSPerM3()));
    }

    private Tubing tubing(Need need, Point from) {
        Outlet outlet = need.seat().outlet();
        AirlineSize size = outlet.airline()
                .flatMap(Outlet.Airline::size)
                .map(this::airline)
                .orElseGet(() -> assumedAirline(outlet.id().part()));
        OptionalDouble typed = outlet.airline().map(Outlet.Airline::lengthM).orElse(OptionalDouble.empty());
        double lengthM = typed.orElseGet(() -> drawnM(need, from));
        return new Tubing(lengthM, size.boreM(), size.roughnessM(), tapLoss());
    }

    /** Into the airline and out of it. */
    private double tapLoss() {
        return catalogue.assumed(Assumable.TAP_LOSS_FACTOR).si();
    }

    AirlineSize airline(String id) {
        return catalogue.airline(id).orElseThrow(() -> new IllegalArgumentException("no airline '" + id + "'"));
    }

    /** The usual airline, for an outlet or a gang of which the room does not say. */
    AirlineSize assumedAirline(PartId where) {
        AirlineSize first = catalogue.airlines().get(0);
        assumptions.add(new Assumption(
                Assumable.AIRLINE_SIZE,
                where,
                "airline: " + first.name(),
                first.boreM(),
                Dimension.BORE,
                first.source()));
        return first;
    }

    /** From the tap over the rim and down to the air release, with some slack. */
    private double drawnM(Need need, Point from) {
        Seat seat = need.seat();
        double above = seat.tank().outside().heightM() - seat.tank().waterDepthM();
        double straight = from.distanceM(seat.rim()) + above + need.depthM().si();
        return straight * (1 + catalogue.assumed(Assumable.AIRLINE_SLACK).si());
    }

    /** The slack that drawn airlines get, as an assumption of the room. */
    AssumedValue slack() {
        return catalogue.assumed(Assumable.AIRLINE_SLACK);
    }

    List<Assumption> assumptions() {
        return assumptions;
    }
}
