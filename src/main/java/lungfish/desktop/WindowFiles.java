package lungfish.desktop;

import java.nio.file.Path;
import java.util.Locale;
import lungfish.desk.Desk;
import lungfish.edit.QuickStart;
import lungfish.roomfile.RoomFiles;

/** Opens and saves for one window, and asks before anything that is not saved is lost. */
final class WindowFiles {
    /** What a room is called until the keeper calls it something. */
    static final String NEW = "New room";

    private final Desk desk;
    private final Asking asking;

    WindowFiles(Desk desk, Asking asking) {
        this.desk = desk;
        this.asking = asking;
    }

    Asking asking() {
        return asking;
    }

    void open() {
        asking.toOpen().ifPresent(this::open);
    }

    void open(Path file) {
        whenKept(() -> desk.open(file));
    }

    void openDemo(String name) {
        whenKept(() -> desk.openDemo(name));
    }

    /** An empty room in the units that are shown. */
    void startNew() {
        whenKept(() -> desk.openNew(NEW, QuickStart.emptyRoom(NEW, desk.units())));
    }

    void save(Runnable then) {
        if (desk.file().isPresent()) {
            desk.save(then, () -> savedElsewhere(then));
        } else {
            saveAs(then);
        }
    }

    /** Another program has changed the file: nothing is written over it unasked. */
    private void savedElsewhere(Runnable then) {
        Path file = desk.file().orElseThrow();
        switch (asking.changedElsewhere(String.valueOf(file.getFileName()))) {
            case REPLACE -> desk.saveAs(file, then);
            case SAVE_AS -> saveAs(then);
            case STAY -> {}
        }
    }

    void saveAs(Runnable then) {
        asking.toSave(suggested()).ifPresent(file -> desk.saveAs(file, then));
    }

    private String suggested() {
        return desk.file().map(file -> String.valueOf(file.getFileName())).orElseGet(() -> named(RoomFiles.ENDING));
    }

    /** A file's name from the room's: "Basement rainbows" becomes "basement-rainbows.room.json". */
    String named(String ending) {
        String name = desk.room().name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{Alnum}]+", "-");
        return name.replaceAll("^-|-$", "") + ending;
    }

    /** Takes up what a crash left: at once where its file is open here, for that can be undone; else in place of this room. */
    void recover() {
        if (desk.recovery().isOfThisFile()) {
            desk.recovery().take();
        } else {
            whenKept(() -> desk.recovery().take());
        }
    }

    /** Goes on when the room is saved, or need not be. */
    void whenKept(Runnable then) {
        if (!desk.isChanged()) {
            then.run();
            return;
        }
        switch (asking.unsaved(desk.room().name())) {
            case SAVE -> save(then);
            case DROP -> then.run();
            case STAY -> {}
        }
    }
}
