package lungfish.noise;

import static lungfish.reason.Assumable.LOUDEST;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import lungfish.room.Listener;
import lungfish.room.Room;

/**
 * How loud the machines are where the keeper sits: each by its own way to the ear, then added by energy. Ask it once for
 * the pumps of today and once for the planned blower.
 */
public final class Noise {
    /** Level from which a working day of 8 h can hurt, dB(A): NIOSH 98-126. */
    public static final double HEARING_DBA = 85;

    private Noise() {}

    /** The level at the room's listener, or at an assumed one beside the machines. */
    public static NoiseAnswer at(Room room, List<SoundSource> sources, Catalogue catalogue) {
        Ear ear = new Ear(room, catalogue);
        List<Heard> heard = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (SoundSource source : sources) {
            ear.hears(source)
                    .ifPresentOrElse(heard::add, () -> findings.add(Finding.of(Code.LEVEL_UNKNOWN, source.part())));
        }
        OptionalDouble dba = heard.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(ear.together(heard));
        AssumedValue bearable = catalogue.assumed(LOUDEST);
        Given loudest = Given.typedOr(room.wishes().loudestDba(), bearable.given());
        List<Assumption> assumptions = new ArrayList<>(ear.assumptions());
        if (loudest.isAssumed()) {
            assumptions.add(bearable.about(PartId.ROOM));
        }
        dba.ifPresent(level -> findings.addAll(tooLoud(level, loudest.si())));
        Optional<Why> why = dba.isPresent() ? Optional.of(why(dba.getAsDouble(), heard, ear)) : Optional.empty();
        return new NoiseAnswer(dba, at(room), heard, findings, assumptions, why);
    }

    private static String at(Room room) {
        return room.listener().map(Listener::name).orElse("an assumed listener");
    }

    private static List<Finding> tooLoud(double dba, double loudestDba) {
        List<Finding> findings = new ArrayList<>();
        if (dba > loudestDba) {
            findings.add(Finding.of(
                    Code.LOUDER_THAN_WISHED, PartId.ROOM, level("found", dba), level("allowed", loudestDba)));
        }
        if (dba >= HEARING_DBA) {
            findings.add(Finding.of(Code.HEARING, PartId.ROOM, level("found", dba), level("allowed", HEARING_DBA)));
        }
        return findings;
    }

    private static Amount level(String name, double dba) {
        return new Amount(name, dba, Dimension.SOUND_LEVEL);
    }

    private static Why why(double dba, List<Heard> heard, Ear ear) {
        return new Why(
                "level of the machines at the listener",
                dba,
                Dimension.SOUND_LEVEL,
                Why.Adding.LEVELS,
                heard.stream().map(Noise::term).toList(),
                List.of(
                        new Why.Input("mean absorption of the room", ear.absorption(), Dimension.SHARE),
                        new Why.Input(
                                "room constant, m²",
                                ear.hall().constantM2(),
                                Dimension.RATIO,
                                Origin.computed("S ᾱ/(1 − ᾱ)"))),
                "L = 10 lg Σ 10^(Lᵢ/10), Lᵢ = Lw + 10 lg(Q/(4πr²) + 4/R) − walls, Lw = Lp + 20 lg r + 8",
                "ISO 3744 for the power; direct and reverberant sound as in any textbook of room acoustics");
    }

    private static Why.Term term(Heard heard) {
        List<Amount> amounts = List.of(
                new Amount("count", heard.source().count(), Dimension.COUNT),
                new Amount("distance", heard.distanceM(), Dimension.LENGTH),
                level("power", heard.powerDba()),
                level("walls", heard.reductionDb()));
        String saying = heard.source().name()
                + ": {count} of {power} sound power together, {distance} away, {walls} taken off by walls";
        return new Why.Term(
                saying,
                amounts,
                heard.dba(),
                Origin.catalogue(heard.source().kind().id()));
    }
}
