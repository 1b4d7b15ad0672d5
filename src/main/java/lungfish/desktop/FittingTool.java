package lungfish.desktop;

import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.AccessoryClass;
import lungfish.drawing.Hit;
import lungfish.drawing.Sketch;
import lungfish.edit.Attempt;
import lungfish.edit.FittingEdits;
import lungfish.edit.MachineEdits;
import lungfish.edit.Selection;
import lungfish.edit.SnappedPoint;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;

/** Fits valves, unions, gauges into the pipe; filters, silencers and the bleed onto a machine. */
final class FittingTool extends PointingTool {
    private final FittingOptions options;

    FittingTool(View view, FittingOptions options) {
        super(view, "Fitting", 'F', "Click on a pipe; filter, silencer and bleed: on a machine");
        this.options = options;
    }

    private Room room() {
        return view().desk().room();
    }

    private Optional<SnappedPoint> rest(Spot spot) {
        return Resting.snap(view(), Selection.NONE, spot.reachingPipe()).onPipe(new Point(spot.xM(), spot.yM(), 0));
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        super.pressed(spot, under);
        gesture().tryOut(attempt(spot));
    }

    @Override
    void dragged(Spot spot) {
        pressed(spot, Optional.empty());
    }

    private Attempt attempt(Spot spot) {
        FittingOptions.Kind kind = options.chosen();
        if (kind.inPipe().isPresent()) {
            Optional<Outlet.OnRun> seat = rest(spot).flatMap(SnappedPoint::onto);
            return FittingEdits.insert(room(), seat, kind.inPipe().get());
        }
        Optional<Blower> machine = machine(spot);
        return kind.onMachine()
                .map(one -> MachineEdits.fit(room(), machine.map(Blower::id), fitted -> with(fitted, one)))
                .orElseGet(() -> MachineEdits.bleed(room(), machine.map(Blower::id)));
    }

    private static Blower.Fittings with(Blower.Fittings fitted, AccessoryClass one) {
        Optional<String> id = Optional.of(one.id());
        return one.kind() == AccessoryClass.Kind.INLET_FILTER ? fitted.withInletFilter(id) : fitted.withSilencer(id);
    }

    /** Machines are drawn larger than a mark. */
    private Optional<Blower> machine(Spot spot) {
        return room().blowers().stream()
                .filter(blower -> blower.siting().place().stream()
                        .anyMatch(place ->
                                Math.hypot(place.xM() - spot.xM(), place.yM() - spot.yM()) <= 3 * spot.reachM()))
                .findFirst();
    }

    @Override
    Sketch sketch(Spot spot) {
        Stream<Sketch.Stroke> there = options.chosen().inPipe().isPresent()
                ? rest(spot).stream().flatMap(this::onPipe)
                : machine(spot).flatMap(blower -> blower.siting().place()).stream()
                        .map(place -> new Sketch.Spot(place.xM(), place.yM()));
        return new Sketch(there.toList(), gesture().note(spot));
    }

    /** Where it would sit, and how far that is from the corners on both sides. */
    private Stream<Sketch.Stroke> onPipe(SnappedPoint rest) {
        return rest.onto().stream().flatMap(seat -> room().runs().stream()
                .filter(run -> run.id().equals(seat.run()))
                .flatMap(run -> Stream.concat(
                        Stream.of(
                                new Sketch.Ring(rest.place().xM(), rest.place().yM(), true)),
                        Resting.alongLeg(run, seat.atM()))));
    }
}
