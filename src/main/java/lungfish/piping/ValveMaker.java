package lungfish.piping;

import lungfish.air.Valve;
import lungfish.air.ValveCurve;
import lungfish.catalogue.ValveClass;

/** Turns a valve class into the valve that the physics knows. */
public final class ValveMaker {
    private ValveMaker() {}

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
