package lungfish.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.Air;
import lungfish.air.Tube;
import lungfish.air.Water;
import org.jspecify.annotations.Nullable;

/**
 * A network of water pipes, solved by the solver for air. Exact, not approximate: friction depends on Re and ε/D alone,
 * and what the square of the pressure is to air ({@code Δπ = (f L/D + K) ṁ² R T/A²}) pressure itself is to water
 * ({@code Δp = (f L/D + K) ṁ²/(2 ρ A²)}). With flows in the ratio of the viscosities Re is the same, and so
 * {@code Δπ = 2 ρ R T (µ_air/µ_water)² Δp}.
 */
final class WaterAnalogue {
    /** A level whose pressure stands for no head; high enough that no head below it reaches a vacuum. */
    private static final double DATUM_PA = 2e6;

    private final double waterKgPerM3;
    private final double flowRatio;
    private final double piPerPa;
    private final double datumPi;
    private final Conditions conditions = Conditions.usual();
    private final List<String> nodes = new ArrayList<>();
    private final List<Pipe> pipes = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final List<Drop> drops = new ArrayList<>();
    private @Nullable Solved solved;

    WaterAnalogue(double waterKgPerM3, double viscosityPaS) {
        this.waterKgPerM3 = waterKgPerM3;
        flowRatio = Air.viscosityPaS(conditions.pipeTemperatureK()) / viscosityPaS;
        piPerPa = 2.0
                * waterKgPerM3
                * Air.GAS_CONSTANT_J_PER_KG_K
                * conditions.pipeTemperatureK()
                * flowRatio
                * flowRatio;
        datumPi = DATUM_PA * DATUM_PA;
    }

    WaterAnalogue node(String name) {
        nodes.add(name);
        return this;
    }

    WaterAnalogue pipe(String id, String from, String to, Tube tube) {
        pipes.add(new Pipe(id, from, to, tube.lengthM(), tube.boreM(), tube.roughnessM(), tube.lossSum()));
        return this;
    }

    /** A reservoir whose surface stands at a head. */
    WaterAnalogue reservoir(String node, double headM) {
        double pi = datumPi + piPerPa * waterKgPerM3 * Water.GRAVITY_M_PER_S2 * headM;
        sources.add(new Source.FixedPressure("at-" + node, node, Math.sqrt(pi) - conditions.ambientPa()));
        return this;
    }

    /** Water drawn at a node. */
    WaterAnalogue draw(String node, double m3PerS) {
        double target = m3PerS * waterKgPerM3 * flowRatio / conditions.airDensityKgPerM3();
        Device tube = new Device(0.0, 1.0, 0.0);
        drops.add(new Drop(
                "from-" + node,
                node,
                0.0,
                0.0,
                Optional.empty(),
                Optional.empty(),
                Optional.of(tube),
                0.0,
                OptionalDouble.of(target)));
        return this;
    }

    private Network network() {
        return new Network(conditions, nodes, pipes, drops, sources, Optional.empty());
    }

    WaterAnalogue solveAsSet() {
        solved = (Solved) Solver.of(network()).asSet();
        return this;
    }

    WaterAnalogue solveTuned() {
        solved = (Solved) Solver.of(network()).tuned();
        return this;
    }

    /** Volume flow of the pipe at a position, m³/s of water. */
    double flowM3PerS(int pipe) {
        double kgPerS = solved().pipe(pipe).freeM3PerS() * conditions.airDensityKgPerM3();
        return kgPerS / flowRatio / waterKgPerM3;
    }

    /** Head of a node above that of another, m. */
    double headM(String node, String above) {
        return (pi(node) - pi(above)) / (piPerPa * waterKgPerM3 * Water.GRAVITY_M_PER_S2);
    }

    private Solved solved() {
        return Objects.requireNonNull(solved, "solve first");
    }

    private double pi(String node) {
        double absolutePa = solved().nodeGaugePa(nodes.indexOf(node)) + conditions.ambientPa();
        return absolutePa * absolutePa;
    }
}
