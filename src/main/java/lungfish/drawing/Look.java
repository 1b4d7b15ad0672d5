package lungfish.drawing;

import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;

/** How things are drawn for one reader: colours, type, and the units of every figure. */
public record Look(Palette palette, Type type, Quantities quantities) {
    /** Light, 100 %, without a currency. */
    public static Look light(DisplayUnits units) {
        return new Look(Palette.LIGHT, Type.NORMAL, Quantities.in(units));
    }

    public Look with(Palette other) {
        return new Look(other, type, quantities);
    }

    public Look with(Type other) {
        return new Look(palette, other, quantities);
    }

    /** So many pixels at 100 %, here. */
    double px(double atNormal) {
        return type.px(atNormal);
    }
}
