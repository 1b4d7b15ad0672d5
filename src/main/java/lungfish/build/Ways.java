package lungfish.build;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeJoints;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.ThreadClass;
import lungfish.quantity.DisplayUnits;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Room;
import lungfish.room.Run;

/** How this keeper builds: what is said of it, and what is taken where nothing is said. */
record Ways(Room room, Catalogue catalogue) {
    /** Tubing with a wider bore takes the thread of the next size: common practice, no source. */
    private static final double WIDE_BORE_M = 0.0061;

    double kerfM() {
        return room.building().kerfM().orElse(catalogue.assumed(Assumable.KERF).si());
    }

    double spareShare() {
        return room.building()
                .spareShare()
                .orElse(catalogue.assumed(Assumable.SPARE_PARTS).si());
    }

    /** The length in which a pipe is bought. */
    double stockM(String size) {
        return room.building().stockM().orElseGet(() -> joints(size).stockM());
    }

    /** The thread of the taps: as said, else 1/8 of the system that the room is shown in. */
    ThreadClass thread() {
        String usual = room.displayUnits() == DisplayUnits.US ? "npt-1-8" : "g-1-8";
        return room.building()
                .thread()
                .flatMap(catalogue.building()::thread)
                .or(() -> catalogue.building().thread(usual))
                .orElseThrow(() -> new IllegalStateException("no thread '" + usual + "'"));
    }

    /** The thread of a tap for tubing of this bore: that of the taps, or a quarter where the bore is too wide for an eighth. */
    ThreadClass thread(double boreM) {
        ThreadClass usual = thread();
        return boreM <= WIDE_BORE_M
                ? usual
                : catalogue
                        .building()
                        .thread(usual.id().replace("-1-8", "-1-4"))
                        .orElse(usual);
    }

    PipeSize pipe(String size) {
        return catalogue.pipe(size).orElseThrow(() -> new IllegalArgumentException("no pipe size '" + size + "'"));
    }

    PipeJoints joints(String size) {
        return catalogue
                .building()
                .joints(size)
                .orElseThrow(() -> new IllegalArgumentException("no joints of pipe size '" + size + "'"));
    }

    PipeJoints joints(Run run) {
        return joints(run.size());
    }

    /** The take-off of a class of fitting on a pipe. */
    double takeOffM(String fitting, String size) {
        return catalogue.fitting(fitting).map(joints(size)::takeOffM).orElse(0.0);
    }

    List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>();
        assume(all, Assumable.KERF, room.building().kerfM());
        assume(all, Assumable.SPARE_PARTS, room.building().spareShare());
        return all;
    }

    private void assume(List<Assumption> all, Assumable key, OptionalDouble said) {
        AssumedValue usual = catalogue.assumed(key);
        if (said.isEmpty()) {
            all.add(new Assumption(key, PartId.ROOM, usual.what(), usual.si(), usual.dimension(), usual.source()));
        }
    }
}
