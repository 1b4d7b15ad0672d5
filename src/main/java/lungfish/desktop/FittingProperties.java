package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.FittingClass;
import lungfish.edit.FittingEdits;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.edit.ValveEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** What can be said of fittings in the pipe. */
final class FittingProperties {
    private final Selection chosen;
    private final Catalogue catalogue;

    private FittingProperties(Selection chosen, Catalogue catalogue) {
        this.chosen = chosen;
        this.catalogue = catalogue;
    }

    static List<Property> of(Room room, Selection chosen, Catalogue catalogue) {
        return new FittingProperties(chosen, catalogue).all(room);
    }

    private List<Property> all(Room room) {
        List<Property> all = new ArrayList<>();
        if (chosen.parts().size() == 1) {
            all.addAll(ofOne(chosen.parts().get(0)));
        }
        if (fittings(room).anyMatch(this::isValve)) {
            all.add(new Property.Amount(
                    "Open",
                    Dimension.SHARE,
                    Property.Usual.words("fully"),
                    said(fitting -> Properties.boxed(fitting.opening())),
                    (now, share) -> new ValveEdits(catalogue).set(now, chosen, share)));
        }
        return all;
    }

    private List<Property> ofOne(Part part) {
        RunId run = new RunId(part.id());
        return List.of(
                new Property.OneOf<>(
                        "Kind of fitting",
                        PropertyFields.always(FittingOptions.insertable(catalogue).stream()),
                        kind -> kind.map(FittingClass::name).orElse(""),
                        said(fitting -> catalogue.fitting(fitting.kind())),
                        (now, kind) -> FittingEdits.kind(now, run, part.number(), kind.orElseThrow())),
                new Property.Amount(
                        "Along the pipe, from its start",
                        Dimension.LENGTH,
                        Property.Usual.NONE,
                        said(fitting -> Optional.of(fitting.atM())),
                        (now, m) -> FittingEdits.place(now, run, part.number(), m.orElseGet(() -> atM(now)))));
    }

    private double atM(Room room) {
        return fittings(room).mapToDouble(Run.Fitting::atM).findFirst().orElse(0);
    }

    private boolean isValve(Run.Fitting fitting) {
        return catalogue.fitting(fitting.kind()).filter(FittingClass::valve).isPresent();
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Run.Fitting, Optional<V>> says) {
        return room -> Properties.said(fittings(room), says);
    }

    private Stream<Run.Fitting> fittings(Room room) {
        return room.runs().stream()
                .flatMap(run -> IntStream.range(0, run.fittings().size())
                        .filter(i -> chosen.has(Part.fitting(run.id(), i)))
                        .mapToObj(i -> run.fittings().get(i)));
    }
}
