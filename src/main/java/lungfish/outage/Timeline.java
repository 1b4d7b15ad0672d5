package lungfish.outage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lungfish.room.StirrerId;

/**
 * Follows an outage from one switching to the next: which power is there, what runs on it, how long that can last. While a
 * generator runs the batteries are not counted as charged again: that is the cautious side.
 */
final class Timeline {
    private static final double HARDLY_S = 1e-3;
    private static final double A_SECOND = 1;

    private final Scene scene;
    private final OwnPumps pumps;
    private final Moments moments;
    private final Means means;
    private final Stirring stirring;
    private final Map<State, List<Double>> known = new HashMap<>();
    private final List<Stretch> stretches = new ArrayList<>();

    private double fuelLeftS;
    private double pumpsLeftS;

    Timeline(Scene scene, OwnPumps pumps, Moments moments, Means means, Stirring stirring) {
        this.scene = scene;
        this.pumps = pumps;
        this.moments = moments;
        this.means = means;
        this.stirring = stirring;
        this.fuelLeftS = means.generatorS();
        this.pumpsLeftS = means.batteryPumpsS();
    }

    /** The stretches from 0 to the end of the scene. */
    List<Stretch> stretches() {
        double now = 0;
        while (now < scene.untilS()) {
            now = through(now);
        }
        return stretches;
    }

    private double through(double now) {
        Power power = power(now);
        State state = moments.state(now, power, pumpsLeftS > HARDLY_S);
        double to = Math.min(Math.min(scene.untilS(), moments.nextAfter(now)), now + lastsS(power, state, now));
        double chargeFrom = means.charge().share();
        use(power, state, to - now);
        Set<StirrerId> stirs = stirring.running(moments.isSupplyOff(now), moments.tripped(now));
        List<Double> air = known.computeIfAbsent(state, pumps::airM3PerS);
        stretches.add(new Stretch(
                now, to, power, state, air, stirs, chargeFrom, means.charge().share()));
        return to;
    }

    /** For how long what runs now can go on. */
    private double lastsS(Power power, State state, double now) {
        double ofPower =
                switch (power) {
                    case BATTERY -> means.charge().carriesS(watts(state), scene.untilS() - now);
                    case GENERATOR -> fuelLeftS;
                    case MAINS, NONE -> Double.POSITIVE_INFINITY;
                };
        return state.batteryPumps() ? Math.min(ofPower, pumpsLeftS) : ofPower;
    }

    private void use(Power power, State state, double seconds) {
        switch (power) {
            case BATTERY -> means.charge().carry(watts(state), seconds);
            case MAINS -> means.charge().charge(seconds);
            case GENERATOR -> {
                means.charge().rest(seconds);
                fuelLeftS -= seconds;
            }
            case NONE -> means.charge().rest(seconds);
        }
        pumpsLeftS -= state.batteryPumps() ? seconds : 0;
    }

    private Power power(double now) {
        if (!moments.isMainsOff(now)) {
            return Power.MAINS;
        }
        if (now >= moments.generatorS() && fuelLeftS > HARDLY_S) {
            return Power.GENERATOR;
        }
        boolean carries = means.charge().carriesS(pumps.plant().watts(), A_SECOND) > HARDLY_S;
        return carries ? Power.BATTERY : Power.NONE;
    }

    private double watts(State state) {
        double whole = pumps.plant().watts();
        return state.essentialsOnly() ? pumps.plant().essentialWatts().orElse(whole) : whole;
    }
}
