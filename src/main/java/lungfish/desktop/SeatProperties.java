package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lungfish.edit.Attempt;
import lungfish.edit.MainEdits;
import lungfish.edit.Part;
import lungfish.edit.Places;
import lungfish.edit.Selection;
import lungfish.edit.TapEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** What can be said of a corner of a pipe, and of the taps of outlets. */
final class SeatProperties {
    private SeatProperties() {}

    /** One corner: its place. */
    static List<Property> ofCorner(Selection chosen) {
        return chosen.parts().size() == 1 ? corner(chosen.parts().get(0)) : List.of();
    }

    private static List<Property> corner(Part part) {
        return List.of(
                along(part, "From the left wall", Point::xM, (at, m) -> new Point(m, at.yM(), at.zM())),
                along(part, "From the upper wall", Point::yM, (at, m) -> new Point(at.xM(), m, at.zM())),
                along(part, "Height above the floor", Point::zM, (at, m) -> new Point(at.xM(), at.yM(), m)));
    }

    private static Property along(
            Part part, String label, ToDoubleFunction<Point> now, BiFunction<Point, Double, Point> moved) {
        return new Property.Amount(
                label,
                Dimension.LENGTH,
                Property.Usual.NONE,
                room -> Properties.said(Places.point(room, part).stream(), at -> Optional.of(now.applyAsDouble(at))),
                (room, si) -> Places.point(room, part)
                        .map(at -> placed(room, part, moved.apply(at, si.orElse(now.applyAsDouble(at)))))
                        .orElseThrow());
    }

    private static Attempt placed(Room room, Part part, Point place) {
        return MainEdits.placeCorner(room, new RunId(part.id()), part.number(), place);
    }

    /** Taps: on which pipe, or wherever the pipe is nearest; and one of them how far along. */
    static List<Property> ofTaps(Room room, Selection chosen) {
        List<OutletId> ids = Stream.concat(
                        chosen.ids(Part.Kind.TAP, OutletId::new).stream(),
                        chosen.ids(Part.Kind.OUTLET, OutletId::new).stream())
                .toList();
        List<Property> all = new ArrayList<>();
        all.add(pipe(room, ids));
        if (ids.size() == 1 && Places.seat(room, Part.tap(ids.get(0))).isPresent()) {
            all.add(atM(ids.get(0)));
        }
        return all;
    }

    private static Property pipe(Room room, List<OutletId> ids) {
        return new Property.OneOf<>(
                "Leaves the pipe",
                PropertyFields.orNothing(taps(room)),
                tap -> tap.map(one -> words(room, one)).orElse("where it is nearest"),
                now -> Properties.said(
                        now.seats().stream()
                                .filter(seat -> ids.contains(seat.outlet().id())),
                        seat -> seat.outlet().tap().map(SeatProperties::where)),
                (now, tap) -> tap.map(one -> hang(now, ids, one)).orElseGet(() -> TapEdits.nearest(now, ids)));
    }

    /** A pipe or a gang: without how far along. */
    private static Object where(Outlet.Tap tap) {
        return tap instanceof Outlet.OnRun onRun ? onRun.run() : tap;
    }

    private static Stream<Object> taps(Room room) {
        return Stream.concat(
                room.runs().stream().map(Run::id), room.gangs().stream().map(gang -> new Outlet.OnGang(gang.id())));
    }

    private static String words(Room room, Object where) {
        return where instanceof Outlet.OnGang onGang
                ? onGang.gang().text()
                : room.runs().stream()
                        .filter(run -> run.id().equals(where))
                        .findFirst()
                        .map(Run::name)
                        .orElse("");
    }

    private static Attempt hang(Room room, List<OutletId> ids, Object where) {
        return where instanceof Outlet.OnGang onGang
                ? TapEdits.hang(room, ids, onGang.gang())
                : TapEdits.onto(room, ids, (RunId) where);
    }

    private static Property atM(OutletId id) {
        return new Property.Amount(
                "Tap along the pipe, from its start",
                Dimension.LENGTH,
                Property.Usual.NONE,
                room -> new Property.Said<>(
                        List.of(Places.seat(room, Part.tap(id)).map(Outlet.OnRun::atM))),
                (room, si) -> Places.seat(room, Part.tap(id))
                        .map(seat ->
                                TapEdits.hang(room, List.of(id), new Outlet.OnRun(seat.run(), si.orElse(seat.atM()))))
                        .orElseThrow());
    }
}
