package lungfish.network;

import java.util.Locale;

/** The sentences of a refusal, each naming its part. */
final class Reasons {
    private Reasons() {}

    static Refused noSource(Drop drop) {
        String text = "no source reaches drop '%s' at node '%s': join its piece of the network to one"
                .formatted(drop.id(), drop.node());
        return new Refused(Refused.Why.NO_SOURCE, text, drop.id());
    }

    static Refused noTarget(Network network) {
        String part = network.drops().isEmpty() ? "" : network.drops().get(0).id();
        String text = "no drop has a target, so there is nothing to tune";
        return new Refused(Refused.Why.NO_TARGET, text, part);
    }

    static Refused twoPressures(Source first, Source second) {
        String text = "sources '%s' and '%s' hold different pressures at nodes that are one ('%s' and '%s')"
                .formatted(first.id(), second.id(), first.node(), second.node());
        return new Refused(Refused.Why.TWO_PRESSURES, text, second.id());
    }

    static Refused noResistance(Drop drop) {
        String text = "drop '%s' resists no flow at all: give it a valve, an airline or a device".formatted(drop.id());
        return new Refused(Refused.Why.NO_RESISTANCE, text, drop.id());
    }

    static Refused noOutlet(Source source) {
        String text = "blower '%s' has no open drop to feed, and its curve never comes down to zero flow"
                .formatted(source.id());
        return new Refused(Refused.Why.NO_OUTLET, text, source.id());
    }

    static Refused beyondModel(Drop drop) {
        String text = "drop '%s' would need more than %.0f MPa to take its target: a bore on its way is far too narrow"
                .formatted(drop.id(), TunedSolve.MOST_PA / 1e6);
        return new Refused(Refused.Why.BEYOND_MODEL, text, drop.id());
    }

    static Refused beyondModel(Source source) {
        String text = "source '%s' would come to more than %.0f MPa: its curve never comes down to zero flow"
                .formatted(source.id(), TunedSolve.MOST_PA / 1e6);
        return new Refused(Refused.Why.BEYOND_MODEL, text, source.id());
    }

    static Refused cap(int steps, String partId) {
        String text =
                "iteration cap: after %d steps the laws are not met; the worst is pipe '%s'".formatted(steps, partId);
        return new Refused(Refused.Why.ITERATION_CAP, text, partId);
    }

    /** A source that gives too little, in litres a minute and pascals. */
    static String tooWeak(Source source, Drop index, double gaugePa, double givesM3PerS, double askedM3PerS) {
        double litresPerMinute = 60_000.0;
        return String.format(
                Locale.ROOT,
                "source '%s' gives %.1f L/min at the %.1f Pa that drop '%s' needs; %.1f L/min is asked of it",
                source.id(),
                givesM3PerS * litresPerMinute,
                gaugePa,
                index.id(),
                askedM3PerS * litresPerMinute);
    }

    /** A fixed pressure below what is needed. */
    static String tooLow(Source source, Drop index, double needsPa, double holdsPa) {
        return String.format(
                Locale.ROOT,
                "source '%s' holds %.1f Pa; drop '%s' needs %.1f Pa there",
                source.id(),
                holdsPa,
                index.id(),
                needsPa);
    }
}
