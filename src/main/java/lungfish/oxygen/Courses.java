package lungfish.oxygen;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * Follows a tank through phases in which it breathes differently: an adaptive Runge-Kutta integrator of order 5 (Dormand and
 * Prince 1980, from Hipparchus), begun anew at each phase, since the rate jumps there.
 */
public final class Courses {
    /** A millionth of a mg/L: far below what anybody measures. */
    private static final double ABSOLUTE = 1e-6;

    private static final double RELATIVE = 1e-6;
    private static final double SHORTEST_S = 1e-6;

    private static final int LEVEL = 0;
    private static final int SURFACE = 1;
    private static final int BUBBLES = 2;
    private static final int USED = 3;
    private static final int SIZE = 4;

    private final Balance balance;
    private final List<Step> steps = new ArrayList<>();

    private Courses(Balance balance) {
        this.balance = balance;
    }

    /**
     * Follows a tank.
     *
     * @param startGPerM3 its oxygen at time 0
     * @param phases at least one, the first from 0, rising
     * @param endS when to stop, s; above the start of the last phase
     */
    public static Course of(Balance balance, double startGPerM3, List<Phase> phases, double endS) {
        return new Courses(balance).follow(startGPerM3, phases, endS);
    }

    private Course follow(double startGPerM3, List<Phase> phases, double endS) {
        double[] state = new double[SIZE];
        state[LEVEL] = startGPerM3;
        for (int i = 0; i < phases.size(); i++) {
            double toS = i + 1 < phases.size() ? phases.get(i + 1).fromS() : endS;
            state = through(phases.get(i), toS, state);
        }
        return new Course(steps, new Course.Budget(state[SURFACE], state[BUBBLES], state[USED]));
    }

    private double[] through(Phase phase, double toS, double[] state) {
        DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(SHORTEST_S, toS - phase.fromS(), ABSOLUTE, RELATIVE);
        integrator.addStepHandler(this::keep);
        return integrator
                .integrate(
                        new Breathing(phase.fed() ? balance : balance.atRest(), phase.breath()),
                        new ODEState(phase.fromS(), state),
                        toS)
                .getPrimaryState();
    }

    private void keep(ODEStateInterpolator step) {
        ODEStateAndDerivative from = step.getPreviousState();
        ODEStateAndDerivative to = step.getCurrentState();
        steps.add(new Step(
                from.getTime(),
                to.getTime(),
                from.getPrimaryState()[LEVEL],
                to.getPrimaryState()[LEVEL],
                from.getPrimaryDerivative()[LEVEL],
                to.getPrimaryDerivative()[LEVEL]));
    }

    /** The level, and beside it what came and went: each is integrated by the same steps, so that the sum holds to the last digit. */
    private record Breathing(Balance balance, Breath breath) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return SIZE;
        }

        @Override
        public double[] computeDerivatives(double seconds, double[] state) {
            double[] changes = new double[SIZE];
            changes[SURFACE] = balance.surfaceGPerS(state[LEVEL], breath) / balance.volumeM3();
            changes[BUBBLES] = balance.bubblesGPerS(state[LEVEL], breath) / balance.volumeM3();
            changes[USED] = balance.usedGPerS(state[LEVEL]) / balance.volumeM3();
            changes[LEVEL] = changes[SURFACE] + changes[BUBBLES] - changes[USED];
            return changes;
        }
    }
}
