package lungfish.piping;

import lungfish.air.Valve;
import lungfish.air.ValveCurve;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.ValveClass;
import lungfish.room.Outlet;

/** Turns a valve class into the valve that the physics knows. */
public final class ValveMaker {
    private ValveMaker() {}

    /** The valve of an outlet; where the room does not say, the first of the catalogue, as in {@link DropMaker}. */
    public static Valve of(Outlet outlet, Catalogue catalogue) {
        return of(outlet.valve()
                .flatMap(valve -> catalogue.valve(valve.kind()))
                .orElseGet(() -> catalogue.valves().get(0)));
    }

    public static Valve of(ValveClass kind) {
        return new Valve(curve(kind), kind.openLossFactor(), kind.boreM());
    }

    private static ValveCurve curve(ValveClass kind) {
        return switch (kind.characteristic()) {
            case LINEAR -> ValveCurve.LINEAR;
            case EQUAL_PERCENTAGE -> ValveCurve.equalPercentage(kind.rangeability());
            case BALL -> ValveCurve.BALL;
        };
    }
}
