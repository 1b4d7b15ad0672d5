package lungfish.everyday;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.sizing.Fleet;
import lungfish.sizing.Trial;

/**
 * One question of what a disturbance does. Bleeds are drops to the open air behind the outlets' drops. The machines new are
 * tried as a keeper would set them: the bleed turned by the gauge to where the tired ones stood, then the same happens.
 */
final class Answering {
    private final Change change;
    private final Valves valves;
    private final List<Need> needs;
    private final Fleet fleet;
    private final Fleet fleetAfter;
    private final AsSet trial;

    Answering(Change change, Valves valves, Fleet fleet, AsSet trial) {
        this.change = change;
        this.valves = valves;
        this.needs = valves.needs();
        this.fleet = fleet;
        this.fleetAfter = change.fleet(fleet);
        this.trial = trial;
    }

    Optional<Disturbed> answer() {
        return before().flatMap(before -> after(before, Wear.TIRED)).flatMap(this::answer);
    }

    /** The trial itself, where it is one of what was before. */
    private Optional<AsSet> before() {
        Network network = trial.network();
        List<Drop> drops = Change.changed(
                needs,
                network.drops(),
                (need, i) -> change.before(need, network.drops().get(i)));
        return drops.equals(network.drops()) ? Optional.of(trial) : Altered.solved(network.withDrops(drops));
    }

    private Optional<Altered> after(AsSet before, Wear wear) {
        List<Drop> set = trial.network().drops();
        List<Drop> drops = Change.changed(
                needs,
                before.network().drops(),
                (need, i) -> change.after(need, set.get(i), valves.startK().get(i)));
        return Altered.of(before, drops, fleetAfter.sources(wear));
    }

    private Optional<Disturbed> answer(Altered tired) {
        Optional<Bleed> bleed = bleedable(tired)
                .flatMap(altered -> new Bleeding(altered, fleetAfter, needs.size(), i -> !hit(i)).bleed());
        Orders orders = new Orders(change, valves, fleetAfter, tired);
        return fresh(tired.before())
                .map(fresh -> new Disturbed(
                        change.disturbance(),
                        moved(tired, this::hit),
                        moved(tired, i -> !hit(i)),
                        blowers(tired, fresh),
                        orders.order(bleed),
                        bleed,
                        findings(tired)));
    }

    /** An airline that is off is shut before anybody turns the bleed; devices that are due are cleaned. */
    private Optional<Altered> bleedable(Altered tired) {
        return switch (change.disturbance().kind()) {
            case AIRLINE_OFF ->
                Altered.of(tired.before(), shut(tired.after().network()), fleetAfter.sources(Wear.TIRED));
            case DUE -> Optional.empty();
            case HALF_DRAIN, CLEANED, HATCHERY_OFF, HATCHERY_ON, SHUT, MAINS_LOW, FILTER_CLOGGED -> Optional.of(tired);
        };
    }

    private List<Drop> shut(Network network) {
        return Change.changed(needs, network.drops(), (need, i) -> {
            Drop drop = network.drops().get(i);
            return change.hits(need) ? drop.withValveK(Drop.SHUT_K) : drop;
        });
    }

    private boolean hit(int i) {
        return change.hits(needs.get(i));
    }

    private List<Moved> moved(Altered tired, IntPredicate which) {
        return IntStream.range(0, needs.size())
                .filter(which)
                .mapToObj(i -> moved(tired, i))
                .sorted(Comparator.comparingDouble((Moved moved) -> -Math.abs(moved.share())))
                .toList();
    }

    private Moved moved(Altered tired, int i) {
        return new Moved(needs.get(i), tired.before().drop(i), tired.after().drop(i));
    }

    private List<Finding> findings(Altered tired) {
        boolean isHitSpared = change.disturbance().kind().isWithoutBubbles();
        return IntStream.range(0, needs.size())
                .filter(i -> !(isHitSpared && hit(i)))
                .mapToObj(i -> moved(tired, i))
                .filter(Moved::isAboveMost)
                .map(Answering::aboveMost)
                .toList();
    }

    private static Finding aboveMost(Moved moved) {
        return Finding.of(
                Code.ABOVE_MOST_MEANWHILE,
                moved.need().id().part(),
                new Amount("found", moved.after().freeM3PerS(), Dimension.AIR_FLOW),
                new Amount("allowed", moved.need().mostM3PerS().orElseThrow(), Dimension.AIR_FLOW));
    }

    private Blowers blowers(Altered tired, Altered fresh) {
        return new Blowers(
                Altered.highestPa(tired.before()),
                Altered.highestPa(tired.after()),
                Altered.bledM3PerS(tired.before(), needs.size()),
                Altered.bledM3PerS(tired.after(), needs.size()),
                hardest(tired),
                hardest(fresh));
    }

    private Optional<Altered> fresh(AsSet before) {
        return new Altered(before, before)
                .held(needs.size())
                .flatMap(held -> Altered.solved(fresh(before, held)))
                .flatMap(open -> after(open, Wear.NEW));
    }

    /** The new machines with their bleeds, where there are bleeds at all. */
    private Network fresh(AsSet before, AsSet held) {
        Network network = before.network();
        List<Drop> drops = new ArrayList<>(network.drops().subList(0, needs.size()));
        boolean isBled = network.drops().size() > needs.size();
        for (int i = 0; i < fleet.placed().size() && isBled; i++) {
            double gaugePa = before.source(i).gaugePa();
            double bled = fleet.freeAt(i, gaugePa, Wear.NEW) - held.source(i).freeM3PerS();
            if (bled > 0) {
                drops.add(Trial.bleed(network.conditions(), fleet.placed().get(i), gaugePa, bled));
            }
        }
        return network.withDrops(drops).withSources(fleet.sources(Wear.NEW));
    }

    /** The one nearest to what it bears all day, or furthest beyond, once it has happened. */
    private Held hardest(Altered altered) {
        return IntStream.range(0, fleet.placed().size())
                .mapToObj(i -> held(i, altered))
                .max(Comparator.comparingDouble(held -> held.afterPa() / held.continuousPa()))
                .orElseThrow();
    }

    private Held held(int place, Altered altered) {
        Machine machine = fleet.placed().get(place).machine();
        return new Held(
                machine.name(),
                fleet.insidePa(place, altered.before()),
                fleetAfter.insidePa(place, altered.after()),
                machine.kind().continuousPa());
    }
}
