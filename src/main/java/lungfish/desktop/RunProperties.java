package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.edit.MainEdits;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** What can be said of runs of pipe. */
final class RunProperties {
    private final List<RunId> ids;
    private final Catalogue catalogue;

    private RunProperties(List<RunId> ids, Catalogue catalogue) {
        this.ids = ids;
        this.catalogue = catalogue;
    }

    static List<Property> of(Selection chosen, Catalogue catalogue) {
        return new RunProperties(chosen.ids(Part.Kind.RUN, RunId::new), catalogue).all();
    }

    private List<Property> all() {
        List<Property> all = new ArrayList<>();
        if (ids.size() == 1) {
            all.add(new Property.Words(
                    "Name",
                    said(run -> Optional.of(run.name())),
                    (room, name) -> MainEdits.rename(room, ids.get(0), name)));
            all.add(new Property.OneOf<>(
                    "Shape",
                    PropertyFields.always(Stream.of(true, false)),
                    closed -> closed.equals(Optional.of(true)) ? "closed loop" : "open",
                    said(run -> Optional.of(run.closed())),
                    (room, closed) -> closed.equals(Optional.of(true))
                            ? MainEdits.close(room, ids.get(0))
                            : MainEdits.open(room, ids.get(0))));
        }
        all.add(new Property.OneOf<>(
                "Size",
                PropertyFields.always(catalogue.pipes().stream()),
                size -> size.map(PipeSize::name).orElse(""),
                said(run -> catalogue.pipe(run.size())),
                (room, size) -> MainEdits.size(room, ids, size.orElseThrow())));
        all.add(new Property.OneOf<>(
                "Job",
                PropertyFields.always(Stream.of(Run.Role.values())),
                role -> role.map(RunProperties::words).orElse(""),
                said(run -> Optional.of(run.role())),
                (room, role) -> MainEdits.role(room, ids, role.orElseThrow())));
        all.add(new Property.Amount(
                "Temperature of the place it passes",
                Dimension.TEMPERATURE,
                Property.Usual.words("as the room"),
                said(run -> Properties.boxed(run.surroundingsK())),
                (room, k) -> MainEdits.surroundingsK(room, ids, k)));
        all.add(new Property.Amount(
                "Height above the floor",
                Dimension.LENGTH,
                Property.Usual.words("rises"),
                said(RunProperties::levelM),
                (room, m) -> MainEdits.level(room, ids, m.orElseGet(() -> runs(room)
                        .findFirst()
                        .map(run -> run.points().get(0).zM())
                        .orElseThrow()))));
        return all;
    }

    private static String words(Run.Role role) {
        return switch (role) {
            case MAIN -> "main";
            case BRANCH -> "branch";
            case RISER -> "riser";
        };
    }

    /** Of a level run. */
    private static Optional<Double> levelM(Run run) {
        double z = run.points().get(0).zM();
        return run.points().stream().allMatch(point -> point.zM() == z) ? Optional.of(z) : Optional.empty();
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Run, Optional<V>> says) {
        return room -> Properties.said(runs(room), says);
    }

    private Stream<Run> runs(Room room) {
        return room.runs().stream().filter(run -> ids.contains(run.id()));
    }
}
