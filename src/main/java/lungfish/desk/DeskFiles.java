package lungfish.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.room.Room;

/** The files of one desk: that of its room, and what is kept beside it for the case of a crash. */
final class DeskFiles {
    /** What taking up again is called among the steps. */
    private static final String RECOVER = "Recover changes";

    private final Desk desk;
    private final Filing filing;
    private final Autosave autosave;
    private final Recovery recovery;
    private Filed filed;
    private Keeping keeping = Keeping.WELL;
    private long rooms;
    private int saving;

    DeskFiles(Desk desk, Filed filed) {
        this.desk = desk;
        this.filed = filed;
        Desks shared = desk.shared();
        this.filing = new Filing(shared.catalogue(), shared.hands());
        this.autosave = new Autosave(shared.autosaves(), shared.hands(), this::kept);
        this.recovery = new Recovery(desk, this);
    }

    Filed filed() {
        return filed;
    }

    Keeping keeping() {
        return keeping;
    }

    Recovery recovery() {
        return recovery;
    }

    private void kept(Keeping where) {
        if (!where.equals(keeping)) {
            keeping = where;
            desk.changed();
        }
    }

    /** Keeps what is not saved. While something is being saved nobody knows what is in the file: then all is kept. */
    void keep() {
        if (desk.isChanged() || saving > 0) {
            autosave.keep(filed.unsaved(desk.history()));
        } else {
            autosave.rest();
        }
    }

    void open(Path file) {
        ifNothingMoves(
                file,
                reading -> reading.match(
                        opened -> opened(file, opened), problems -> refuse(Filing.notOpened(file, problems))));
    }

    private boolean opened(Path file, Filing.Opened opened) {
        put("Open " + file.getFileName(), opened.room(), opened.filed(file));
        recovery.look(file);
        return true;
    }

    /** Reads a file; what came of it is used unless the room was changed meanwhile. */
    private void ifNothingMoves(Path file, Consumer<Reading<Filing.Opened>> then) {
        long asked = desk.moves();
        filing.open(file, reading -> {
            if (desk.moves() == asked) {
                then.accept(reading);
            } else {
                desk.tell(Filing.changedMeanwhile(file));
            }
        });
    }

    private boolean refuse(Trouble trouble) {
        desk.tell(trouble);
        return false;
    }

    /** Puts another room on the desk. */
    void put(String done, Room room, Filed from) {
        end();
        rooms++;
        filed = from;
        from.file().ifPresent(file -> Recent.add(file, desk.shared().preferences()));
        desk.begin(done, room);
    }

    boolean hasTaken(Leftover left) {
        return autosave.hasTaken(left.at());
    }

    /** What is given up here was asked about; what was taken from a crash and undone to the last is offered again. */
    private void end() {
        if (desk.isChanged()) {
            autosave.letGo();
        } else {
            autosave.putBack();
        }
        autosave.rest();
    }

    void close() {
        end();
        desk.shared().hands().disk().execute(autosave::settle);
    }

    /** Puts on the desk what a crash left: over its file, where that can be opened, so that it can be undone. */
    void take(Leftover left) {
        Unsaved what = left.what().orElseThrow();
        if (what.file().isEmpty()) {
            put(RECOVER, what.room(), Filed.unknown(Optional.empty()));
            took(left);
        } else if (what.file().equals(filed.file().map(Filed::whole))) {
            desk.move(desk.history().after(RECOVER, what.room()));
            took(left);
        } else {
            takeOver(what.file().get(), left, what.room());
        }
    }

    private void takeOver(Path file, Leftover left, Room room) {
        ifNothingMoves(file, reading -> {
            Filed from = reading.match(opened -> opened.filed(file), problems -> Filed.unknown(Optional.of(file)));
            put(
                    from.room().isEmpty() ? RECOVER : "Open " + file.getFileName(),
                    from.room().orElse(room),
                    from);
            desk.move(desk.history().after(RECOVER, room));
            took(left);
            recovery.look(file);
        });
    }

    /** It goes when its changes are saved or given up. On another machine its owner may still be at work. */
    private void took(Leftover left) {
        if (left.elsewhere().isEmpty()) {
            autosave.took(left.at());
        }
    }

    void save(Runnable then, Runnable changedElsewhere) {
        Path file = filed.file().orElseThrow(() -> new IllegalStateException("the room has no file yet"));
        Room room = desk.room();
        filing.save(file, filed.stamp(), asShown(room), ended(file, room, then, changedElsewhere));
    }

    void saveAs(Path file, Runnable then) {
        Room room = desk.room();
        filing.save(file, asShown(room), ended(file, room, then, () -> {}));
    }

    private Room asShown(Room room) {
        return room.withDisplayUnits(desk.units());
    }

    /** What to do when a save has ended. Another room may be on the desk by then, whose file this is not. */
    private Consumer<Filing.Saved> ended(Path file, Room room, Runnable then, Runnable changedElsewhere) {
        long mine = rooms;
        saving++;
        return saved -> {
            saving--;
            if (saved.problem().isPresent()) {
                keep();
                couldNot(file, saved.problem().get());
            } else if (saved.stamp().isEmpty()) {
                keep();
                changedElsewhere.run();
            } else {
                if (mine == rooms) {
                    saved(new Filed(Optional.of(file), saved.stamp(), Optional.of(room)));
                }
                then.run();
            }
        };
    }

    private void couldNot(Path file, Problem problem) {
        desk.tell(new Trouble(file.getFileName() + " could not be saved", List.of(problem)));
    }

    private void saved(Filed now) {
        filed = now;
        autosave.letGo();
        now.file().ifPresent(file -> Recent.add(file, desk.shared().preferences()));
        desk.changed();
    }
}
