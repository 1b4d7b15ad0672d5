package lungfish.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.drawing.SceneParts.BlowerPart;
import lungfish.drawing.SceneParts.GangPart;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.drawing.SceneParts.StretchPart;
import lungfish.drawing.SceneParts.TankPart;
import lungfish.drawing.SceneParts.TapPart;
import lungfish.network.Solved;
import lungfish.piping.PipedRoom;
import lungfish.piping.Stretch;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Seat;

/** Lays a room out for drawing. */
final class SceneMaker {
    private static final double LITRES_PER_MIN = 60_000; // in a m³/s

    private final Room room;
    private final Optional<Plan> plan;
    private final Shown shown;
    private final OverheadPipe overhead;

    SceneMaker(Room room, Optional<Plan> plan, Shown shown) {
        this.room = room;
        this.plan = plan;
        this.shown = shown;
        this.overhead = new OverheadPipe(room);
    }

    Room room() {
        return room;
    }

    Optional<Plan> plan() {
        return plan;
    }

    Shown shown() {
        return shown;
    }

    List<RackPart> racks() {
        return room.racks().stream().map(SceneMaker::rack).toList();
    }

    private static RackPart rack(Rack rack) {
        RackStrips strips = new RackStrips(rack);
        List<TankPart> tanks = new ArrayList<>();
        for (int i = 0; i < rack.shelves().size(); i++) {
            int shelf = i;
            rack.shelves()
                    .get(i)
                    .tanks()
                    .forEach(tank -> tanks.add(new TankPart(tank, rack.isPlanned(), strips.tank(shelf, tank))));
        }
        return new RackPart(rack, RackStrips.outlineM(rack), strips.isAcross(), List.copyOf(tanks));
    }

    List<OutletPart> outlets() {
        Map<OutletId, OutletPlan> plans = new HashMap<>();
        plan.ifPresent(
                each -> each.outlets().forEach(outlet -> plans.put(outlet.need().id(), outlet)));
        return room.seats().stream()
                .map(seat ->
                        outlet(seat, Optional.ofNullable(plans.get(seat.outlet().id()))))
                .toList();
    }

    private OutletPart outlet(Seat seat, Optional<OutletPlan> outlet) {
        RackStrips strips = new RackStrips(seat.rack());
        int shelf = strips.indexOf(seat.shelf());
        Point place = overhead.clearOf(share -> strips.outlet(shelf, seat.tank(), seat.number(), share));
        OptionalDouble spare = outlet.map(shown::sparePa).orElse(OptionalDouble.empty());
        boolean index = outlet.map(shown::isIndex).orElse(false);
        return new OutletPart(seat, place.xM(), place.yM(), state(seat, outlet), index, spare);
    }

    private OutletState state(Seat seat, Optional<OutletPlan> outlet) {
        if (seat.planned()) {
            return OutletState.PLANNED;
        }
        return outlet.map(each -> OutletState.of(each, shown)).orElse(OutletState.UNKNOWN);
    }

    List<StretchPart> stretches() {
        return plan.flatMap(each ->
                        each.piped().flatMap(piped -> each.trials().map(trials -> stretches(piped, shown.of(trials)))))
                .orElseGet(() -> room.runs().stream()
                        .map(run -> new StretchPart(run, 0, run.lengthM(), 0))
                        .toList());
    }

    private List<StretchPart> stretches(PipedRoom piped, Solved solved) {
        Map<RunId, Run> runs = new HashMap<>();
        room.runs().forEach(run -> runs.put(run.id(), run));
        List<StretchPart> parts = new ArrayList<>();
        for (Stretch stretch : piped.stretches()) {
            Run run = runs.get(stretch.run());
            if (run != null) {
                double flow = solved.pipe(stretch.pipe()).freeM3PerS();
                parts.add(new StretchPart(run, stretch.fromM(), stretch.toM(), flow));
            }
        }
        return List.copyOf(parts);
    }

    List<GangPart> gangs() {
        return room.gangs().stream()
                .map(gang -> new GangPart(
                        gang.id().part(),
                        gang.place().xM(),
                        gang.place().yM(),
                        plan.flatMap(Plan::piped).flatMap(piped -> TapMaker.feeder(piped, gang.id()))))
                .toList();
    }

    List<TapPart> taps(List<OutletPart> outlets) {
        return plan.flatMap(Plan::piped)
                .map(piped -> new TapMaker(room, piped, outlets).taps())
                .orElse(List.of());
    }

    List<BlowerPart> blowers() {
        return room.blowers().stream()
                .flatMap(blower -> place(blower)
                        .map(at -> new BlowerPart(
                                blower,
                                at.xM(),
                                at.yM(),
                                figure(blower),
                                plan.flatMap(Plan::piped).flatMap(piped -> TapMaker.hose(piped, blower.id()))))
                        .stream())
                .toList();
    }

    private Optional<Point> place(Blower blower) {
        return blower.siting().place().or(() -> blower.feeds().flatMap(tap -> room.runs().stream()
                .filter(run -> run.id().equals(tap.run()))
                .findFirst()
                .map(run -> run.at(tap.atM()))));
    }

    /** Its flow at rated pressure in L/min, by which the trade names a machine. */
    private String figure(Blower blower) {
        return plan.flatMap(Plan::duty)
                .filter(duty -> blower.role() == Blower.Role.PLANNED)
                .flatMap(duty -> duty.candidate().fleet().placed().stream()
                        .filter(placed ->
                                placed.machine().part().equals(blower.id().part()))
                        .findFirst())
                .map(placed -> Long.toString(Math.round(placed.machine().kind().ratedM3PerS() * LITRES_PER_MIN)))
                .orElse("");
    }
}
