package lungfish.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import lungfish.edit.Edit;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;
import lungfish.roomfile.RoomChange;
import org.jspecify.annotations.Nullable;

/**
 * One room on a desk: the steps that led to it, its file, its newest plan, and how the person looks at it. Belongs to the
 * front executor of its {@link Hands}: only there may it be touched. It never waits: plans and files come later, and the
 * listeners are told.
 */
public final class Desk {
    private final Desks shared;
    private final Filing filing;
    private final Planned planned;
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private History history;
    private long moves;
    private @Nullable Room tried;
    private Room filed;
    private @Nullable Path file;
    private DisplayUnits units;
    private Age age = Age.OF_HEADLINES;

    Desk(Desks shared, Function<Room, Plan> planner, String done, Room room) {
        this.shared = shared;
        this.filing = new Filing(shared.catalogue(), shared.hands());
        this.planned = new Planned(planner, shared.hands(), this::changed, this::tell);
        this.history = History.of(done, room);
        this.filed = room;
        this.units = unitsFor(room);
        planned.start(room);
    }

    public void addListener(Listener listener) {
        listeners.add(listener);
    }

    public void removeListener(Listener listener) {
        listeners.remove(listener);
    }

    /** What all windows share: catalogue, preferences. */
    public Desks shared() {
        return shared;
    }

    /** The current room. */
    public Room room() {
        return history.room();
    }

    /** What can be undone and redone. */
    public History history() {
        return history;
    }

    /** The newest plan of this room or, while {@link #isWaiting}, of one some edits ago; empty before the first. */
    public Optional<Plan> plan() {
        return planned.plan();
    }

    /** Whether {@link #plan} is that of the current room. Otherwise its figures are older, and painted so. */
    public boolean isCurrent() {
        return planned.isCurrent();
    }

    /** Whether the plan of the current room is still to come. */
    public boolean isWaiting() {
        return !isCurrent() && planTrouble().isEmpty();
    }

    /** Why the current room has no plan and will have none. */
    public Optional<Trouble> planTrouble() {
        return planned.trouble();
    }

    /** The file that the room is kept in; empty for one never saved. */
    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** Whether the room is another than in its file, or than it was when it came. */
    public boolean isChanged() {
        return !room().equals(filed);
    }

    /**
     * The units that everything is shown in. How a room is looked at, and no change of it: nothing to undo, nothing to be
     * asked on closing. The room's file remembers them when it is saved.
     */
    public DisplayUnits units() {
        return units;
    }

    /** Shows everything in these units, here and in whatever is opened from now on. */
    public void showIn(DisplayUnits those) {
        units = those;
        shared.preferences()
                .set(
                        Preference.UNITS,
                        switch (those) {
                            case METRIC -> Preference.UnitsShown.METRIC;
                            case US -> Preference.UnitsShown.US;
                        });
        changed();
    }

    /** At which age the equipment is looked at. */
    public Age age() {
        return age;
    }

    public void lookAt(Age that) {
        age = that;
        changed();
    }

    /** Does it, plans anew, and can be undone. An edit that would make a room no file may hold is refused. */
    public void apply(Edit edit) {
        Room after = edit.of(room());
        List<Problem> problems = RoomChange.problems(room(), after, shared.catalogue());
        if (problems.isEmpty()) {
            move(history.after(edit.done(), after));
        } else {
            tell(new Trouble("Not possible: " + edit.done(), problems));
        }
    }

    /**
     * Tries an edit while a gesture lasts: it is planned like the room itself, but is no step, and nothing to undo. Ends with
     * {@link #leave}, with {@link #apply}, or with any other step.
     */
    public void tryOut(Edit edit) {
        Room after = edit.of(room());
        if (!after.equals(seen())) {
            tried = after;
            planned.ask(after);
            changed();
        }
    }

    /** Ends what is tried: the room is as it was. */
    public void leave() {
        if (tried != null) {
            boolean differs = !tried.equals(room());
            tried = null;
            if (differs) {
                planned.ask(room());
            }
            changed();
        }
    }

    /** Whether something is tried that is no step yet. */
    public boolean isTrying() {
        return tried != null;
    }

    /** The room that is looked at: the current one, or what is tried on it. */
    public Room seen() {
        return tried == null ? room() : tried;
    }

    public void undo() {
        move(history.undone());
    }

    public void redo() {
        move(history.redone());
    }

    private void move(History next) {
        boolean isSeen = next.room().equals(seen());
        boolean isStep = next.at() != history.at();
        if (isStep || tried != null) {
            history = next;
            tried = null;
            moves += isStep ? 1 : 0;
            if (!isSeen) {
                planned.ask(next.room());
            }
            changed();
        }
    }

    /** Opens a file in place of the current room. A file that is wrong changes nothing: the listeners hear what is wrong. */
    public void open(Path that) {
        long asked = moves;
        filing.open(
                that,
                reading -> reading.match(
                        room -> opened(that, room, asked), problems -> tell(Filing.notOpened(that, problems))));
    }

    private boolean opened(Path that, Room room, long asked) {
        if (moves != asked) {
            return tell(Filing.changedMeanwhile(that));
        }
        Recent.add(that, shared.preferences());
        return put("Open " + that.getFileName(), room, that);
    }

    /** Puts a demo room in place of the current room; it has no file. */
    public void openDemo(String name) {
        put("Open " + name, shared.demo(name), null);
    }

    /** Puts a room that is in no file in place of the current room. */
    public void openNew(String done, Room room) {
        put(done, room, null);
    }

    private boolean put(String done, Room room, @Nullable Path from) {
        history = History.of(done, room);
        tried = null;
        moves++;
        filed = room;
        file = from;
        units = unitsFor(room);
        planned.start(room);
        changed();
        return true;
    }

    private DisplayUnits unitsFor(Room room) {
        return switch (shared.preferences().get(Preference.UNITS)) {
            case AS_FILED -> room.displayUnits();
            case METRIC -> DisplayUnits.METRIC;
            case US -> DisplayUnits.US;
        };
    }

    /**
     * Saves the room to its file.
     *
     * @param then run once it is safely there; not where it could not be saved
     * @throws IllegalStateException if it has none yet: {@link #saveAs}
     */
    public void save(Runnable then) {
        saveAs(file().orElseThrow(() -> new IllegalStateException("the room has no file yet")), then);
    }

    /** Saves the room to a file that is its own from then on. What is done meanwhile counts as not yet saved. */
    public void saveAs(Path that, Runnable then) {
        Room saved = room();
        filing.save(
                that,
                saved.withDisplayUnits(units),
                problem -> problem.ifPresentOrElse(
                        told -> tell(Trouble.of(that.getFileName() + " could not be saved", told)),
                        () -> saved(that, saved, then)));
    }

    private void saved(Path that, Room room, Runnable then) {
        filed = room;
        file = that;
        Recent.add(that, shared.preferences());
        changed();
        then.run();
    }

    private void changed() {
        listeners.forEach(Listener::changed);
    }

    private boolean tell(Trouble trouble) {
        listeners.forEach(each -> each.troubled(trouble));
        return false;
    }
}
