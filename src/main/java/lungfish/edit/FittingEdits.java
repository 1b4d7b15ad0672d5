package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.catalogue.FittingClass;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** What is fitted into a run: valves, unions, a gauge. They are slid by {@link Moves} and deleted by {@link Deleting}. */
public final class FittingEdits {
    private FittingEdits() {}

    /** One more fitting, at a place on a pipe; empty where there is none. */
    public static Attempt insert(Room room, Optional<Outlet.OnRun> seat, FittingClass kind) {
        return seat.map(at -> insert(room, at.run(), at.atM(), kind))
                .orElse(Refused.because("There is no pipe at that place.", "Click on a pipe; draw it first."));
    }

    /** One more fitting, at a distance along the run, m. */
    public static Attempt insert(Room room, RunId id, double atM, FittingClass kind) {
        return Find.run(room, id.text())
                .map(run -> Edit.tried(
                        room,
                        "Insert " + Words.midSentence(kind.name()) + " into " + Words.run(run),
                        before -> fitted(before, id, all -> {
                            List<Run.Fitting> more = new ArrayList<>(all);
                            more.add(new Run.Fitting(kind.id(), Metres.clean(atM), OptionalDouble.empty()));
                            return more;
                        })))
                .orElse(Refused.nothing("pipe"));
    }

    /** How far a valve in a run is open, 0 shut to 1 open; empty: unknown. */
    public static Attempt opening(Room room, RunId id, int number, FittingClass kind, OptionalDouble share) {
        double asked = share.orElse(0);
        if (!kind.valve() || !(asked >= 0 && asked <= 1)) {
            return Refused.because(
                    "Only a valve can be opened, from shut to fully open.",
                    "Choose a valve; type a share up to 100 %.");
        }
        return one(
                room,
                id,
                number,
                "Set a valve of ",
                fitting -> fitting.kind().equals(kind.id())
                        ? new Run.Fitting(fitting.kind(), fitting.atM(), share)
                        : fitting);
    }

    /** Another class in its place; a valve that becomes another valve stays as far open. */
    public static Attempt kind(Room room, RunId id, int number, FittingClass kind) {
        return one(
                room,
                id,
                number,
                "Change a fitting of ",
                fitting -> new Run.Fitting(
                        kind.id(), fitting.atM(), kind.valve() ? fitting.opening() : OptionalDouble.empty()));
    }

    /** Puts a fitting at a distance along its run, m. */
    public static Attempt place(Room room, RunId id, int number, double atM) {
        return one(
                room,
                id,
                number,
                "Move a fitting of ",
                fitting -> new Run.Fitting(fitting.kind(), atM, fitting.opening()));
    }

    private static Attempt one(Room room, RunId id, int number, String verb, UnaryOperator<Run.Fitting> change) {
        boolean isThere = Find.run(room, id.text())
                .filter(run -> number >= 0 && number < run.fittings().size())
                .isPresent();
        if (!isThere) {
            return Refused.nothing("fitting");
        }
        String of = Words.run(Find.run(room, id.text()).orElseThrow());
        return Edit.tried(
                room,
                verb + of,
                before -> fitted(before, id, all -> {
                    List<Run.Fitting> after = new ArrayList<>(all);
                    after.set(number, change.apply(all.get(number)));
                    return after;
                }));
    }

    private static Room fitted(Room room, RunId id, UnaryOperator<List<Run.Fitting>> change) {
        return room.withRuns(Each.changed(
                room.runs(), Each.where(run -> run.id().equals(id), run -> run.fitted(change.apply(run.fittings())))));
    }
}
