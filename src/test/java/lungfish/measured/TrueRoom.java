package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.catalogue.ServiceClass;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.AsSet;
import lungfish.network.Curve;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Drops;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.piping.PipedRoom;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.sizing.Fleet;
import lungfish.sizing.Trial;

/**
 * A room that is not as its file says, for trials: devices take 30 % more or less than their class (standard deviation), depths
 * are off by up to 2 cm, two outlets have devices of another class, the blower is up to a tenth off its data sheet and a sound pipe
 * seeps. Its valves were set by a jar that is off by up to 5 %. Nothing of it uses the package that is tried.
 */
final class TrueRoom {
    private static final double FOULING_SPREAD = 0.3;

    /** How far devices are today on the way from clean to due, by their class. */
    private static final double FOULED = Keeper.SINCE_CLEANED_DAYS
            * 86400
            / DemoPlans.CATALOGUE.service(ServiceClass.Task.DEVICES_CLEANED).everyS();

    final Plan plan;
    final Fault fault;
    final List<Need> needs;
    final double holdPa;
    final int clogged;
    final double clogLeft;
    final double lost;
    final double leakShare;
    final int leakPiece;
    final double seepShare;
    private final Fleet fleet;
    private final Network clean;
    private final DeviceClass[] really;
    private final double[] device;
    private final double[] fouling;
    private final double[] depthOff;
    private final double[] setFlow;
    private final double[] tapPa;
    private final double blower;
    private final double ageing;

    TrueRoom(Plan plan, Fault fault, SplittableRandom random) {
        this.plan = plan;
        this.fault = fault;
        PipedRoom piped = plan.piped().orElseThrow();
        this.needs = piped.needs();
        this.fleet = plan.duty().orElseThrow().candidate().fleet();
        this.holdPa = plan.duty().orElseThrow().candidate().fresh().gaugePa();
        this.clean = piped.network(Upkeep.CLEAN, List.of());
        int n = needs.size();
        this.really = needs.stream().map(Need::device).toArray(DeviceClass[]::new);
        this.device = new double[n];
        this.fouling = new double[n];
        this.depthOff = new double[n];
        this.setFlow = needs.stream()
                .mapToDouble(need -> need.targetM3PerS().si() * (1 + 0.05 * even(random)))
                .toArray();
        this.tapPa = taps();
        int[] others = random.ints(0, n).distinct().limit(2).toArray();
        for (int i = 0; i < n; i++) {
            int outlet = i;
            draw(i, IntStream.of(others).anyMatch(other -> other == outlet), random);
        }
        this.blower = 1 + 0.1 * even(random);
        this.ageing = aged() * (1 + 0.5 * even(random));
        this.seepShare = 0.01 * random.nextDouble();
        while (redrawn(others, random)) {
            // until every outlet is well with all the others
        }
        this.clogged = random.nextInt(n);
        this.clogLeft = fault == Fault.CLOG ? 0.05 + 0.45 * random.nextDouble() : 1;
        this.lost = fault == Fault.WEAR ? 0.15 + 0.2 * random.nextDouble() : 0;
        this.leakShare = fault == Fault.LEAK ? 0.1 + 0.25 * random.nextDouble() : 0;
        this.leakPiece = random.nextInt(clean.pipes().size());
    }

    /** Draws a device until the outlet could be set and, all else well, still takes three quarters of that today. */
    private void draw(int i, boolean isOther, SplittableRandom random) {
        do {
            really[i] = isOther
                    ? another(needs.get(i).device(), random)
                    : needs.get(i).device();
            device[i] = Math.exp(0.3 * gauss(random));
            fouling[i] = Math.exp(FOULING_SPREAD * gauss(random));
            depthOff[i] = 0.02 * even(random);
        } while (!isWell(i));
    }

    /** Draws those anew that would not keep three fifths of their air in this room, with no fault. */
    private boolean redrawn(int[] others, SplittableRandom random) {
        AsSet sound = solved(
                IntStream.range(0, needs.size()).mapToObj(i -> set(i, FOULED)).toList(), 1 - ageing, seepShare);
        int[] unwell = IntStream.range(0, needs.size())
                .filter(i -> sound.drop(i).freeM3PerS() < 0.6 * setFlow[i])
                .toArray();
        for (int i : unwell) {
            draw(i, IntStream.of(others).anyMatch(other -> other == i), random);
        }
        return unwell.length > 0;
    }

    private boolean isWell(int i) {
        Drop open = drop(i, 0);
        boolean canBeSet = Drops.neededPa(clean.conditions(), open, setFlow[i]) < tapPa[i];
        return canBeSet && Drops.flowAt(clean.conditions(), set(i, FOULED), tapPa[i]) > 0.75 * setFlow[i];
    }

    /** What blowers lose in the time by their classes. */
    private double aged() {
        return fleet.placed().stream()
                .map(placed -> placed.machine().kind())
                .mapToDouble(kind -> (1 - kind.tiredShare()) * Keeper.DAYS * 86400 / kind.rebuildS())
                .average()
                .orElse(0);
    }

    private static DeviceClass another(DeviceClass than, SplittableRandom random) {
        List<DeviceClass> all = DemoPlans.CATALOGUE.devices().stream()
                .filter(each -> each.kind() == DeviceClass.Kind.SPONGE_FILTER
                        || each.kind() == DeviceClass.Kind.AIR_STONE
                        || each.kind() == DeviceClass.Kind.BOX_FILTER)
                .filter(each -> !each.id().equals(than.id()))
                .toList();
        return all.get(random.nextInt(all.size()));
    }

    private static double gauss(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    static double even(SplittableRandom random) {
        return 2 * random.nextDouble() - 1;
    }

    /** When the valves had just been set, devices clean. */
    AsSet whenSet() {
        return solved(drops(0, false), 1, seepShare);
    }

    String really(int i) {
        return needs.get(i).device().id() + " is " + really[i].id() + " x" + device[i];
    }

    /** Where a leak is. */
    String leakNode() {
        return clean.pipes().get(leakPiece).from();
    }

    /** The pipes that meet there, by their numbers. */
    List<Integer> leakPipes() {
        return IntStream.range(0, clean.pipes().size())
                .filter(i -> clean.pipes().get(i).from().equals(leakNode())
                        || clean.pipes().get(i).to().equals(leakNode()))
                .boxed()
                .toList();
    }

    AsSet today() {
        return solved(drops(FOULED, true), (1 - ageing) * (1 - lost), seepShare + leakShare);
    }

    private List<Drop> drops(double fouled, boolean isToday) {
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            Drop now = set(i, fouled);
            drops.add(isToday && fault == Fault.CLOG && i == clogged ? clogged(now, tapPa[i]) : now);
        }
        return drops;
    }

    /** An outlet with its valve as it was set while its device was clean. */
    private Drop set(int i, double fouled) {
        double behind =
                Drops.needed(clean.conditions(), drop(i, 0), 0, setFlow[i]).totalPa();
        double ambient = clean.conditions().ambientPa();
        double k = Valve.kTaking(
                ambient + tapPa[i],
                ambient + behind,
                setFlow[i] * clean.conditions().airDensityKgPerM3(),
                clean.conditions().pipeTemperatureK());
        return drop(i, fouled).withValveK(k);
    }

    private Drop clogged(Drop drop, double tapPa) {
        double left = clogLeft * Drops.flowAt(clean.conditions(), drop, tapPa);
        double more = tapPa
                - Drops.needed(clean.conditions(), drop, drop.valveK(), left).totalPa();
        Device device = drop.device().orElseThrow();
        return drop.withDevice(new Device(device.p0Pa(), device.aPaSPerM3() + more / left, device.bPaS2PerM6()));
    }

    private double[] taps() {
        List<Drop> drops = IntStream.range(0, needs.size())
                .mapToObj(i -> clean.drops().get(i).withTarget(setFlow[i]))
                .toList();
        var tuned = Solver.of(clean.withDrops(drops).withSources(fleet.fixedSources(holdPa)))
                .tuned()
                .match(set -> null, found -> found, refused -> null);
        double[] taps = new double[needs.size()];
        for (int i = 0; i < taps.length; i++) {
            taps[i] = holdPa - (tuned.requiredGaugePa() - tuned.drop(i).tapGaugePa());
        }
        return taps;
    }

    private Drop drop(int i, double fouled) {
        Resistance from = really[i].clean();
        Resistance to = really[i].due();
        double by = Math.min(1, fouled * fouling[i]);
        Drop drop = clean.drops().get(i);
        return drop.withDepth(Math.max(0, drop.depthM() + depthOff[i]))
                .withDevice(new Device(
                        device[i] * (from.p0Pa() + by * (to.p0Pa() - from.p0Pa())),
                        device[i] * (from.aPaSPerM3() + by * (to.aPaSPerM3() - from.aPaSPerM3())),
                        device[i] * (from.bPaS2PerM6() + by * (to.bPaS2PerM6() - from.bPaS2PerM6()))));
    }

    double takes() {
        double sum = 0;
        for (double each : setFlow) {
            sum += each;
        }
        return sum;
    }

    private AsSet solved(List<Drop> outlets, double left, double leaks) {
        List<Drop> drops = new ArrayList<>(outlets);
        double bled = blower * fleet.freeAt(holdPa, Wear.NEW) - takes() * (1 + seepShare);
        if (bled > 0) {
            drops.add(Trial.bleed(clean.conditions(), fleet.placed().get(0), holdPa, bled));
        }
        if (leaks > 0) {
            Drop hole = Trial.bleed(clean.conditions(), fleet.placed().get(0), holdPa, leaks * takes());
            String node = leakNode();
            drops.add(new Drop(
                    "leak",
                    node,
                    hole.valveK(),
                    hole.valveK(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    0,
                    OptionalDouble.empty()));
        }
        List<Source> sources = fleet.sources(Wear.NEW).stream()
                .map(source -> (Source.Blower) source)
                .map(source -> (Source) source.withCurve(Curve.of(source.curve().points().stream()
                        .map(point -> new Curve.Point(point.gaugePa(), blower * left * point.freeM3PerS()))
                        .toList())))
                .toList();
        return Solver.of(clean.withDrops(drops).withSources(sources))
                .asSet()
                .match(found -> found, tuned -> null, refused -> null);
    }
}
