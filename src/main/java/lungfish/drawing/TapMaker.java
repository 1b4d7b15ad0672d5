package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.TapPart;
import lungfish.piping.PipedRoom;
import lungfish.piping.Spot;
import lungfish.reason.PartId;
import lungfish.room.BlowerId;
import lungfish.room.GangId;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/** Finds the taps of a piped room: one for each place of the pipe and side of it that outlets hang on. */
final class TapMaker {
    /** A rack whose middle is nearer to the pipe than this lies under it, on neither side. */
    private static final double BESIDE_M = 0.05;

    private static final double A_LITTLE_M = 0.02;

    /** A place of the pipe, and the side of it: 1 or -1 along its normal. */
    private record Side(Spot spot, double side) {}

    private final Room room;
    private final PipedRoom piped;
    private final Map<OutletId, OutletPart> outlets = new HashMap<>();

    TapMaker(Room room, PipedRoom piped, List<OutletPart> parts) {
        this.room = room;
        this.piped = piped;
        parts.forEach(part -> outlets.put(part.outlet().id(), part));
    }

    /** Where the feeder of a gang leaves the pipe; none where the gang has no feeder. */
    static Optional<double[]> feeder(PipedRoom piped, GangId gang) {
        return feederNode(piped, "gang " + gang.text())
                .map(node -> piped.spots().get(node))
                .map(spot -> new double[] {spot.place().xM(), spot.place().yM()});
    }

    /** Where the hose of a blower joins the pipe; none where the blower is no part of the network. */
    static Optional<double[]> hose(PipedRoom piped, BlowerId blower) {
        return piped.network().pipes().stream()
                .filter(pipe -> pipe.from().equals(piped.blowerNodes().get(blower)))
                .findFirst()
                .map(pipe -> piped.spots().get(pipe.to()))
                .map(spot -> new double[] {spot.place().xM(), spot.place().yM()});
    }

    private static Optional<String> feederNode(PipedRoom piped, String gangNode) {
        return piped.network().pipes().stream()
                .filter(pipe -> pipe.id().equals(gangNode))
                .findFirst()
                .map(pipe -> pipe.from());
    }

    List<TapPart> taps() {
        Map<Side, List<OutletPart>> hung = new LinkedHashMap<>();
        for (int i = 0; i < piped.needs().size(); i++) {
            OutletPart outlet = outlets.get(piped.needs().get(i).id());
            Spot spot = piped.spots().get(onPipe(piped.network().drops().get(i).node()));
            if (outlet != null && spot != null && spot.run().isPresent()) {
                Side side = new Side(spot, side(spot, outlet));
                hung.computeIfAbsent(side, absent -> new ArrayList<>()).add(outlet);
            }
        }
        return hung.entrySet().stream()
                .map(each -> tap(each.getKey(), each.getValue()))
                .toList();
    }

    private String onPipe(String node) {
        return feederNode(piped, node).orElse(node);
    }

    private TapPart tap(Side at, List<OutletPart> hung) {
        Spot spot = at.spot();
        double side = at.side();
        double[] normal = normal(spot);
        OptionalDouble spare =
                hung.stream().flatMapToDouble(part -> part.sparePa().stream()).min();
        List<PartId> parts = hung.stream().map(OutletPart::part).toList();
        boolean index = hung.stream().anyMatch(OutletPart::index);
        return new TapPart(
                spot.place().xM(), spot.place().yM(), side * normal[0], side * normal[1], spare, index, parts);
    }

    /** Which side of the pipe an outlet's rack lies on; under the pipe, the side of the middle of the room. */
    private double side(Spot spot, OutletPart outlet) {
        Rectangle2D rack = RackStrips.outlineM(outlet.seat().rack());
        double towardsRack = along(spot, rack.getCenterX(), rack.getCenterY());
        double towardsMiddle =
                along(spot, room.shell().lengthM() / 2, room.shell().widthM() / 2);
        double decisive = Math.abs(towardsRack) > BESIDE_M ? towardsRack : towardsMiddle;
        return decisive < 0 ? -1 : 1;
    }

    private double along(Spot spot, double xM, double yM) {
        double[] normal = normal(spot);
        return (xM - spot.place().xM()) * normal[0] + (yM - spot.place().yM()) * normal[1];
    }

    /** Square to the pipe; down the page where the pipe is a riser. */
    private double[] normal(Spot spot) {
        Run run = room.runs().stream()
                .filter(each -> each.id().equals(spot.run().orElseThrow()))
                .findFirst()
                .orElseThrow();
        Point before = run.at(Math.max(0, spot.alongM() - A_LITTLE_M));
        Point after = run.at(spot.alongM() + A_LITTLE_M);
        double dx = after.xM() - before.xM();
        double dy = after.yM() - before.yM();
        double length = Math.hypot(dx, dy);
        return length < 1e-9 ? new double[] {0, 1} : new double[] {-dy / length, dx / length};
    }
}
