package lungfish.measured;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.blower.Wear;
import lungfish.catalogue.ServiceClass.Task;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.network.Conditions;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solved;
import lungfish.network.Solver;
import lungfish.room.OutletId;
import lungfish.room.Reading;

/**
 * The room on the day on which its valves were set: every outlet took what its jar told, or else its target, at the pressure that
 * the gauge told, or else the one that is planned; the bleed let out what the blowers gave beyond.
 */
final class Start {
    private final Ground ground;
    private final Rounds rounds;
    private final double gaugePa;
    private final double gaugeSdPa;
    private final double[] flow;
    private final double[] flowSd;
    private final List<OutletLaw> laws;

    /**
     * With these numbers.
     *
     * @param gaugePa at the blowers
     * @param gaugeSdPa what it may be off
     * @param flow free air of each outlet, m³/s
     * @param flowSd what the natural logarithm of each may be off
     * @param laws of the outlets since
     */
    Start(
            Ground ground,
            Rounds rounds,
            double gaugePa,
            double gaugeSdPa,
            double[] flow,
            double[] flowSd,
            List<OutletLaw> laws) {
        this.ground = ground;
        this.rounds = rounds;
        this.gaugePa = gaugePa;
        this.gaugeSdPa = gaugeSdPa;
        this.flow = flow;
        this.flowSd = flowSd;
        this.laws = laws;
    }

    Ground ground() {
        return ground;
    }

    Rounds rounds() {
        return rounds;
    }

    double gaugePa() {
        return gaugePa;
    }

    double gaugeSdPa() {
        return gaugeSdPa;
    }

    double[] flow() {
        return flow;
    }

    double[] flowSd() {
        return flowSd;
    }

    List<OutletLaw> laws() {
        return laws;
    }

    static Start of(Ground ground, Rounds rounds, Jars jars) {
        List<Need> needs = ground.needs();
        OptionalDouble read = gauge(rounds.set());
        double gaugePa = read.orElse(ground.holdPa());
        double[] expected = rounds.isSetByJar() ? targets(needs) : standing(ground, gaugePa);
        double[] flow = new double[needs.size()];
        double[] flowSd = new double[needs.size()];
        for (int i = 0; i < flow.length; i++) {
            double[] told = jars.flows(rounds.set(), needs.get(i).id());
            double target = expected[i];
            flow[i] =
                    told.length == 0 ? target : DoubleStream.of(told).average().orElse(target);
            double unread = rounds.isSetByJar() ? Doubts.UNREAD_LOG : Doubts.UNSET_LOG;
            flowSd[i] = told.length == 0 ? unread : Doubts.JAR_SHARE / Math.sqrt(told.length);
        }
        double[] tapPa = taps(ground, flow, gaugePa);
        List<OutletLaw> laws = IntStream.range(0, flow.length)
                .mapToObj(i -> law(ground, rounds, i, flow[i], tapPa[i]))
                .toList();
        double sd = read.isPresent() ? Doubts.GAUGE_PA : Doubts.UNREAD_PA;
        return new Start(ground, rounds, gaugePa, sd, flow, flowSd, laws);
    }

    private static double[] targets(List<Need> needs) {
        return needs.stream().mapToDouble(need -> need.targetM3PerS().si()).toArray();
    }

    /** What the outlets would take with their valves as the room says; of one that takes nothing, its target. */
    private static double[] standing(Ground ground, double gaugePa) {
        double[] flow = targets(ground.needs());
        Network fed = ground.network().withSources(ground.fleet().fixedSources(gaugePa));
        Solver.of(fed)
                .asSet()
                .match(Optional::of, tuned -> Optional.<AsSet>empty(), refused -> Optional.<AsSet>empty())
                .ifPresent(set -> Arrays.setAll(
                        flow, i -> set.drop(i).freeM3PerS() > 0 ? set.drop(i).freeM3PerS() : flow[i]));
        return flow;
    }

    private static OptionalDouble gauge(List<Reading> readings) {
        return readings.stream()
                .filter(reading -> reading.shut().equals(Reading.Shut.NOTHING))
                .flatMap(reading -> reading.measured() instanceof Reading.Gauge gauge
                                && gauge.at().isEmpty()
                        ? Stream.of(gauge.gaugePa())
                        : Stream.empty())
                .mapToDouble(Double::doubleValue)
                .average();
    }

    private static OutletLaw law(Ground ground, Rounds rounds, int i, double flow, double tapPa) {
        Need need = ground.needs().get(i);
        double everyS = ground.catalogue().service(Task.DEVICES_CLEANED).everyS();
        return new OutletLaw(
                ground.conditions(),
                ground.network().drops().get(i),
                need.device().clean(),
                need.device().due(),
                fouling(rounds, need.id(), rounds.setOn(), everyS),
                fouling(rounds, need.id(), rounds.on(), everyS),
                flow,
                tapPa);
    }

    /** Devices foul from cleaning to cleaning in proportion to time. */
    private static double fouling(Rounds rounds, OutletId outlet, LocalDate day, double everyS) {
        return Math.min(1, rounds.sinceCleanedS(outlet, day) / everyS);
    }

    /** What stood at each tap: with all flows the same, every squared pressure moves by as much as that of the blowers. */
    private static double[] taps(Ground ground, double[] flow, double gaugePa) {
        Network network = ground.network();
        List<Drop> drops = IntStream.range(0, flow.length)
                .mapToObj(i -> network.drops().get(i).withTarget(flow[i]))
                .toList();
        Network fed = network.withDrops(drops).withSources(ground.fleet().fixedSources(gaugePa));
        double ambient = ground.conditions().ambientPa();
        return Solver.of(fed)
                .tuned()
                .match(
                        set -> even(flow.length, gaugePa),
                        tuned -> shifted(tuned, flow.length, ambient, gaugePa, tuned.requiredGaugePa()),
                        refused -> even(flow.length, gaugePa));
    }

    private static double[] even(int count, double gaugePa) {
        return IntStream.range(0, count).mapToDouble(i -> gaugePa).toArray();
    }

    private static double[] shifted(Solved solved, int count, double ambientPa, double gaugePa, double solvedPa) {
        double shift = square(ambientPa + gaugePa) - square(ambientPa + solvedPa);
        return IntStream.range(0, count)
                .mapToDouble(i -> Math.sqrt(Math.max(
                                square(ambientPa),
                                square(ambientPa + solved.drop(i).tapGaugePa()) + shift))
                        - ambientPa)
                .toArray();
    }

    private static double square(double x) {
        return x * x;
    }

    Conditions conditions() {
        return ground.conditions();
    }

    int outlets() {
        return flow.length;
    }

    /** Free air of all outlets together, m³/s. */
    double takesM3PerS() {
        double sum = 0;
        for (double each : flow) {
            sum += each;
        }
        return sum;
    }

    /** Free air that the blowers give new at a pressure by their data sheets, m³/s. */
    double sheetM3PerS(double pa) {
        return ground.fleet().freeAt(pa, Wear.NEW);
    }

    /** Whether the bleed took anything: else the blowers gave just what the outlets took, and that tells what they give. */
    boolean isBled() {
        return ground.isBled() && sheetM3PerS(gaugePa) > takesM3PerS();
    }
}
