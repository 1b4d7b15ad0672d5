package lungfish.rescue;

import java.util.ArrayList;
import java.util.List;

/** Sets of means from several slots, of which each after the first is dearer than the one before and keeps no fewer tanks. */
record Line(List<MeansSet> sets) {
    private static final Line NOTHING = new Line(List.of(MeansSet.NOTHING));

    Line {
        sets = List.copyOf(sets);
    }

    MeansSet least() {
        return sets.get(0);
    }

    MeansSet most() {
        return sets.get(sets.size() - 1);
    }

    /** All that can be chosen from these slots. */
    static List<Line> of(List<Slot> slots) {
        List<Line> lines = List.of(NOTHING);
        for (Slot slot : slots) {
            List<Line> longer = new ArrayList<>(lines);
            for (Line line : lines) {
                slot.ladders().forEach(ladder -> longer.addAll(line.with(ladder)));
            }
            lines = longer;
        }
        return lines;
    }

    /** The longer of the two goes on as a line; there is one for each step of the shorter. */
    private List<Line> with(Ladder ladder) {
        return sets.size() > ladder.rungs().size()
                ? ladder.rungs().stream()
                        .map(rung ->
                                new Line(sets.stream().map(set -> set.and(rung)).toList()))
                        .toList()
                : sets.stream()
                        .map(set -> new Line(ladder.rungs().stream()
                                .map(rung -> set.and((Means) rung))
                                .toList()))
                        .toList();
    }
}
