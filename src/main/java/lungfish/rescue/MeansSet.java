package lungfish.rescue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lungfish.edit.Attempt;
import lungfish.edit.RescueEdits;
import lungfish.room.Room;

/** Means that are taken together; with none of them it is the room as it is. */
public record MeansSet(List<Means> means) {
    public static final MeansSet NOTHING = new MeansSet(List.of());

    /** Of two at one price, that of fewer things. */
    static final Comparator<MeansSet> CHEAPEST_FIRST =
            Comparator.comparingLong(MeansSet::cents).thenComparingInt(MeansSet::things);

    private static final double CENTS = 100;

    public MeansSet {
        means = List.copyOf(means);
    }

    static MeansSet of(Means... means) {
        return new MeansSet(List.of(means));
    }

    /** What it costs, in units of money. */
    public double price() {
        return means.stream().mapToDouble(Means::price).sum();
    }

    /** How many things have to be bought or put up. */
    public int things() {
        return means.stream().mapToInt(Means::things).sum();
    }

    /** The room with all of it. */
    public Room in(Room room) {
        Room with = room;
        for (Means each : means) {
            with = each.in(with);
        }
        return with;
    }

    /**
     * It is put into the room, as one step.
     *
     * @param done its words, fit to follow "Undo"
     */
    public Attempt added(Room room, String done) {
        return RescueEdits.become(room, done, in(room));
    }

    /** Prices of single means in cents, so that a sum does not depend on its order. */
    long cents() {
        return means.stream()
                .mapToLong(each -> Math.round(CENTS * each.price()))
                .sum();
    }

    MeansSet and(MeansSet other) {
        List<Means> both = new ArrayList<>(means);
        both.addAll(other.means);
        return new MeansSet(both);
    }

    MeansSet and(Means other) {
        return and(of(other));
    }

    boolean isCheaperThan(MeansSet other) {
        return CHEAPEST_FIRST.compare(this, other) < 0;
    }
}
