package lungfish.network;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * The peer: the same condensed Newton step on EJML's sparse Cholesky, in its best honest form: unknowns numbered by our
 * fill-reducing order, structure analysed once and locked, values written in place, same laws, same chords to start on,
 * same figure to stop at. For one fixed pressure and drops that all stay open: no safeguard, no kinks.
 */
final class PeerNewton {
    private final Ducts pipes;
    private final DropLaws drops;
    private final int[] pipeA;
    private final int[] pipeB;
    private final int[] dropAt;
    private final int[] linkUp;
    private final int[] linkDown;
    private final int[] diagonal;
    private final double[] chord;
    private final double[] pipeFlow;
    private final double[] dropFlow;
    private final double[] conductance;
    private final double[] dropConductance;
    private final double[] psi;
    private final double sourcePsi;
    private final double ambientPi;
    private final DMatrixSparseCSC matrix;
    private final DMatrixRMaj right;
    private final DMatrixRMaj change;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    private final Misses misses = new Misses();

    PeerNewton(Network network) {
        Shape shape = Shape.of(network);
        Knots knots = Knots.of(shape);
        int[] unknownOfKnot = numbered(shape, knots);
        int count = knots.count - 1;
        pipeA = unknowns(shape.pipeFrom, knots, unknownOfKnot);
        pipeB = unknowns(shape.pipeTo, knots, unknownOfKnot);
        dropAt = unknowns(shape.dropNode, knots, unknownOfKnot);
        matrix = pattern(count);
        linkUp = new int[pipeA.length];
        linkDown = new int[pipeA.length];
        diagonal = new int[count];
        places();
        right = new DMatrixRMaj(count, 1);
        change = new DMatrixRMaj(count, 1);
        psi = new double[count];
        double ambientPa = network.conditions().ambientPa();
        ambientPi = ambientPa * ambientPa;
        double gaugePa = ((Source.FixedPressure) network.sources().get(0)).gaugePa();
        sourcePsi = gaugePa * (gaugePa + 2.0 * ambientPa);
        pipes = new Ducts(pipeA.length, Laws.WRITTEN);
        drops = new DropLaws(network.conditions(), network.drops(), Laws.WRITTEN);
        chord = chords(network);
        pipeFlow = new double[pipeA.length];
        dropFlow = new double[dropAt.length];
        conductance = new double[pipeA.length];
        dropConductance = new double[dropAt.length];
        prepare();
    }

    /** In the order of least fill, found on the whole network. */
    private static int[] numbered(Shape shape, Knots knots) {
        int held = knots.ofNode[shape.sourceNode[0]];
        int[] number = new int[knots.count];
        Arrays.setAll(number, knot -> knot == held ? -1 : knot > held ? knot - 1 : knot);
        Pairs pairs = new Pairs(shape.pipes());
        for (int i = 0; i < shape.pipes(); i++) {
            int a = number[knots.ofNode[shape.pipeFrom[i]]];
            int b = number[knots.ofNode[shape.pipeTo[i]]];
            if (a >= 0 && b >= 0) {
                pairs.place(a, b);
            }
        }
        int[] order = MinimumDegree.order(knots.count - 1, pairs.low(), pairs.high());
        int[] turn = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            turn[order[k]] = k;
        }
        return Arrays.stream(number).map(k -> k < 0 ? -1 : turn[k]).toArray();
    }

    private static int[] unknowns(int[] nodes, Knots knots, int[] unknownOfKnot) {
        return Arrays.stream(nodes)
                .map(node -> unknownOfKnot[knots.ofNode[node]])
                .toArray();
    }

    private double[] chords(Network network) {
        double[] chords = new double[pipeA.length];
        for (int i = 0; i < chords.length; i++) {
            Pipe pipe = network.pipes().get(i);
            pipes.set(i, pipe.tubing(), network.conditions());
            double lively =
                    network.conditions().airDensityKgPerM3() * 4.0 * Math.PI / 4.0 * pipe.boreM() * pipe.boreM();
            pipes.at(i, lively);
            chords[i] = lively / pipes.loss;
        }
        return chords;
    }

    private DMatrixSparseCSC pattern(int count) {
        org.ejml.data.DMatrixSparseTriplet triplet =
                new org.ejml.data.DMatrixSparseTriplet(count, count, count + 2 * pipeA.length);
        for (int k = 0; k < count; k++) {
            triplet.addItem(k, k, 1.0);
        }
        for (int i = 0; i < pipeA.length; i++) {
            if (pipeA[i] >= 0 && pipeB[i] >= 0) {
                triplet.addItem(pipeA[i], pipeB[i], -1e-9);
                triplet.addItem(pipeB[i], pipeA[i], -1e-9);
            }
        }
        DMatrixSparseCSC csc = org.ejml.ops.DConvertMatrixStruct.convert(triplet, (DMatrixSparseCSC) null);
        csc.sortIndices(null);
        return csc;
    }

    private void places() {
        for (int k = 0; k < diagonal.length; k++) {
            diagonal[k] = matrix.nz_index(k, k);
        }
        for (int i = 0; i < pipeA.length; i++) {
            boolean inner = pipeA[i] >= 0 && pipeB[i] >= 0;
            linkUp[i] = inner ? matrix.nz_index(pipeA[i], pipeB[i]) : -1;
            linkDown[i] = inner ? matrix.nz_index(pipeB[i], pipeA[i]) : -1;
        }
    }

    private void prepare() {
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("the pattern is not positive definite");
        }
        solver.setStructureLocked(true);
    }

    /** Solves cold; returns its linear solves. */
    int solve() {
        Arrays.fill(psi, sourcePsi);
        start();
        return home(1);
    }

    /** Solves from its last answer after one valve was turned; returns its linear solves. */
    int solve(int drop, double valveK) {
        drops.setValve(drop, valveK);
        dropFlow[drop] = drops.flowAt(drop, psi[dropAt[drop]]);
        return home(0);
    }

    private int home(int begun) {
        for (int steps = begun; steps < 30; steps++) {
            if (load() <= 1.0) {
                return steps;
            }
            step();
        }
        throw new IllegalStateException("the peer did not come home");
    }

    private void clear() {
        Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0.0);
        Arrays.fill(right.data, 0.0);
    }

    private void start() {
        clear();
        for (int i = 0; i < pipeA.length; i++) {
            conductance[i] = chord[i];
            pipeFlow[i] = chord[i] * (at(pipeA[i]) - at(pipeB[i]));
            addPipe(i);
        }
        for (int i = 0; i < dropAt.length; i++) {
            dropFlow[i] = drops.mostFlow(i, psi[dropAt[i]]);
            dropConductance[i] = dropFlow[i] / (psi[dropAt[i]] - drops.opensAt(i));
            addDrop(i);
        }
        step();
    }

    private double at(int unknown) {
        return unknown < 0 ? sourcePsi : psi[unknown];
    }

    private double load() {
        clear();
        double total = 0.0;
        for (double each : dropFlow) {
            total += each;
        }
        misses.reset(total);
        for (int i = 0; i < pipeA.length; i++) {
            pipes.at(i, pipeFlow[i]);
            double miss = at(pipeA[i]) - at(pipeB[i]) - pipes.loss;
            conductance[i] = 1.0 / pipes.slope;
            pipeFlow[i] += conductance[i] * miss;
            misses.element(miss, conductance[i], ambientPi + at(pipeA[i]));
            addPipe(i);
        }
        for (int i = 0; i < dropAt.length; i++) {
            drops.at(i, dropFlow[i]);
            double miss = psi[dropAt[i]] - drops.psi;
            dropConductance[i] = 1.0 / drops.slope;
            dropFlow[i] += dropConductance[i] * miss;
            misses.element(miss, dropConductance[i], ambientPi + psi[dropAt[i]]);
            addDrop(i);
        }
        return misses.figure();
    }

    private void addPipe(int i) {
        if (linkUp[i] >= 0) {
            matrix.nz_values[linkUp[i]] -= conductance[i];
            matrix.nz_values[linkDown[i]] -= conductance[i];
        }
        if (pipeA[i] >= 0) {
            matrix.nz_values[diagonal[pipeA[i]]] += conductance[i];
            right.data[pipeA[i]] -= pipeFlow[i];
        }
        if (pipeB[i] >= 0) {
            matrix.nz_values[diagonal[pipeB[i]]] += conductance[i];
            right.data[pipeB[i]] += pipeFlow[i];
        }
    }

    private void addDrop(int i) {
        matrix.nz_values[diagonal[dropAt[i]]] += dropConductance[i];
        right.data[dropAt[i]] -= dropFlow[i];
    }

    private void step() {
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("not positive definite");
        }
        solver.solve(right, change);
        for (int k = 0; k < psi.length; k++) {
            psi[k] += change.data[k];
        }
        for (int i = 0; i < pipeA.length; i++) {
            double a = pipeA[i] < 0 ? 0.0 : change.data[pipeA[i]];
            double b = pipeB[i] < 0 ? 0.0 : change.data[pipeB[i]];
            pipeFlow[i] += conductance[i] * (a - b);
        }
        for (int i = 0; i < dropAt.length; i++) {
            dropFlow[i] += dropConductance[i] * change.data[dropAt[i]];
        }
    }
}
