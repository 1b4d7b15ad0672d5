package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.catalogue.BlowerClass;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/** Edits of the planned blower. Where several are drawn they change alike; where none is drawn one is added. */
public final class BlowerEdits {
    private static final String FIRST_ID = "planned";

    private BlowerEdits() {}

    /** This machine, of the catalogue or of the room's own. */
    public static Edit choose(BlowerClass kind) {
        return planned(choosing(kind), blower -> blower.withMachine(Optional.of(kind.id())));
    }

    /** This machine wherever the room leaves the choice to the plan; what it names stays. */
    public static Edit settle(BlowerClass kind) {
        return planned(
                choosing(kind),
                blower -> blower.machine().isPresent() ? blower : blower.withMachine(Optional.of(kind.id())));
    }

    private static String choosing(BlowerClass kind) {
        return "Choose " + Words.midSentence(kind.name());
    }

    /** Whatever machine the plan recommends. */
    public static Edit letThePlanChoose() {
        return planned("Let the plan choose the blower", blower -> blower.withMachine(Optional.empty()));
    }

    /** Nothing is let out: the valves take up all pressure. */
    public static Edit shutTheBleed() {
        return planned("Shut the bleed", blower -> blower.withBleed(new Blower.Unbled()));
    }

    /** Air is let out until the pressure is just what the room needs, with the spare that is wished for. */
    public static Edit bleedAsNeeded() {
        return planned("Bleed as needed", blower -> blower.withBleed(new Blower.BledTo(OptionalDouble.empty())));
    }

    /** Air is let out until the gauge pressure at the blower, Pa, is this. */
    public static Edit bleedTo(double gaugePa) {
        return planned(
                "Set the bleed pressure", blower -> blower.withBleed(new Blower.BledTo(OptionalDouble.of(gaugePa))));
    }

    private static Edit planned(String done, UnaryOperator<Blower> change) {
        return new Edit(done, room -> room.withBlowers(changed(room, change)));
    }

    private static List<Blower> changed(Room room, UnaryOperator<Blower> change) {
        List<Blower> blowers = new ArrayList<>(room.blowers());
        if (room.blowers(Blower.Role.PLANNED).isEmpty()) {
            addIfSaid(blowers, change);
        } else {
            blowers.replaceAll(blower -> blower.role() == Blower.Role.PLANNED ? change.apply(blower) : blower);
        }
        return blowers;
    }

    /** A planned blower of which nothing is said is what the plan takes anyway: it need not be drawn. */
    private static void addIfSaid(List<Blower> blowers, UnaryOperator<Blower> change) {
        Blower silent = Blower.planned(freeId(blowers));
        Blower changed = change.apply(silent);
        if (!changed.equals(silent)) {
            blowers.add(changed);
        }
    }

    private static BlowerId freeId(List<Blower> blowers) {
        BlowerId id = new BlowerId(FIRST_ID);
        for (int number = 2; isTaken(id, blowers); number++) {
            id = new BlowerId(FIRST_ID + "-" + number);
        }
        return id;
    }

    private static boolean isTaken(BlowerId id, List<Blower> blowers) {
        return blowers.stream().anyMatch(blower -> blower.id().equals(id));
    }
}
