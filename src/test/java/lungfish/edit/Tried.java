package lungfish.edit;

import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.OwnClasses;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Tank;

/** What tests ask of attempts, and of the rooms that they make. */
final class Tried {
    static final Catalogue CATALOGUE = CatalogueFiles.load();
    static final Reader METRIC = new Reader(Quantities.in(DisplayUnits.METRIC), OwnClasses.NONE, CATALOGUE);
    static final Reader US = new Reader(Quantities.in(DisplayUnits.US), OwnClasses.NONE, CATALOGUE);

    private Tried() {}

    /** The room after an attempt that succeeds. */
    static Room after(Room room, Attempt attempt) {
        return done(attempt).of(room);
    }

    static Edit done(Attempt attempt) {
        return attempt.match(edit -> edit, refused -> {
            throw new AssertionError("refused: " + sentence(refused));
        });
    }

    /** Why an attempt was refused, in metric units. */
    static String sentence(Attempt attempt) {
        return attempt.match(
                edit -> {
                    throw new AssertionError("not refused: " + edit.done());
                },
                refused -> refused.sentence(Quantities.in(DisplayUnits.METRIC)));
    }

    static Rack rack(Room room, String id) {
        return Find.rack(room, id).orElseThrow();
    }

    static Tank tank(Room room, String id) {
        return Find.tank(room, id).orElseThrow();
    }

    static Outlet outlet(Room room, String id) {
        return Find.outlet(room, id).orElseThrow();
    }

    static Run run(Room room, String id) {
        return Find.run(room, id).orElseThrow();
    }

    static Blower blower(Room room, String id) {
        return Find.blower(room, id).orElseThrow();
    }
}
