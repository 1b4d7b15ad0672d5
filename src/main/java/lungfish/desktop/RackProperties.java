package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.edit.Attempt;
import lungfish.edit.Part;
import lungfish.edit.RackEdits;
import lungfish.edit.Selection;
import lungfish.edit.StepEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Step;

/** What can be said of racks. */
final class RackProperties {
    private final List<RackId> ids;

    private RackProperties(List<RackId> ids) {
        this.ids = ids;
    }

    static List<Property> of(Selection chosen) {
        return new RackProperties(chosen.ids(Part.Kind.RACK, RackId::new)).all();
    }

    private List<Property> all() {
        List<Property> all = new ArrayList<>();
        if (ids.size() == 1) {
            all.addAll(ofOne(ids.get(0)));
        }
        all.add(new Property.OneOf<>(
                "Stage",
                PropertyFields.always(Stream.of(Rack.Stage.values())),
                stage -> stage.equals(Optional.of(Rack.Stage.PLANNED)) ? "planned" : "in place",
                said(rack -> Optional.of(rack.stage())),
                (room, stage) -> stage.equals(Optional.of(Rack.Stage.PLANNED))
                        ? RackEdits.markPlanned(room, ids)
                        : RackEdits.markInPlace(room, ids)));
        all.add(new Property.OneOf<>(
                "Step, while planned",
                PropertyFields.orNothing(IntStream.rangeClosed(1, Step.LAST).boxed()),
                step -> step.map(number -> "step " + number).orElse("the next, step 1"),
                said(rack -> rack.step().said().stream().boxed().findFirst()),
                (room, step) -> StepEdits.come(room, ids, step)));
        all.add(new Property.Words(
                "Name of that step",
                said(rack -> rack.step().name()),
                (room, name) -> StepEdits.name(room, ids, Optional.of(name).filter(said -> !said.isEmpty()))));
        all.add(new Property.Amount(
                "Empty weight",
                Dimension.MASS,
                Property.Usual.words("not known"),
                said(rack -> Properties.boxed(rack.ownMassKg())),
                (room, kg) -> RackEdits.weigh(room, ids, kg)));
        return all;
    }

    private List<Property> ofOne(RackId id) {
        return List.of(
                new Property.Words(
                        "Name",
                        said(rack -> Optional.of(rack.name())),
                        (room, name) -> RackEdits.rename(room, id, name)),
                length("From the left wall", Rack::xM, (rack, m) -> room -> RackEdits.place(room, id, m, rack.yM())),
                length("From the upper wall", Rack::yM, (rack, m) -> room -> RackEdits.place(room, id, rack.xM(), m)),
                length(
                        "Along its front",
                        Rack::widthM,
                        (rack, m) -> room -> RackEdits.resize(room, id, m, rack.depthM())),
                length(
                        "From front to back",
                        Rack::depthM,
                        (rack, m) -> room -> RackEdits.resize(room, id, rack.widthM(), m)));
    }

    private Property length(
            String label, ToDoubleFunction<Rack> side, BiFunction<Rack, Double, Function<Room, Attempt>> say) {
        return new Property.Amount(
                label,
                Dimension.LENGTH,
                Property.Usual.NONE,
                said(rack -> Optional.of(side.applyAsDouble(rack))),
                (room, si) -> racks(room)
                        .findFirst()
                        .map(rack -> say.apply(rack, si.orElse(side.applyAsDouble(rack)))
                                .apply(room))
                        .orElseThrow());
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Rack, Optional<V>> says) {
        return room -> Properties.said(racks(room), says);
    }

    private Stream<Rack> racks(Room room) {
        return room.racks().stream().filter(rack -> ids.contains(rack.id()));
    }
}
