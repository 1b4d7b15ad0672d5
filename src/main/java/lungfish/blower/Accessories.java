package lungfish.blower;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.AccessoryClass.Kind;
import lungfish.catalogue.Catalogue;
import lungfish.room.Blower;

/** What the air passes besides the machine itself: filter and silencers. */
public record Accessories(List<AccessoryClass> fitted) {
    public static final Accessories NONE = new Accessories(List.of());

    /**
     * Loss of a clogged inlet filter over its loss as in the catalogue. Common practice, no source: filters are changed at two
     * to three times their clean loss; one that was forgotten is taken at four times. Cautious: few are let go further.
     */
    public static final double CLOGGED = 4;

    public Accessories {
        fitted = List.copyOf(fitted);
    }

    /** Those that a blower of the room is drawn with. */
    public static Accessories of(Blower blower, Catalogue catalogue) {
        return new Accessories(
                Stream.of(blower.fittings().inletFilter(), blower.fittings().silencer())
                        .flatMap(Optional::stream)
                        .map(id -> catalogue
                                .accessory(id)
                                .orElseThrow(() -> new IllegalArgumentException("no accessory '" + id + "'")))
                        .toList());
    }

    /** The same with its inlet filters clogged; the silencers hold no dust. */
    public Accessories clogged() {
        return new Accessories(fitted.stream()
                .map(each -> each.kind() == Kind.INLET_FILTER ? each.losing(CLOGGED) : each)
                .toList());
    }

    /** Whether there is a filter to clog. */
    public boolean isFiltered() {
        return fitted.stream().anyMatch(each -> each.kind() == Kind.INLET_FILTER);
    }

    /** {@code Δp = k q²} before the machine, Pa s²/m⁶. */
    double inletLoss() {
        return fitted.stream()
                .filter(each -> each.kind() != Kind.OUTLET_SILENCER)
                .mapToDouble(AccessoryClass::lossFactorPaS2PerM6)
                .sum();
    }

    /** {@code Δp = k q²} behind the machine, Pa s²/m⁶. */
    double outletLoss() {
        return fitted.stream()
                .filter(each -> each.kind() == Kind.OUTLET_SILENCER)
                .mapToDouble(AccessoryClass::lossFactorPaS2PerM6)
                .sum();
    }

    /** What they take off the pressure of one machine at a flow, Pa. */
    double lossPa(double freeM3PerS) {
        return (inletLoss() + outletLoss()) * freeM3PerS * freeM3PerS;
    }

    /** Sum of their prices. */
    public double price() {
        return fitted.stream().mapToDouble(AccessoryClass::price).sum();
    }
}
