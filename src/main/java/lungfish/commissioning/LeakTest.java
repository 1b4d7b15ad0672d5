package lungfish.commissioning;

import java.util.List;
import java.util.function.DoublePredicate;
import lungfish.air.Tube;
import lungfish.blower.Wear;
import lungfish.network.Pipe;
import lungfish.sizing.Fleet;

/**
 * How tight the pipe is. First with soap: its outlets are shut, one blower runs, and the bleed is throttled until the gauge reads
 * the test pressure, which that blower bears all day. The bleed is never shut against a running blower: a pipe of some litres
 * would be at the blower's highest pressure in a blink. For the fall of the gauge the blower is therefore off; the pipe is pumped
 * up by hand through a tap, the check valves of the blowers hold it, and the gauge tells what the leaks let out.
 *
 * <p>Air in a pipe of volume V at room temperature loses pressure by {@code dp/dt = −q p0/V}, with q the free air that leaks and
 * p0 the pressure of the room (ideal gas, isothermal). A fine leak lets air out in proportion to the pressure, so that the gauge
 * falls as {@code p = p1 exp(−t/τ)}, {@code τ = V p/(q p0)}; a coarse one falls sooner at the same q, so that this is the
 * smallest fall that the tolerated leak makes.
 *
 * @param place of the fleet whose blower runs
 * @param testPa gauge, while the bleed is throttled
 * @param limitPa the highest gauge at which that blower bears it all day
 * @param volumeM3 of pipe and hoses, without airlines: their valves are shut
 * @param leakM3PerS free air that may leak at the pressure at which the room will run
 * @param keepsShare of what the gauge read that must be left after the watch
 * @param watchS how long it is watched
 * @param fillM3 free air that has to be pumped in
 */
public record LeakTest(
        int place,
        double testPa,
        double limitPa,
        double volumeM3,
        double leakM3PerS,
        double keepsShare,
        double watchS,
        double fillM3) {
    /** Of the room's air that may leak: common practice, no source. */
    public static final double LEAK_SHARE = 0.01;

    /** A fall of more than half is hard to tell from an empty pipe: then it is watched for a shorter time. */
    private static final double LEAST_LEFT = 0.5;

    private static final double[] WATCHES_S = {60, 30, 15, 10, 5};

    private static final int HALVINGS = 60;

    /**
     * The test of a pipe.
     *
     * @param pipes all of the network
     * @param runsPa gauge at which the room will run
     * @param takesM3PerS free air that its outlets take then
     */
    static LeakTest of(Fleet fleet, List<Pipe> pipes, double runsPa, double takesM3PerS) {
        int place = strongest(fleet, runsPa);
        double limitPa = limitPa(fleet, place);
        double testPa = Math.min(
                Math.min(runsPa, leastFlowPa(fleet, place, runsPa)),
                Math.max(limitPa / 2, limitPa - Expected.GAUGE_PA));
        double volumeM3 = volumeM3(pipes);
        double leakM3PerS = LEAK_SHARE * takesM3PerS;
        double ambientPa = fleet.room().pressurePa();
        double tauS = volumeM3 * runsPa / (leakM3PerS * ambientPa);
        double watchS = watchS(tauS);
        double fillM3 = volumeM3 * testPa / ambientPa;
        return new LeakTest(place, testPa, limitPa, volumeM3, leakM3PerS, Math.exp(-watchS / tauS), watchS, fillM3);
    }

    private static double volumeM3(List<Pipe> pipes) {
        return pipes.stream()
                .mapToDouble(pipe -> Tube.areaM2(pipe.boreM()) * pipe.lengthM())
                .sum();
    }

    /**
     * The free air that leaks at the pressure at which the room runs, from a fall that was watched: the same law, the other way
     * round, {@code q = V p ln(p1/p2)/(p0 t)}.
     *
     * @param pipes all of the network
     * @param fromPa gauge, above 0
     * @param toPa gauge, later
     * @return m³/s; infinite where the pipe was empty in the end
     */
    public static double leakM3PerS(
            List<Pipe> pipes, double runsPa, double ambientPa, double fromPa, double toPa, double s) {
        return volumeM3(pipes) * runsPa * Math.log(fromPa / toPa) / (ambientPa * s);
    }

    /** The longest watch that leaves enough on the gauge. */
    private static double watchS(double tauS) {
        for (double watchS : WATCHES_S) {
            if (Math.exp(-watchS / tauS) >= LEAST_LEFT) {
                return watchS;
            }
        }
        return WATCHES_S[WATCHES_S.length - 1];
    }

    private static int strongest(Fleet fleet, double gaugePa) {
        int best = 0;
        for (int i = 1; i < fleet.placed().size(); i++) {
            best = fleet.freeAt(i, gaugePa, Wear.NEW) > fleet.freeAt(best, gaugePa, Wear.NEW) ? i : best;
        }
        return best;
    }

    /** The highest gauge at which the machines of a place, new, are held at no more than they bear all day. */
    static double limitPa(Fleet fleet, int place) {
        double continuousPa = fleet.placed().get(place).machine().kind().continuousPa();
        return highest(
                continuousPa,
                gaugePa ->
                        fleet.placed().get(place).machine().machinePa(gaugePa, fleet.freeAt(place, gaugePa, Wear.NEW))
                                <= continuousPa);
    }

    /** The highest gauge, not above the one given, at which a place still passes the air that must always pass. */
    private static double leastFlowPa(Fleet fleet, int place, double mostPa) {
        double least = fleet.placed().get(place).machine().leastM3PerS();
        return highest(mostPa, gaugePa -> fleet.freeAt(place, gaugePa, Wear.NEW) >= least);
    }

    private static double highest(double mostPa, DoublePredicate bears) {
        if (bears.test(mostPa)) {
            return mostPa;
        }
        double low = 0;
        double high = mostPa;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean isBorne = bears.test(middle);
            low = isBorne ? middle : low;
            high = isBorne ? high : middle;
        }
        return low;
    }

    /** What the gauge may have fallen to after the watch, from what it read before, Pa. */
    public double leastLeftPa(double fromPa) {
        return fromPa * keepsShare;
    }
}
