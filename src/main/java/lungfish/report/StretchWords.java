package lungfish.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import lungfish.measured.LeakPlace;
import lungfish.piping.Stretch;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** Where in the pipe something is, in words. */
record StretchWords(Quantities quantities, Names names) {
    /** Ends closer than this are one. */
    private static final double SAME_M = 1e-6;

    /** "6.2 m of pipe: Loop under the ceiling from 6.2 m to 12.4 m". */
    String says(LeakPlace place) {
        return quantities.show(place.lengthM(), Dimension.LENGTH) + " of pipe: "
                + joined(place.stretches()).stream().map(this::says).collect(Collectors.joining(", "));
    }

    private String says(Stretch stretch) {
        return names.of(stretch.run().part()) + " from " + quantities.show(stretch.fromM(), Dimension.LENGTH) + " to "
                + quantities.show(stretch.toM(), Dimension.LENGTH);
    }

    /** Neighbours along a run made one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        List<Stretch> sorted = new ArrayList<>(stretches);
        sorted.sort(
                Comparator.comparing((Stretch stretch) -> stretch.run().text()).thenComparing(Stretch::fromM));
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : sorted) {
            int last = joined.size() - 1;
            if (last >= 0
                    && joined.get(last).run().equals(next.run())
                    && next.fromM() <= joined.get(last).toM() + SAME_M) {
                Stretch before = joined.get(last);
                double to = Math.max(before.toM(), next.toM());
                joined.set(last, new Stretch(before.pipe(), before.run(), before.fromM(), to));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }
}
