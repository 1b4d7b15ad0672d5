package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.edit.ContentEdits;
import lungfish.edit.FishText;
import lungfish.edit.StirrerEdits;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.PartId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** What can be said of what is in tanks: their water, who lives in it and is fed, and what stirs it without the air. */
final class ContentProperties {
    private final View view;
    private final List<TankId> ids;

    private ContentProperties(View view, List<TankId> ids) {
        this.view = view;
        this.ids = ids;
    }

    static List<Property> of(View view, List<TankId> ids) {
        ContentProperties own = new ContentProperties(view, ids);
        return Stream.of(own.water(), own.life(), own.stirring())
                .flatMap(List::stream)
                .toList();
    }

    private List<Property> water() {
        return List.of(
                new Property.Amount(
                        "Temperature",
                        Dimension.TEMPERATURE,
                        new Property.Usual("as the room", "as the room", ContentProperties::roomK),
                        said(tank -> Properties.boxed(tank.temperatureK())),
                        (room, k) -> ContentEdits.temperatureK(room, ids, k)),
                new Property.Amount(
                        "Salt in the water, by mass",
                        Dimension.SHARE,
                        Property.Usual.words("fresh water"),
                        said(tank -> Properties.boxed(tank.salinityKgPerKg())),
                        (room, share) -> ContentEdits.salinity(room, ids, share)));
    }

    /** Water is as warm as its room, said or assumed. */
    private static Property.Said<Double> roomK(Plan plan) {
        Optional<Double> said = Properties.boxed(plan.room().climate().temperatureK());
        Optional<Double> assumed = Property.Usual.assumed(Assumable.ROOM_TEMPERATURE, List.of(PartId.ROOM))
                .si()
                .apply(plan)
                .common();
        return new Property.Said<>(List.of(said.or(() -> assumed)));
    }

    private List<Property> life() {
        return List.of(
                new Property.Words(
                        "Fish, and what one weighs",
                        FishText.EXAMPLE,
                        said(tank -> Optional.of(FishText.of(tank.fish(), view.quantities()))),
                        (room, text) -> ContentEdits.fish(room, ids, text, view.quantities())),
                new Property.Amount(
                        "Dry food a day",
                        Dimension.MASS,
                        Property.Usual.words("not known"),
                        said(tank -> tank.feeding().map(Tank.Feeding::kgPerDay)),
                        (room, kg) -> ContentEdits.foodKg(room, ids, kg)),
                new Property.Amount(
                        "Protein in the food",
                        Dimension.SHARE,
                        Property.Usual.of(
                                "assumed",
                                view.desk()
                                        .shared()
                                        .catalogue()
                                        .assumed(Assumable.PROTEIN)
                                        .si()),
                        said(tank -> Properties.boxed(
                                tank.feeding().map(Tank.Feeding::protein).orElse(OptionalDouble.empty()))),
                        (room, share) -> ContentEdits.protein(room, ids, share)),
                Properties.yesOrNo(
                        "Just fed",
                        "not said",
                        said(Tank::justFed),
                        (room, fed) -> ContentEdits.justFed(room, ids, fed)),
                new Property.Amount(
                        "Lives without air for",
                        Dimension.DURATION,
                        Property.Usual.words("not known"),
                        said(tank -> Properties.boxed(tank.survivalS())),
                        (room, s) -> ContentEdits.survivalS(room, ids, s)));
    }

    /** What has a plug of its own: it may go on when the blower stops. */
    private List<Property> stirring() {
        return List.of(
                new Property.OneOf<>(
                        "Stirred without air by",
                        PropertyFields.orNothing(Stream.of(Stirrer.Kind.values())),
                        kind -> kind.map(ContentProperties::words).orElse("nothing"),
                        stirred(stirrer -> Optional.of(stirrer.kind())),
                        (room, kind) -> StirrerEdits.stir(room, ids, kind)),
                new Property.Amount(
                        "Power of that",
                        Dimension.POWER,
                        Property.Usual.words("not known"),
                        stirred(stirrer -> Properties.boxed(stirrer.powerW())),
                        (room, watts) -> StirrerEdits.powerW(room, ids, watts)),
                Properties.circuit(
                        "Circuit of that",
                        view.desk().room(),
                        stirred(Stirrer::circuit),
                        (room, circuit) -> StirrerEdits.circuit(room, ids, circuit)));
    }

    private static String words(Stirrer.Kind kind) {
        return switch (kind) {
            case HANG_ON_FILTER -> "a hang-on filter";
            case POWERHEAD -> "a powerhead";
        };
    }

    private <V> Function<Room, Property.Said<V>> said(Function<Tank, Optional<V>> says) {
        return room -> Properties.said(
                room.racks().stream().flatMap(Rack::tanks).filter(tank -> ids.contains(tank.id())), says);
    }

    /** Of each tank what its first stirrer says; nothing of a tank without one. */
    private <V> Function<Room, Property.Said<V>> stirred(Function<Stirrer, Optional<V>> says) {
        return room -> Properties.said(ids.stream(), id -> room.stirrers().stream()
                .filter(stirrer -> stirrer.tank().equals(id))
                .findFirst()
                .flatMap(says));
    }
}
