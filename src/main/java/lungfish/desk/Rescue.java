package lungfish.desk;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.json.JsonReader;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.json.WholeFile;
import lungfish.room.Room;
import lungfish.roomfile.RoomFiles;

/** Finds the autosaves of programs that run no more. */
final class Rescue {
    private static final Comparator<Leftover> NEWEST_FIRST = Comparator.comparing(
                    (Leftover each) -> each.time().orElse(Instant.MIN))
            .reversed();

    private final Catalogue catalogue;
    private final Path folder;

    /**
     * Looks only when asked.
     *
     * @param folder of the program's own autosaves
     */
    Rescue(Catalogue catalogue, Path folder) {
        this.catalogue = catalogue;
        this.folder = folder;
    }

    /** What was left of changes to a file, the newest first. */
    List<Leftover> about(Path file) {
        Path whole = Filed.whole(file);
        return left(Stream.concat(
                beside(whole),
                own().filter(each -> each.file().filter(whole::equals).isPresent())));
    }

    /** What was left of rooms in no file, and of changes to these files, the newest first. */
    List<Leftover> anywhere(List<Path> files) {
        return left(Stream.concat(own(), files.stream().map(Filed::whole).flatMap(this::beside)));
    }

    private List<Leftover> left(Stream<Leftover> found) {
        Map<String, List<Leftover>> byDesk = new LinkedHashMap<>();
        found.sorted(NEWEST_FIRST)
                .forEach(each -> byDesk.computeIfAbsent(Berth.markOf(each.at()), mark -> new ArrayList<>())
                        .add(each));
        return byDesk.values().stream().flatMap(each -> left(each).stream()).toList();
    }

    /** One desk leaves up to four: the newest counts, and none of a desk that is at work. What was saved to the last goes. */
    private Optional<Leftover> left(List<Leftover> ofOneDesk) {
        Leftover newest = ofOneDesk.get(0);
        boolean isLiving = newest.owner().filter(Owner::isLiving).isPresent();
        boolean isSaved = newest.what().filter(this::isSaved).isPresent();
        boolean isMine = newest.elsewhere().isEmpty() && !isLiving;
        ofOneDesk.stream()
                .filter(each -> isMine && newest.what().isPresent())
                .skip(isSaved ? 0 : 1)
                .forEach(each -> Berth.delete(each.at()));
        return isLiving || isSaved ? Optional.empty() : Optional.of(newest);
    }

    private boolean isSaved(Unsaved what) {
        Optional<Room> filed = what.file().filter(Files::exists).flatMap(file -> RoomFiles.open(file, catalogue)
                .value());
        return filed.equals(Optional.of(what.room()));
    }

    private Stream<Leftover> beside(Path file) {
        Path parent = file.getParent();
        return parent == null
                ? Stream.empty()
                : in(parent, Autosave.beginning(file)).map(this::read);
    }

    private Stream<Leftover> own() {
        return in(folder, "").map(this::read);
    }

    private static Stream<Path> in(Path folder, String beginning) {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, path -> {
            String name = String.valueOf(path.getFileName());
            return name.startsWith(beginning) && name.endsWith(Berth.ENDING);
        })) {
            all.forEach(found::add);
        } catch (IOException | java.nio.file.DirectoryIteratorException e) {
            return Stream.empty(); // no such folder, or none that may be read: nothing is left in it
        }
        return found.stream();
    }

    private Leftover read(Path at) {
        try {
            return new Leftover(at, AutosaveFormat.read(WholeFile.read(at, JsonReader.MOST_BYTES), catalogue));
        } catch (IOException e) {
            return new Leftover(
                    at,
                    Reading.refused(
                            List.of(new Problem("", "it cannot be read: " + e.getMessage(), "a file that can be"))));
        }
    }
}
