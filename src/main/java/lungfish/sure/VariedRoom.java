package lungfish.sure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.demand.Need;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.network.Tubing;
import lungfish.room.Spread;
import lungfish.sure.Layout.Common;
import lungfish.sure.Layout.Trait;

/**
 * The network of a room as it may be instead of as it is said to be; its shape stays. Where nothing is off, every number is
 * that of the room to the last bit.
 */
final class VariedRoom {
    /** Beyond this share of the bore a roughness is no longer one. */
    private static final double ROUGHEST = 0.49;

    private final Network said;
    private final List<Need> needs;

    /**
     * A room.
     *
     * @param said its network, devices due
     * @param needs in the order of its drops
     */
    VariedRoom(Network said, List<Need> needs) {
        this.said = said;
        this.needs = needs;
    }

    /** The network of one sample. */
    Network network(Widths widths, Draws draws, int sample) {
        return new Network(
                said.conditions(),
                said.nodes(),
                pipes(widths, draws, sample),
                drops(widths, draws, sample),
                said.sources(),
                said.title());
    }

    private List<Pipe> pipes(Widths widths, Draws draws, int sample) {
        double bore = Chance.tolerance(widths.of(Spread.BORE), draws.share(Common.PIPE_BORE, sample));
        double rough = Chance.factor(widths.of(Spread.ROUGHNESS), draws.deviate(Common.PIPE_ROUGHNESS, sample));
        List<Pipe> pipes = new ArrayList<>(said.pipes().size());
        for (Pipe pipe : said.pipes()) {
            double boreM = bore * pipe.boreM();
            double roughnessM = Math.min(ROUGHEST * boreM, rough * pipe.roughnessM());
            pipes.add(new Pipe(pipe.id(), pipe.from(), pipe.to(), pipe.lengthM(), boreM, roughnessM, pipe.kSum()));
        }
        return pipes;
    }

    private List<Drop> drops(Widths widths, Draws draws, int sample) {
        Airlines airlines = Airlines.of(widths, draws, sample);
        List<Drop> drops = new ArrayList<>(needs.size());
        for (int i = 0; i < needs.size(); i++) {
            Need need = needs.get(i);
            Drop drop = said.drops().get(i);
            Traits own = Traits.ofOutlet(widths, draws, need, sample);
            double offM = Chance.off(widths.of(Spread.DEPTH), draws.ofOutlet(need, Trait.DEPTH, sample));
            drops.add(dropped(need, drop, own, airlines, depthM(need, drop, offM)));
        }
        return drops;
    }

    /** An outlet that is not there yet: like one that is, but of its own it has no luck, only that of its class. */
    Drop like(int pattern, Widths widths, Draws draws, int sample) {
        Airlines airlines = Airlines.of(widths, draws, sample);
        Need need = needs.get(pattern);
        Drop drop = said.drops().get(pattern);
        return dropped(need, drop, Traits.ofClass(widths, draws, need, sample), airlines, drop.depthM());
    }

    /** A release that would hang below the bottom lies on it; one that would hang above the water line is at it. */
    private double depthM(Need need, Drop drop, double offM) {
        double saidM = need.depthM().si();
        double deepestM = Math.max(saidM, need.seat().tank().waterDepthM());
        double movedM = Math.max(0, Math.min(deepestM, saidM + offM)) - saidM;
        return drop.depthM()
                + movedM * need.waterDensityKgPerM3() / said.conditions().waterDensityKgPerM3();
    }

    private static Drop dropped(Need need, Drop drop, Traits traits, Airlines airlines, double depthM) {
        return new Drop(
                drop.id(),
                drop.node(),
                drop.valveK(),
                drop.valveKOpen(),
                drop.airline().map(airlines::varied),
                drop.check(),
                drop.device().map(device -> fouled(need, traits)),
                depthM,
                drop.targetM3PerS().isPresent()
                        ? OptionalDouble.of(traits.flow() * drop.targetM3PerS().getAsDouble())
                        : OptionalDouble.empty());
    }

    /** Clean, and so much of what fouling adds; where that is once, the class's own number to the last bit. */
    private static Device fouled(Need need, Traits traits) {
        Resistance clean = need.device().clean();
        Resistance due = need.device().due();
        double more = traits.fouling() - 1;
        double all = traits.resistance();
        return new Device(
                all * Math.max(0, due.p0Pa() + more * (due.p0Pa() - clean.p0Pa())),
                all * Math.max(0, due.aPaSPerM3() + more * (due.aPaSPerM3() - clean.aPaSPerM3())),
                all * Math.max(0, due.bPaS2PerM6() + more * (due.bPaS2PerM6() - clean.bPaS2PerM6())));
    }

    /** What all airlines have in common. */
    private record Airlines(double bore, double rough) {
        static Airlines of(Widths widths, Draws draws, int sample) {
            return new Airlines(
                    Chance.tolerance(widths.of(Spread.BORE), draws.share(Common.AIRLINE_BORE, sample)),
                    Chance.factor(widths.of(Spread.ROUGHNESS), draws.deviate(Common.AIRLINE_ROUGHNESS, sample)));
        }

        Tubing varied(Tubing said) {
            double boreM = bore * said.boreM();
            double roughnessM = Math.min(ROUGHEST * boreM, rough * said.roughnessM());
            return new Tubing(said.lengthM(), boreM, roughnessM, said.kSum());
        }
    }

    /** The factors of one outlet. */
    private record Traits(double resistance, double flow, double fouling) {
        static Traits ofOutlet(Widths widths, Draws draws, Need need, int sample) {
            return new Traits(
                    factor(widths.of(Spread.RESISTANCE), draws, need, Trait.RESISTANCE, sample),
                    factor(widths.of(Spread.FLOW), draws, need, Trait.FLOW, sample),
                    factor(widths.of(Spread.FOULING), draws, need, Trait.FOULING, sample));
        }

        static Traits ofClass(Widths widths, Draws draws, Need need, int sample) {
            return new Traits(
                    common(widths.of(Spread.RESISTANCE), draws, need, Trait.RESISTANCE, sample),
                    common(widths.of(Spread.FLOW), draws, need, Trait.FLOW, sample),
                    common(widths.of(Spread.FOULING), draws, need, Trait.FOULING, sample));
        }

        private static double factor(double width, Draws draws, Need need, Trait trait, int sample) {
            double common = draws.ofClass(need, trait, sample);
            return Chance.factor(width, Chance.both(common, draws.ofOutlet(need, trait, sample)));
        }

        private static double common(double width, Draws draws, Need need, Trait trait, int sample) {
            return Chance.factor(width, Chance.both(draws.ofClass(need, trait, sample), 0));
        }
    }
}
