package lungfish.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a crash left, offered at one desk, one at a time. Nothing is lost until the keeper says so: what is taken can be undone,
 * and what is left stays where it is.
 */
public final class Recovery {
    private final Desk desk;
    private final DeskFiles files;
    private final List<Leftover> offered = new ArrayList<>();

    Recovery(Desk desk, DeskFiles files) {
        this.desk = desk;
        this.files = files;
    }

    /** The one to decide on now. */
    public Optional<Leftover> offered() {
        return offered.stream().findFirst();
    }

    /** Whether that is of the file that is open at this desk. */
    public boolean isOfThisFile() {
        return desk.file().isPresent()
                && offered().flatMap(Leftover::file).equals(desk.file().map(Filed::whole));
    }

    /** How many there are. */
    public int count() {
        return offered.size();
    }

    /** Looks for what was left of rooms without a file, and of those lately open; away from the caller. */
    public void look() {
        List<Path> recent = Recent.files(desk.shared().preferences());
        desk.shared().hands().atTheDisk(() -> desk.shared().rescue().anywhere(recent), this::offer);
    }

    /** The same for one file. */
    void look(Path file) {
        desk.shared().hands().atTheDisk(() -> desk.shared().rescue().about(file), this::offer);
    }

    private void offer(List<Leftover> found) {
        found.stream()
                .filter(each -> !files.hasTaken(each))
                .filter(each -> offered.stream().noneMatch(other -> other.at().equals(each.at())))
                .forEach(offered::add);
        if (!found.isEmpty()) {
            desk.changed();
        }
    }

    /** Puts it on the desk, as changes that are not saved yet. */
    public void take() {
        offered().ifPresent(those -> {
            offered.remove(those);
            files.take(those);
            desk.changed();
        });
    }

    /** Decides later: it is offered again when its file is opened, or the program started. */
    public void leave() {
        offered().ifPresent(offered::remove);
        desk.changed();
    }

    /** Throws it away. */
    public void discard() {
        offered().ifPresent(those -> desk.shared().hands().disk().execute(() -> Berth.delete(those.at())));
        leave();
    }
}
