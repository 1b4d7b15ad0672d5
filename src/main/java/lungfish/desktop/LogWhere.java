package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** Where the gauge is that was read: at the blower, where the drawing shows one, or anywhere along a pipe. */
final class LogWhere {
    /** The class of a gauge that is drawn into a pipe. */
    private static final String GAUGE = "gauge";

    private final transient View view;
    private final Choice<Place> place = new Choice<>("Where the gauge is");
    private final QuantityField along;
    private OptionalDouble alongM = OptionalDouble.empty();

    /**
     * A place that can be chosen.
     *
     * @param run empty: at the blower
     * @param atM empty: it is typed
     */
    private record Place(Optional<RunId> run, OptionalDouble atM) {
        private static final Place BLOWER = new Place(Optional.empty(), OptionalDouble.empty());

        boolean isTyped() {
            return run.isPresent() && atM.isEmpty();
        }
    }

    LogWhere(View view, Runnable changed) {
        this.view = view;
        this.along = new QuantityField(view, Dimension.LENGTH, () -> alongM, typed -> alongM = typed, told -> {});
        along.setName("log-along");
        along.getAccessibleContext().setAccessibleName("From the start of the pipe");
        place.addActionListener(event -> changed.run());
    }

    /** Offers what is in the room now. */
    void tell() {
        Room room = view.desk().room();
        List<Place> places = new ArrayList<>(List.of(Place.BLOWER));
        for (Run run : room.runs()) {
            run.fittings().stream()
                    .filter(fitting -> fitting.kind().equals(GAUGE))
                    .map(fitting -> new Place(Optional.of(run.id()), OptionalDouble.of(fitting.atM())))
                    .forEach(places::add);
        }
        room.runs().forEach(run -> places.add(new Place(Optional.of(run.id()), OptionalDouble.empty())));
        place.offer(places, this::words, Place.BLOWER::equals);
    }

    private String words(Place that) {
        if (that.run().isEmpty()) {
            return "At the blower";
        }
        String pipe = view.names().of(that.run().get().part());
        return that.atM().isPresent()
                ? "Gauge on " + pipe + ", " + view.quantities().show(that.atM().getAsDouble(), Dimension.LENGTH)
                : "Elsewhere on " + pipe;
    }

    private Place chosen() {
        return place.chosen().orElse(Place.BLOWER);
    }

    Choice<?> field() {
        return place;
    }

    /** How far along the pipe, where that is not known. */
    QuantityField along() {
        return along;
    }

    /** Whether it is typed how far. */
    boolean isTyped() {
        return chosen().isTyped();
    }

    /** Takes what is still being typed. Whether it could be understood, where it is asked for. */
    boolean take() {
        return !isTyped() || along.take();
    }

    /** Whether the place is said. */
    boolean isWhole() {
        return !isTyped() || alongM.isPresent();
    }

    /** Where it is; empty: at the blower. */
    Optional<Outlet.OnRun> at() {
        return chosen().run().map(run -> new Outlet.OnRun(run, chosen().atM().orElseGet(() -> alongM.orElse(0))));
    }
}
