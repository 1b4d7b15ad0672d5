package lungfish.everyday;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.everyday.Disturbance.Kind;
import lungfish.network.AsSet;
import lungfish.network.Conditions;
import lungfish.network.Drop;
import lungfish.network.Drops;
import lungfish.network.Network;
import lungfish.sizing.Fleet;

/**
 * Which valves to turn, and how far.
 *
 * <p>Where some outlets take more, their own valves mend it exactly: set so that each takes, at the pressure that its tap had,
 * the air that it had, and nothing else in the network can tell the difference. Devices that are due are opened up to their
 * target. Where it happens to the blower, or more
 * outlets come on, and shutting the bleed does not hold the pressure, there is less air than before: {@link Sharing} finds the
 * share of what they had that everybody can have. Those whose neighbours were shut need no valve turned: the bleed does it.
 */
final class Orders {
    /** A valve that is turned by less is not worth touching: less than half of the finest step. */
    private static final double LEAST_TURN = 0.002;

    private final Change change;
    private final Kind kind;
    private final Valves valves;
    private final Fleet after;
    private final Altered altered;
    private final Network network;
    private final int outlets;

    Orders(Change change, Valves valves, Fleet after, Altered altered) {
        this.change = change;
        this.kind = change.disturbance().kind();
        this.valves = valves;
        this.after = after;
        this.altered = altered;
        this.network = altered.after().network();
        this.outlets = valves.needs().size();
    }

    /** The order, given what the bleed can do. */
    Optional<Order> order(Optional<Bleed> bleed) {
        return switch (kind) {
            case HALF_DRAIN, CLEANED, DUE, AIRLINE_OFF -> order(taming(), network, false, 1);
            case HATCHERY_OFF, SHUT -> Optional.empty();
            case HATCHERY_ON, MAINS_LOW, FILTER_CLOGGED -> isShort(bleed) ? sharing() : Optional.empty();
        };
    }

    /** Whether there is less air than before, whatever the bleed does, and somebody sees it. */
    private boolean isShort(Optional<Bleed> bleed) {
        boolean isHeld = bleed.filter(Bleed::holds).isPresent();
        boolean isSeen = IntStream.range(0, outlets)
                .anyMatch(i -> Moved.share(aim(i), altered.after().drop(i).freeM3PerS()) < -Disturbed.UNSEEN_SHARE);
        return !isHeld && isSeen;
    }

    private boolean hit(int i) {
        return change.hits(valves.needs().get(i));
    }

    /** What it is to get: what it had; its target, where it comes on only now; of the two the less, where it had it clean. */
    private double aim(int i) {
        double had = altered.before().drop(i).freeM3PerS();
        double target = network.drops().get(i).targetM3PerS().orElse(had);
        return switch (kind) {
            case HATCHERY_ON -> hit(i) ? target : had;
            case DUE -> Math.min(had, target);
            case HALF_DRAIN, CLEANED, HATCHERY_OFF, AIRLINE_OFF, SHUT, MAINS_LOW, FILTER_CLOGGED -> had;
        };
    }

    /** The valves of those that it happens to. */
    private List<Double> taming() {
        return IntStream.range(0, outlets)
                .mapToObj(i -> hit(i) ? tamed(i) : network.drops().get(i).valveK())
                .toList();
    }

    private double tamed(int i) {
        boolean isShort = altered.after().drop(i).freeM3PerS() < aim(i);
        return switch (kind) {
            case HALF_DRAIN, CLEANED -> taking(i, altered.before());
            case DUE ->
                isShort ? taking(i, altered.after()) : network.drops().get(i).valveK();
            case HATCHERY_OFF, HATCHERY_ON, AIRLINE_OFF, SHUT, MAINS_LOW, FILTER_CLOGGED -> Drop.SHUT_K;
        };
    }

    /** The setting that takes what it is to get, at the pressure that its tap has there; at the most open. */
    private double taking(int i, AsSet at) {
        Drop drop = network.drops().get(i);
        if (aim(i) <= 0) {
            return drop.valveK();
        }
        Conditions conditions = network.conditions();
        double ambient = conditions.ambientPa();
        double behindPa = Drops.needed(conditions, drop, 0, aim(i)).totalPa();
        double k = Valve.kTaking(
                ambient + at.drop(i).tapGaugePa(),
                ambient + behindPa,
                aim(i) * conditions.airDensityKgPerM3(),
                conditions.pipeTemperatureK());
        return Math.max(drop.valveKOpen(), Math.min(Drop.SHUT_K, k));
    }

    private Optional<Order> sharing() {
        double[] aims = IntStream.range(0, outlets).mapToDouble(this::aim).toArray();
        Network unbled = Altered.unbled(network, outlets);
        return new Sharing(
                        unbled.withSources(after.fixedSources(0)),
                        valves.valves(),
                        aims,
                        pa -> after.freeAt(pa, Wear.TIRED),
                        after.shutPa(Wear.TIRED))
                .shared()
                .flatMap(shared -> order(shared.valveK(), unbled, true, shared.share()));
    }

    /** Whether it is so far from what it is to get that a keeper sees it. What blows into the room is shut in any case. */
    private boolean isWorthTurning(int i, double k, double share) {
        double is = altered.after().drop(i).freeM3PerS();
        boolean isSeen = Math.abs(Moved.share(share * aim(i), is)) > Disturbed.UNSEEN_SHARE;
        return k != network.drops().get(i).valveK() && (isSeen || k >= Drop.SHUT_K);
    }

    /** The order that turns these valves; solved again with all of them in round steps. */
    private Optional<Order> order(List<Double> valveK, Network base, boolean isBleedShut, double share) {
        List<Drop> drops = new ArrayList<>(base.drops());
        List<Integer> turned = new ArrayList<>();
        for (int i = 0; i < outlets; i++) {
            double to = to(i, valveK.get(i));
            if (isWorthTurning(i, valveK.get(i), share) && Math.abs(to - from(i)) > LEAST_TURN) {
                turned.add(i);
                double k = to <= 0 ? Drop.SHUT_K : Math.min(Drop.SHUT_K, valves.k(i, to));
                drops.set(i, drops.get(i).withValveK(k));
            }
        }
        return turned.isEmpty()
                ? Optional.empty()
                : Altered.solved(base.withDrops(drops)).map(then -> order(turned, then, valveK, isBleedShut, share));
    }

    private Order order(List<Integer> turned, AsSet then, List<Double> valveK, boolean isBleedShut, double share) {
        List<Order.Turn> turns = turned.stream()
                .map(i -> new Order.Turn(
                        valves.needs().get(i),
                        from(i),
                        to(i, valveK.get(i)),
                        share * aim(i),
                        then.drop(i).freeM3PerS()))
                .sorted(Comparator.comparingDouble((Order.Turn turn) -> -turn.factor()))
                .toList();
        return new Order(turns, isBleedShut, share, rest(then, share));
    }

    private double from(int i) {
        double k = network.drops().get(i).valveK();
        return k >= Drop.SHUT_K ? 0 : valves.opening(i, k);
    }

    private double to(int i, double k) {
        return k >= Drop.SHUT_K ? 0 : valves.stepped(i, k);
    }

    private double rest(AsSet then, double share) {
        return IntStream.range(0, outlets)
                .filter(i -> !(kind == Kind.AIRLINE_OFF && hit(i))) // of an airline that is off nobody expects air
                .mapToDouble(i -> Moved.share(share * aim(i), then.drop(i).freeM3PerS()))
                .map(miss -> kind == Kind.DUE ? Math.max(0, -miss) : Math.abs(miss)) // clean ones get more: no harm
                .max()
                .orElse(0);
    }
}
