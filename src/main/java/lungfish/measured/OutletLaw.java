package lungfish.measured;

import lungfish.air.Valve;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.network.Conditions;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Drops;

/**
 * What an outlet needs at its tap for a flow, today, when its valve was set by the jar: the valve then took whatever water, device,
 * check valve and airline left of the tap's pressure, and takes it still, by the square of the flow: {@code p1² − p2² ∝ ṁ²} as
 * {@link Valve#kTaking}. So what nobody knows of depth and device hardly shifts the outlet, it only parts that
 * pressure otherwise.
 */
final class OutletLaw {
    private final Conditions conditions;
    private final Drop drop;
    private final Resistance clean;
    private final Resistance due;
    private final double setFouling;
    private final double fouling;
    private final double flow;
    private final double setTapPa;

    /**
     * How far an outlet is from what is said of it; all 0: not at all.
     *
     * @param flow natural logarithm, of the flow at which its valve was set
     * @param depthM deeper by so much
     * @param device natural logarithm, of what its device takes
     * @param fouling natural logarithm, of what fouling has added since it was clean
     * @param tapPa of the tap's pressure when its valve was set
     * @param clogPaSPerM3 what a clog adds, by the flow
     */
    record Off(double flow, double depthM, double device, double fouling, double tapPa, double clogPaSPerM3) {
        static final Off NONE = new Off(0, 0, 0, 0, 0, 0);

        Off clogged(double paSPerM3) {
            return new Off(flow, depthM, device, fouling, tapPa, paSPerM3);
        }
    }

    /**
     * The law of one outlet.
     *
     * @param drop clean
     * @param setFouling how far on the way from clean to due it was when its valve was set
     * @param fouling how far it is now
     * @param flow free air at which its valve was set, m³/s
     * @param setTapPa gauge at its tap then
     */
    OutletLaw(
            Conditions conditions,
            Drop drop,
            Resistance clean,
            Resistance due,
            double setFouling,
            double fouling,
            double flow,
            double setTapPa) {
        this.conditions = conditions;
        this.drop = drop;
        this.clean = clean;
        this.due = due;
        this.setFouling = setFouling;
        this.fouling = fouling;
        this.flow = flow;
        this.setTapPa = setTapPa;
    }

    /** Free air at which its valve was set, m³/s. */
    double setFlow(Off off) {
        return flow * Math.exp(off.flow());
    }

    /** Pa gauge at its tap for a flow. */
    double neededPa(double freeM3PerS, Off off) {
        double valve = valveSquares(off) * square(freeM3PerS / setFlow(off));
        double behind = squares(behindPa(freeM3PerS, now(off), off));
        double ambient = conditions.ambientPa();
        return Math.sqrt(Math.max(0, behind + valve + ambient * ambient)) - ambient;
    }

    /** How it grows with the flow, Pa s/m³. */
    double slope(double freeM3PerS, Off off) {
        double step = 1e-3 * freeM3PerS;
        return (neededPa(freeM3PerS + step, off) - neededPa(freeM3PerS - step, off)) / (2 * step);
    }

    /** The outlet as a drop of a network, its valve as it was set. */
    Drop drop(Off off) {
        double kgPerS = setFlow(off) * conditions.airDensityKgPerM3();
        double k = Valve.kTaking(
                conditions.ambientPa() + setTapPa + off.tapPa(),
                conditions.ambientPa() + behindPa(setFlow(off), set(off), off),
                kgPerS,
                conditions.pipeTemperatureK());
        return drop(now(off), off).withValveK(Math.min(Drop.SHUT_K, k));
    }

    /** What was left for its valve when it was set, Pa. */
    double leftForValvePa(Off off) {
        return setTapPa + off.tapPa() - behindPa(setFlow(off), set(off), off);
    }

    /** What a valve of a coefficient takes at the flow at which its valve was set, Pa. */
    double valvePa(double k, Off off) {
        Drop whole = drop(set(off), off);
        return Drops.needed(conditions, whole, Math.min(Drop.SHUT_K, k), setFlow(off))
                .valvePa();
    }

    /** Coefficient of its clog so that a share of its air is left while the tap's pressure stays as it was, Pa s/m³. */
    double clog(double left, Off off) {
        double held = setTapPa + off.tapPa();
        double free = flowAt(held, off);
        return Math.max(0, held - neededPa(left * free, off)) / (left * free);
    }

    /** Free air at a pressure of the tap, m³/s: more than nothing. */
    private double flowAt(double tapPa, Off off) {
        double low = 0;
        double high = 2 * setFlow(off);
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            boolean isMore = neededPa(middle, off) > tapPa;
            high = isMore ? middle : high;
            low = isMore ? low : middle;
        }
        return Math.max(high, 1e-3 * flow);
    }

    private double behindPa(double freeM3PerS, Device device, Off off) {
        return Drops.needed(conditions, drop(device, off), 0, freeM3PerS).totalPa();
    }

    private Drop drop(Device device, Off off) {
        return drop.withDevice(device).withDepth(Math.max(0, drop.depthM() + off.depthM()));
    }

    private Device set(Off off) {
        return device(setFouling, off.device(), 0, 0);
    }

    private Device now(Off off) {
        return device(fouling, off.device(), off.fouling(), off.clogPaSPerM3());
    }

    private Device device(double by, double deviceLog, double foulingLog, double clogPaSPerM3) {
        double scale = Math.exp(deviceLog);
        double part = by * Math.exp(foulingLog);
        return new Device(
                scale * between(clean.p0Pa(), due.p0Pa(), part),
                scale * between(clean.aPaSPerM3(), due.aPaSPerM3(), part) + clogPaSPerM3,
                scale * between(clean.bPaS2PerM6(), due.bPaS2PerM6(), part));
    }

    private static double between(double clean, double due, double part) {
        return Math.max(0, clean + part * (due - clean));
    }

    private double valveSquares(Off off) {
        return squares(setTapPa + off.tapPa()) - squares(behindPa(setFlow(off), set(off), off));
    }

    private double squares(double gaugePa) {
        return gaugePa * (gaugePa + 2 * conditions.ambientPa());
    }

    private static double square(double x) {
        return x * x;
    }
}
