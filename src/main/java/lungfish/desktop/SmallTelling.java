package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.FittingClass;
import lungfish.edit.Part;
import lungfish.quantity.Dimension;
import lungfish.room.Listener;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shell;

/** One line about a small thing: a fitting, a corner of a pipe, a door, an inner wall. */
final class SmallTelling {
    private static final String BETWEEN = " · ";

    private final View view;
    private final Room room;

    SmallTelling(View view) {
        this.view = view;
        this.room = view.desk().seen();
    }

    /** Empty for everything else. */
    Optional<String> of(Part part) {
        return switch (part.kind()) {
            case FITTING ->
                run(part)
                        .filter(run -> part.number() < run.fittings().size())
                        .map(run -> fitting(run, run.fittings().get(part.number())));
            case CORNER ->
                run(part).filter(run -> part.number() < run.points().size()).map(run -> corner(run, part.number()));
            case DOOR -> at(room.shell().doors(), part.number()).map(this::door);
            case WALL -> at(room.shell().walls(), part.number()).map(this::wall);
            default -> Optional.empty();
        };
    }

    /** What it is called, in a word or two. */
    Optional<String> name(Part part) {
        return switch (part.kind()) {
            case TAP, GANG_TAP -> Optional.of("Tap of " + part.id());
            case LISTENER -> room.listener().map(Listener::name);
            default -> of(part).map(told -> told.split(BETWEEN, 2)[0]);
        };
    }

    private Optional<Run> run(Part part) {
        return room.runs().stream()
                .filter(run -> run.id().equals(new RunId(part.id())))
                .findFirst();
    }

    private String fitting(Run run, Run.Fitting fitting) {
        Optional<FittingClass> kind = view.desk().shared().catalogue().fitting(fitting.kind());
        String name = kind.map(FittingClass::name).orElse(fitting.kind());
        String state = kind.filter(FittingClass::valve)
                .map(valve -> " · " + opening(fitting.opening()))
                .orElse("");
        return name + " in " + run.name() + state + " · " + length(fitting.atM()) + " from its start";
    }

    private String opening(OptionalDouble share) {
        double open = share.orElse(1);
        if (open <= 0) {
            return "shut";
        }
        return open >= 1 ? "open" : view.quantities().show(open, Dimension.SHARE) + " open";
    }

    private String corner(Run run, int number) {
        Point at = run.points().get(number);
        boolean isEnd = !run.closed() && (number == 0 || number == run.points().size() - 1);
        return (isEnd ? "End" : "Corner " + (number + 1)) + " of " + run.name() + " · " + length(at.zM())
                + " above the floor · Delete takes it out";
    }

    private String door(Shell.Door door) {
        return "Door · " + length(door.widthM()) + " wide · drag slides it along the walls";
    }

    private String wall(Shell.Wall wall) {
        return "Inner wall · " + length(Math.hypot(wall.toXM() - wall.fromXM(), wall.toYM() - wall.fromYM()));
    }

    private String length(double m) {
        return view.quantities().show(m, Dimension.LENGTH);
    }

    private static <T> Optional<T> at(List<T> all, int number) {
        return number < all.size() ? Optional.of(all.get(number)) : Optional.empty();
    }
}
