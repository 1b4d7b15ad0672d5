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
    private final DeskFiles files;
    private final Planned planned;
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private History history;
    private long moves;
    private @Nullable Room tried;
    private DisplayUnits units;
    private Age age = Age.OF_HEADLINES;

    Desk(Desks shared, Function<Room, Plan> planner, String done, Room room) {
        this.shared = shared;
        this.planned = new Planned(planner, shared.hands(), this::changed, this::tell);
        this.history = History.of(done, room);
        this.units = unitsFor(room);
        this.files = new DeskFiles(this, Filed.nowhere(room));
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
        return files.filed().file();
    }

    /** Whether the room is another than in its file, or than it was when it came. */
    public boolean isChanged() {
        return files.filed().isChanged(room());
    }

    /** Where changes that are not saved are kept, in case that the program is cut off. */
    public Keeping keeping() {
        return files.keeping();
    }

    /** What a crash left, and is offered here. */
    public Recovery recovery() {
        return files.recovery();
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
        shared.preferences().set(Preference.UNITS, Preference.UnitsShown.always(those));
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

    /** How often another room was made current. */
    long moves() {
        return moves;
    }

    void move(History next) {
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
        files.open(that);
    }

    /** Puts a demo room in place of the current room; it has no file. */
    public void openDemo(String name) {
        openNew("Open " + name, shared.demo(name));
    }

    /** Puts a room that is in no file in place of the current room. */
    public void openNew(String done, Room room) {
        files.put(done, room, Filed.nowhere(room));
    }

    /** Begins anew with this room. */
    void begin(String done, Room room) {
        history = History.of(done, room);
        tried = null;
        moves++;
        units = unitsFor(room);
        planned.start(room);
        changed();
    }

    private DisplayUnits unitsFor(Room room) {
        return shared.preferences().get(Preference.UNITS).of(room);
    }

    /**
     * Saves the room to its file.
     *
     * @param then run once it is safely there; not where it could not be saved
     * @param changedElsewhere run instead where another program has changed the file since it was opened or saved here;
     *     {@link #saveAs} to the same file replaces it
     * @throws IllegalStateException if it has none yet: {@link #saveAs}
     */
    public void save(Runnable then, Runnable changedElsewhere) {
        files.save(then, changedElsewhere);
    }

    /** Saves the room to a file that is its own from then on. What is done meanwhile counts as not yet saved. */
    public void saveAs(Path that, Runnable then) {
        files.saveAs(that, then);
    }

    /** The window is closed, and the keeper was asked: nothing need be kept for another time. */
    public void close() {
        files.close();
    }

    /** Whatever is not saved is kept on disk before anybody hears of it. */
    void changed() {
        files.keep();
        listeners.forEach(Listener::changed);
    }

    /** Tells the person what could not be done. */
    public void tell(Trouble trouble) {
        listeners.forEach(each -> each.troubled(trouble));
    }
}
