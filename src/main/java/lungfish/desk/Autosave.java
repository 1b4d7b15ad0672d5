package lungfish.desk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lungfish.roomfile.AtomicSave;
import org.jspecify.annotations.Nullable;

/**
 * Keeps on disk what one desk has not saved, so that a crash takes at most the last edit: before a next one is kept, the one
 * before it is there. Beside the file of the room; where that cannot be, and for a room without a file, in the program's own
 * folder. Each desk of each process has autosaves of its own name, so that none overwrites another's.
 *
 * <p>Belongs to the front, which waits for nothing but an edit before that is still being written, and for that not long.
 */
final class Autosave {
    /** A write takes some 2 ms. A disk that takes so much longer does not hold up the hand: another place is taken. */
    private static final long PATIENCE_MS = 500;

    private static final long PATIENCE_AT_THE_END_MS = 2000;

    private final Hands hands;
    private final Consumer<Keeping> told;
    private final String mark = UUID.randomUUID().toString().substring(0, 8);
    private final Berth aside;
    private final Set<Berth> used = new LinkedHashSet<>();
    private final Set<Berth> late = new LinkedHashSet<>();
    private final List<Path> taken = new ArrayList<>();
    private final AtomicLong asked = new AtomicLong();
    private @Nullable Berth beside;
    private @Nullable Unsaved kept;

    /**
     * Nothing to keep yet.
     *
     * @param folder of the program, for what cannot be beside a file; need not be there yet
     * @param told in the front, where the newest is kept
     */
    Autosave(Path folder, Hands hands, Consumer<Keeping> told) {
        this.hands = hands;
        this.told = told;
        this.aside = new Berth(folder, "", mark, hands.keeping());
    }

    /** How autosaves beside a file begin. */
    static String beginning(Path file) {
        return "." + file.getFileName() + ".";
    }

    /** Keeps this from now on. */
    void keep(Unsaved what) {
        if (kept == null) {
            awaitRest();
        }
        if (!what.equals(kept)) {
            kept = what;
            write(what);
        }
    }

    /** That nothing was to be kept counts as an edit, too: what was kept before it is gone before this one counts. */
    private void awaitRest() {
        used.stream().filter(berth -> !late.contains(berth)).forEach(berth -> berth.settlesAll(PATIENCE_MS));
    }

    /** There is nothing to keep at the moment, since all was undone. */
    void rest() {
        if (kept != null) {
            kept = null;
            used.forEach(this::isFree); // the edit before must not be overtaken: it is on disk before this one counts
            long mine = asked.incrementAndGet();
            used.forEach(berth -> berth.clear(() -> mine == asked.get()));
        }
    }

    /** What was taken from a crash is saved by now, or not wanted. */
    void letGo() {
        List<Path> gone = List.copyOf(taken);
        taken.clear();
        aside.then(() -> gone.forEach(Berth::delete));
    }

    /** An autosave that a crash left: what was in it is on the desk now. It stays until that is saved, or not wanted. */
    void took(Path leftBehind) {
        taken.add(leftBehind);
    }

    boolean hasTaken(Path leftBehind) {
        return taken.contains(leftBehind);
    }

    /** What was taken was undone, and is no longer on the desk. */
    void putBack() {
        taken.clear();
    }

    /** Waits until nothing is being written or removed, for a while. */
    void settle() {
        used.forEach(berth -> berth.settlesAll(PATIENCE_AT_THE_END_MS));
        aside.settlesAll(PATIENCE_AT_THE_END_MS);
    }

    private void write(Unsaved what) {
        int lateBefore = late.size();
        List<Berth> free = berths(what).filter(this::isFree).toList();
        long mine = asked.incrementAndGet(); // not before the one before is done: it would think that it is overtaken
        if (free.isEmpty()) {
            told.accept(new Keeping(Optional.empty(), Optional.of("the disk does not answer")));
        } else {
            used.addAll(free);
            free.get(0).then(() -> write(what, mine, free));
            if (late.size() > lateBefore) {
                free.get(0).settles(PATIENCE_MS); // the edit before is nowhere yet: this one must be before the next
            }
        }
    }

    private Stream<Berth> berths(Unsaved what) {
        return Stream.concat(what.file().map(this::beside).stream(), Stream.of(aside));
    }

    private Berth beside(Path file) {
        Path whole = Filed.whole(file);
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole);
        Berth berth = new Berth(folder, beginning(whole), mark, hands.keeping());
        if (beside == null || !beside.path().equals(berth.path())) {
            beside = berth;
        }
        return beside;
    }

    /** One that is late is left alone until it is done; then it is tried again. */
    private boolean isFree(Berth berth) {
        if (late.contains(berth)) {
            return false;
        }
        boolean isFree = berth.settles(PATIENCE_MS);
        if (!isFree) {
            late.add(berth);
            berth.whenSettled(() -> hands.front().execute(() -> isOnTimeAgain(berth)));
        }
        return isFree;
    }

    private void isOnTimeAgain(Berth berth) {
        late.remove(berth);
        if (kept != null) {
            write(kept);
        }
    }

    /** Takes the first berth that can be written; what is older in the others goes. Overtaken, it does nothing. */
    private void write(Unsaved what, long mine, List<Berth> berths) {
        byte[] bytes = AutosaveFormat.bytes(what, Instant.now(), Owner.me());
        Optional<String> trouble = Optional.empty();
        for (Berth berth : berths) {
            if (mine != asked.get()) {
                return;
            }
            try {
                save(berth.path(), bytes);
                berth.keepSafely(bytes, () -> mine == asked.get());
                tell(mine, new Keeping(Optional.of(berth.path()), trouble));
                return;
            } catch (IOException | RuntimeException e) {
                trouble = Optional.of(reason(berth.path(), e));
            }
        }
        tell(mine, new Keeping(Optional.empty(), trouble));
    }

    private void save(Path path, byte[] bytes) throws IOException {
        if (path.equals(aside.path())) {
            Files.createDirectories(path.getParent());
        }
        AtomicSave.hasty().save(path, bytes);
    }

    private void tell(long mine, Keeping where) {
        hands.front().execute(() -> {
            if (mine == asked.get()) {
                removeAllBut(where, mine);
                told.accept(where);
            }
        });
    }

    private void removeAllBut(Keeping where, long mine) {
        if (where.at().isPresent()) {
            used.stream()
                    .filter(berth -> !where.at().get().equals(berth.path()))
                    .forEach(berth -> berth.clear(() -> mine == asked.get()));
            used.removeIf(berth -> berth != beside && berth != aside);
        }
    }

    private static String reason(Path path, Exception e) {
        String folder = String.valueOf(path.getParent());
        if (e instanceof NoSuchFileException) {
            return folder + " is not there";
        }
        if (e instanceof AccessDeniedException) {
            return folder + " may not be written to";
        }
        String said = e instanceof FileSystemException file && file.getReason() != null ? file.getReason() : "" + e;
        return folder + " cannot be written to: " + said;
    }
}
