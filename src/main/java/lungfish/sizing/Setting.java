package lungfish.sizing;

import java.util.ArrayList;
import java.util.List;
import lungfish.air.Valve;
import lungfish.network.Conditions;
import lungfish.network.Drop;
import lungfish.network.Drops;
import lungfish.network.Tuned;

/**
 * How each outlet's valve is set so that, at the pressure where the blowers run, it takes its target.
 *
 * @param tapPa gauge, at its tap
 * @param sparePa that the valve burns beyond what it takes when open; negative: the outlet is short
 * @param valveK exact coefficient, 1/m⁴
 * @param opening coarse start, 0 to 1, in round steps: no hobby valve repeats better
 */
public record Setting(double tapPa, double sparePa, double valveK, double opening) {

    /**
     * The settings of all drops of a tuned network, run at another common pressure. With all flows the same, every node's
     * squared pressure moves by as much as that of the sources.
     *
     * @param valves of the drops, in their order
     */
    public static List<Setting> all(Tuned tuned, double runningPa, List<Valve> valves) {
        Conditions conditions = tuned.network().conditions();
        double ambient = conditions.ambientPa();
        double shift = square(ambient + runningPa) - square(ambient + tuned.requiredGaugePa());
        List<Setting> settings = new ArrayList<>();
        for (int i = 0; i < valves.size(); i++) {
            double squared = square(ambient + tuned.drop(i).tapGaugePa()) + shift;
            double tapPa = Math.sqrt(Math.max(0, squared)) - ambient;
            settings.add(of(conditions, tuned.network().drops().get(i), tapPa, valves.get(i)));
        }
        return settings;
    }

    private static Setting of(Conditions conditions, Drop drop, double tapPa, Valve valve) {
        double target = drop.targetM3PerS().orElse(0);
        double openPa = Drops.needed(conditions, drop, target).totalPa();
        double behindPa = Drops.needed(conditions, drop, 0, target).totalPa();
        double ambient = conditions.ambientPa();
        double flow = target * conditions.airDensityKgPerM3();
        double taking = Valve.kTaking(ambient + tapPa, ambient + behindPa, flow, conditions.pipeTemperatureK());
        double k = Math.min(Drop.SHUT_K, taking);
        double opening = k < valve.openK() ? 1 : valve.openingFor(k);
        return new Setting(tapPa, tapPa - openPa, Math.max(k, valve.openK()), coarse(opening));
    }

    /** In hundredths near shut, where a little is much, in fiftieths up to a fifth, in twentieths beyond. */
    private static double coarse(double opening) {
        double steps = opening < 0.1 ? 100 : opening < 0.2 ? 50 : 20;
        return Math.max(1, Math.round(opening * steps)) / steps;
    }

    private static double square(double x) {
        return x * x;
    }
}
