package lungfish.network;

/** Turns the solved knots into an answer for the nodes as they were drawn: gauge pressures, sources' shares, ties. */
final class Finish {
    private final Shape shape;
    private final Knots knots;
    private final TieFlows ties;

    Finish(Shape shape, Knots knots) {
        this.shape = shape;
        this.knots = knots;
        ties = new TieFlows(shape, knots);
    }

    /**
     * The arrays of an answer.
     *
     * @param psi of each knot
     * @param pipeFlow in the workspace, kg/s; copied
     * @param dropFlow in the workspace, kg/s; copied
     * @param sourceFlow kg/s; NaN where it is what the rest of its knot leaves
     */
    Flows.Numbers numbers(double ambientPa, double[] psi, double[] pipeFlow, double[] dropFlow, double[] sourceFlow) {
        double[] pipes = pipeFlow.clone();
        double[] drops = dropFlow.clone();
        shareOut(pipes, drops, sourceFlow);
        ties.fill(balance(pipes, drops, sourceFlow), pipes);
        double[] gauge = new double[shape.nodes];
        for (int node = 0; node < gauge.length; node++) {
            double above = psi[knots.ofNode[node]];
            gauge[node] = above / (Math.sqrt(above + ambientPa * ambientPa) + ambientPa);
        }
        return new Flows.Numbers(gauge, pipes, drops, sourceFlow);
    }

    private void shareOut(double[] pipes, double[] drops, double[] sources) {
        double[] lacking = new double[knots.count];
        int[] sharing = new int[knots.count];
        double[] known = sources.clone();
        for (int i = 0; i < sources.length; i++) {
            if (Double.isNaN(sources[i])) {
                known[i] = 0.0;
                sharing[knots.ofNode[shape.sourceNode[i]]]++;
            }
        }
        double[] balance = balance(pipes, drops, known);
        for (int node = 0; node < balance.length; node++) {
            lacking[knots.ofNode[node]] -= balance[node];
        }
        for (int i = 0; i < sources.length; i++) {
            int knot = knots.ofNode[shape.sourceNode[i]];
            sources[i] = Double.isNaN(sources[i]) ? lacking[knot] / sharing[knot] : sources[i];
        }
    }

    /** What enters each node less what leaves it, ties apart, kg/s. */
    private double[] balance(double[] pipes, double[] drops, double[] sources) {
        double[] balance = new double[shape.nodes];
        for (int i = 0; i < pipes.length; i++) {
            double flow = shape.tie[i] ? 0.0 : pipes[i];
            balance[shape.pipeFrom[i]] -= flow;
            balance[shape.pipeTo[i]] += flow;
        }
        for (int i = 0; i < drops.length; i++) {
            balance[shape.dropNode[i]] -= drops[i];
        }
        for (int i = 0; i < sources.length; i++) {
            balance[shape.sourceNode[i]] += sources[i];
        }
        return balance;
    }
}
