package lungfish.siphon;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The worst way to one end that is known so far. Worse is, in this order: what runs by itself, what need be lifted less, what
 * brings more water.
 */
final class Known {
    private final Reached end;
    private final double lineM;
    private final double rimM;
    private @Nullable Way worst;
    private boolean runs;
    private double liftM = Double.POSITIVE_INFINITY;
    private double waterM3;

    Known(Reached end) {
        this.end = end;
        this.lineM = end.lineM();
        this.rimM = end.rimM();
    }

    /**
     * Looks at ways over a crest.
     *
     * @param sources with the highest line first, so that what follows one that is no worse is no worse either
     */
    void lookAt(List<Group.Source> sources, double overM) {
        double crestM = Math.max(overM, rimM);
        for (Group.Source source : sources) {
            if (source.lineM() <= lineM + Rising.LEVEL_M || isTooLow(source, crestM)) {
                return;
            }
            boolean canBeWorse = source.mostM3() > waterM3 || (!runs && crestM - source.lineM() < liftM - Way.SAME_M);
            if (canBeWorse) {
                lookAt(new Way(source.leaving(), end, crestM));
            }
        }
    }

    /** Neither by itself where something else does, nor with less lifting. */
    private boolean isTooLow(Group.Source source, double crestM) {
        double above = crestM - source.lineM();
        return runs ? above > Way.SAME_M : above > liftM + Way.SAME_M;
    }

    private void lookAt(Way way) {
        boolean thisRuns = way.start() == Way.Start.BY_ITSELF;
        if (worst == null || isWorse(way, thisRuns)) {
            worst = way;
            runs = thisRuns;
            liftM = way.liftM();
            waterM3 = way.waterM3();
        }
    }

    private boolean isWorse(Way way, boolean thisRuns) {
        if (thisRuns != runs) {
            return thisRuns;
        }
        boolean liftsAlike = runs || Math.abs(way.liftM() - liftM) <= Way.SAME_M;
        return liftsAlike ? way.waterM3() > waterM3 : way.liftM() < liftM;
    }

    Optional<Way> worst() {
        return Optional.ofNullable(worst);
    }
}
