package lungfish.edit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.FittingClass;
import lungfish.room.Room;
import lungfish.room.Run;

/** Opens and shuts the valves in the pipe. */
public final class ValveEdits {
    private final Catalogue catalogue;

    public ValveEdits(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Shuts the chosen valves; where all of them are shut, opens them fully. */
    public Attempt turn(Room room, Selection chosen) {
        List<Run.Fitting> valves = room.runs().stream()
                .flatMap(
                        run -> numbers(run).filter(i -> isMeant(run, i, chosen)).mapToObj(i -> run.fittings()
                                .get(i)))
                .toList();
        boolean areShut = valves.stream().allMatch(valve -> valve.opening().orElse(1) <= 0);
        return set(room, chosen, OptionalDouble.of(areShut ? 1 : 0));
    }

    /** Sets how far the chosen valves are open, 0 shut to 1 open; empty: unknown. What is no valve stays. */
    public Attempt set(Room room, Selection chosen, OptionalDouble share) {
        double asked = share.orElse(0);
        boolean isValve = room.runs().stream().anyMatch(run -> numbers(run).anyMatch(i -> isMeant(run, i, chosen)));
        if (!isValve || !(asked >= 0 && asked <= 1)) {
            return Refused.because(
                    "Only a valve can be opened, from shut to fully open.",
                    "Choose a valve in the pipe; type a share up to 100 %.");
        }
        return Edit.tried(
                room,
                verb(share) + Words.of(room, chosen),
                before -> before.withRuns(Each.changed(before.runs(), run -> set(run, chosen, share))));
    }

    private static String verb(OptionalDouble share) {
        if (share.isEmpty()) {
            return "Forget the setting of ";
        }
        return share.getAsDouble() <= 0 ? "Shut " : share.getAsDouble() >= 1 ? "Open " : "Set ";
    }

    private Run set(Run run, Selection chosen, OptionalDouble share) {
        return run.fitted(numbers(run)
                .mapToObj(i -> isMeant(run, i, chosen)
                        ? new Run.Fitting(
                                run.fittings().get(i).kind(),
                                run.fittings().get(i).atM(),
                                share)
                        : run.fittings().get(i))
                .toList());
    }

    private boolean isMeant(Run run, int number, Selection chosen) {
        return chosen.has(Part.fitting(run.id(), number))
                && catalogue
                        .fitting(run.fittings().get(number).kind())
                        .filter(FittingClass::valve)
                        .isPresent();
    }

    private static IntStream numbers(Run run) {
        return IntStream.range(0, run.fittings().size());
    }
}
