package lungfish.closing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.room.OutletId;
import lungfish.sizing.Fleet;
import lungfish.sizing.Trial;

/**
 * One question of what closing does. Bleeds are drops to the open air behind the outlets' drops. The machines new are tried as a
 * keeper would set them: the bleed turned by the gauge to where the tired ones stood, then the same outlets shut.
 */
final class Asking {
    private final List<Need> needs;
    private final Fleet fleet;
    private final AsSet before;
    private final Set<String> shut;

    Asking(List<Need> needs, Fleet fleet, AsSet before, Set<OutletId> shut) {
        this.needs = needs;
        this.fleet = fleet;
        this.before = before;
        this.shut = needs.stream()
                .map(Need::id)
                .filter(shut::contains)
                .map(OutletId::text)
                .collect(Collectors.toSet());
    }

    Optional<Closing> answer() {
        return shut.isEmpty() ? Optional.empty() : Shutting.of(before, shut).flatMap(this::answer);
    }

    private Optional<Closing> answer(Shutting tired) {
        return tired.held(needs.size()).flatMap(held -> fresh().map(fresh -> new Closing(
                needs.stream().filter(need -> shut.contains(need.id().text())).toList(),
                moved(tired.after()),
                Shutting.highestPa(before),
                Shutting.highestPa(tired.after()),
                Shutting.bledM3PerS(before, needs.size()),
                Shutting.bledM3PerS(tired.after(), needs.size()),
                hardest(tired),
                hardest(fresh),
                bleed(held))));
    }

    private List<Moved> moved(AsSet after) {
        return IntStream.range(0, needs.size())
                .filter(i -> !shut.contains(needs.get(i).id().text()))
                .mapToObj(i -> new Moved(needs.get(i), before.drop(i), after.drop(i)))
                .sorted(Comparator.comparingDouble((Moved moved) -> -Math.abs(moved.share())))
                .toList();
    }

    /** What each blower gives at its old pressure beyond what its outlets then take. */
    private Closing.Bleed bleed(AsSet held) {
        double bled = 0;
        for (int i = 0; i < fleet.placed().size(); i++) {
            bled += Math.max(0, before.source(i).freeM3PerS() - held.source(i).freeM3PerS());
        }
        double rest = moved(held).stream()
                .mapToDouble(moved -> Math.abs(moved.share()))
                .max()
                .orElse(0);
        return new Closing.Bleed(bled, bled - Shutting.bledM3PerS(before, needs.size()), rest);
    }

    private Optional<Shutting> fresh() {
        return new Shutting(before, before, Set.of())
                .held(needs.size())
                .flatMap(held -> Shutting.solved(network(held)))
                .flatMap(open -> Shutting.of(open, shut));
    }

    /** The new machines with their bleeds, where there are bleeds at all. */
    private Network network(AsSet held) {
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

    /** The one nearest to what it bears all day, or furthest beyond, once the outlets are shut. */
    private Held hardest(Shutting shutting) {
        return IntStream.range(0, fleet.placed().size())
                .mapToObj(i -> held(i, shutting))
                .max(Comparator.comparingDouble(held -> held.afterPa() / held.continuousPa()))
                .orElseThrow();
    }

    private Held held(int place, Shutting shutting) {
        Machine machine = fleet.placed().get(place).machine();
        return new Held(
                machine.name(),
                fleet.insidePa(place, shutting.before()),
                fleet.insidePa(place, shutting.after()),
                machine.kind().continuousPa());
    }
}
