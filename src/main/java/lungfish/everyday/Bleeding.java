package lungfish.everyday;

import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lungfish.blower.Wear;
import lungfish.network.AsSet;
import lungfish.sizing.Fleet;

/** What the bleed can do about a disturbance, no other valve touched. */
final class Bleeding {
    private final Altered altered;
    private final Fleet after;
    private final int outlets;
    private final IntPredicate other;
    private final double bledM3PerS;

    /**
     * The bleed of a network.
     *
     * @param after the machines once it has happened
     * @param outlets how many drops, the first, are outlets
     * @param other whether it does not happen to an outlet
     */
    Bleeding(Altered altered, Fleet after, int outlets, IntPredicate other) {
        this.altered = altered;
        this.after = after;
        this.outlets = outlets;
        this.other = other;
        this.bledM3PerS = Altered.bledM3PerS(altered.before(), outlets);
    }

    /** Empty where the bleed stands right, and where there is none to shut. */
    Optional<Bleed> bleed() {
        return altered.held(outlets)
                .flatMap(held -> isEnough(held) ? Optional.of(holding(held)) : shut())
                .filter(bleed -> Math.abs(bleed.moreM3PerS()) > Bleed.NONE_M3_PER_S);
    }

    /** What each blower then gives at its old pressure beyond what its outlets take. */
    private double left(int place, AsSet held) {
        return after.freeAt(place, altered.before().source(place).gaugePa(), Wear.TIRED)
                - held.source(place).freeM3PerS();
    }

    private boolean isEnough(AsSet held) {
        return IntStream.range(0, after.placed().size()).allMatch(i -> left(i, held) > -Bleed.NONE_M3_PER_S);
    }

    private Bleed holding(AsSet held) {
        double bled = IntStream.range(0, after.placed().size())
                .mapToDouble(i -> Math.max(0, left(i, held)))
                .sum();
        return new Bleed(Altered.highestPa(held), bled, bled - bledM3PerS, rest(held), true);
    }

    private Optional<Bleed> shut() {
        return altered.unbled(outlets)
                .map(shut -> new Bleed(Altered.highestPa(shut), 0, -bledM3PerS, rest(shut), false));
    }

    private double rest(AsSet then) {
        return IntStream.range(0, outlets)
                .filter(other)
                .mapToDouble(i -> Moved.share(
                        altered.before().drop(i).freeM3PerS(), then.drop(i).freeM3PerS()))
                .map(Math::abs)
                .max()
                .orElse(0);
    }
}
