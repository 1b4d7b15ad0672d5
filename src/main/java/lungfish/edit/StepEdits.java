package lungfish.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Step;

/** Says when planned racks come. Racks of one step are kept under one name. */
public final class StepEdits {
    private StepEdits() {}

    /** They come with that step, and take its name where it has one; empty: with the next, which is the first. */
    public static Attempt come(Room room, Collection<RackId> ids, Optional<Integer> step) {
        List<Rack> racks = Find.racks(room, ids);
        if (racks.isEmpty()) {
            return Refused.nothing("rack");
        }
        int number = step.orElse(1);
        if (number < 1 || number > Step.LAST) {
            return Refused.because("There are " + Step.LAST + " steps at most.", "Take one of them.");
        }
        OptionalInt said = step.stream().mapToInt(Integer::intValue).findFirst();
        Optional<String> there = name(room, rack -> isOf(rack, number) && !ids.contains(rack.id()));
        return Edit.tried(
                room,
                "Plan a step for " + Words.racks(racks),
                before -> Each.rack(
                        before,
                        Each.where(
                                rack -> ids.contains(rack.id()),
                                rack -> rack.coming(new Step(said, there.or(() -> own(room, ids, rack)))))));
    }

    /** What a rack calls its step goes with it only where no other rack stays behind in that step. */
    private static Optional<String> own(Room room, Collection<RackId> ids, Rack rack) {
        boolean isShared =
                room.racks().stream().anyMatch(other -> isOf(other, rack.step().number()) && !ids.contains(other.id()));
        return isShared ? Optional.empty() : rack.step().name();
    }

    /** The steps of these racks are called so, by all racks of them; empty: not called anything. */
    public static Attempt name(Room room, Collection<RackId> ids, Optional<String> name) {
        List<Rack> racks = Find.racks(room, ids);
        Optional<Refused> trouble = name.flatMap(Names::trouble);
        if (racks.isEmpty() || trouble.isPresent()) {
            return trouble.orElseGet(() -> Refused.nothing("rack"));
        }
        Set<Integer> steps = racks.stream().map(rack -> rack.step().number()).collect(Collectors.toSet());
        Predicate<Rack> meant = rack -> ids.contains(rack.id())
                || (rack.isPlanned() && steps.contains(rack.step().number()));
        return Edit.tried(
                room,
                "Name the step of " + Words.racks(racks),
                before -> Each.rack(
                        before,
                        Each.where(meant, rack -> rack.coming(rack.step().named(name)))));
    }

    private static boolean isOf(Rack rack, int number) {
        return rack.isPlanned() && rack.step().number() == number;
    }

    private static Optional<String> name(Room room, Predicate<Rack> of) {
        return room.racks().stream()
                .filter(of)
                .flatMap(rack -> rack.step().name().stream())
                .findFirst();
    }
}
