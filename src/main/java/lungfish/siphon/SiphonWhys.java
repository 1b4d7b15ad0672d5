package lungfish.siphon;

import java.util.List;
import java.util.Optional;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import lungfish.reason.Why.Term;

/** Explains how far water must be lifted on the worst way. */
public final class SiphonWhys {
    private SiphonWhys() {}

    /** Of the worst way; empty where there is none. */
    public static Optional<Why> of(Siphons siphons) {
        return siphons.ways().stream().findFirst().map(way -> of(way, siphons.path(way)));
    }

    private static Why of(Way way, WaterPath path) {
        double highest = way.from().lineM() + way.liftM();
        boolean isOwnRim = highest > path.crest().zM() + Way.SAME_M;
        Term top = new Term(
                isOwnRim
                        ? "the rim of its own tank, the highest place on the way"
                        : "the highest place on the way, at {x} along the room and {y} across",
                isOwnRim
                        ? List.of()
                        : List.of(
                                along("x", path.crest().xM()),
                                along("y", path.crest().yM())),
                highest,
                Origin.drawn(""));
        Term line = new Term(
                "water line of " + way.from().outlet().tank().name() + " above the floor",
                -way.from().lineM(),
                Origin.drawn(""));
        return new Why(
                "lift before water siphons",
                way.liftM(),
                Dimension.LENGTH,
                Why.Adding.SUM,
                List.of(top, line),
                List.of(),
                "h = z(highest) − z(line); behind its own rim, water runs by itself where no place is higher than its line",
                "hydrostatics of communicating vessels; the air in the way is taken to have gone");
    }

    private static Amount along(String name, double metres) {
        return new Amount(name, metres, Dimension.LENGTH);
    }
}
