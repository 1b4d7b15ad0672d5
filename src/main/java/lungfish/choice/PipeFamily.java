package lungfish.choice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.room.Room;
import lungfish.room.Run;

/**
 * The sizes that the main of a room can be built in: those of the same standard, and so of the same material, the smallest
 * first; and which runs take part.
 *
 * <p>Every main takes the size. A riser of the same family carries all the air and takes it too; one of another material
 * (copper behind a hot blower) stays. A branch stays, unless it would be wider than the main that it leaves.
 */
record PipeFamily(Catalogue catalogue, List<PipeSize> sizes) {
    /** The family of the longest main; empty without a main, or where its size is nowhere. */
    static Optional<PipeFamily> of(Room room, Catalogue catalogue) {
        return leading(room)
                .flatMap(run -> catalogue.pipe(run.size()))
                .map(size -> new PipeFamily(catalogue, alike(size, catalogue)));
    }

    /** The longest main. */
    static Optional<Run> leading(Room room) {
        return room.runs().stream()
                .filter(run -> run.role() == Run.Role.MAIN && run.points().size() > 1)
                .max(Comparator.comparingDouble(Run::lengthM));
    }

    private static List<PipeSize> alike(PipeSize size, Catalogue catalogue) {
        return catalogue.pipes().stream()
                .filter(each -> each.standard().equals(size.standard()) && each.material() == size.material())
                .sorted(Comparator.comparingDouble(PipeSize::boreM))
                .toList();
    }

    PipeSize widest() {
        return sizes.get(sizes.size() - 1);
    }

    /** The room with its pipe in another size of the family. */
    Room in(PipeSize size, Room room) {
        return room.withRuns(room.runs().stream()
                .map(run -> takes(size, run) ? run.sized(size.id()) : run)
                .toList());
    }

    private boolean takes(PipeSize size, Run run) {
        Optional<PipeSize> own =
                sizes.stream().filter(each -> each.id().equals(run.size())).findFirst();
        return own.isPresent() && (run.role() != Run.Role.BRANCH || own.get().boreM() > size.boreM());
    }
}
