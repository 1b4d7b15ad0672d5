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
final class FittingTool extends Tool {
    private final View view;
    private final Gesture gesture;
    private final FittingOptions options;
    private Optional<Spot> at = Optional.empty();

    FittingTool(View view, FittingOptions options) {
        super("Fitting", 'F', "Click on a pipe; filter, silencer and bleed: on a machine");
        this.view = view;
        this.gesture = new Gesture(view);
        this.options = options;
    }

    private Room room() {
        return view.desk().room();
    }

    private Optional<SnappedPoint> rest(Spot spot) {
        return Resting.snap(view, Selection.NONE, spot.reachingPipe()).onPipe(new Point(spot.xM(), spot.yM(), 0));
    }

    @Override
    void moved(Spot spot) {
        at = Optional.of(spot);
    }

    @Override
    void left() {
        at = gesture.isGoingOn() ? at : Optional.empty();
    }

    @Override
    void pressed(Spot spot, Optional<Hit> under) {
        at = Optional.of(spot);
        gesture.tryOut(attempt(spot));
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
        boolean isFilter = one.kind() == AccessoryClass.Kind.INLET_FILTER;
        return new Blower.Fittings(
                isFilter ? Optional.of(one.id()) : fitted.inletFilter(),
                isFilter ? fitted.silencer() : Optional.of(one.id()),
                fitted.hoseM(),
                fitted.portM(),
                fitted.reliefPa());
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
    void released(Spot spot) {
        if (gesture.isGoingOn()) {
            gesture.keep();
        }
    }

    @Override
    boolean cancelled() {
        boolean was = gesture.isGoingOn();
        gesture.leave();
        return was;
    }

    @Override
    Sketch sketch() {
        return at.map(this::sketch).orElse(Sketch.NOTHING);
    }

    private Sketch sketch(Spot spot) {
        Stream<Sketch.Stroke> there = options.chosen().inPipe().isPresent()
                ? rest(spot).stream().flatMap(this::onPipe)
                : machine(spot).flatMap(blower -> blower.siting().place()).stream()
                        .map(place -> new Sketch.Spot(place.xM(), place.yM()));
        return new Sketch(there.toList(), gesture.note(spot));
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
