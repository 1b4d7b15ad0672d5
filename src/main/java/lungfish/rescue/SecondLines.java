package lungfish.rescue;

import static lungfish.reason.Assumable.ENERGY_PRICE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.outage.TankDrill;
import lungfish.outage.Vessel;
import lungfish.oxygen.Case;
import lungfish.plan.Plan;
import lungfish.plan.Progress;
import lungfish.rescue.Second.Danger;
import lungfish.rescue.Second.Effect;
import lungfish.rescue.Second.Outage;
import lungfish.rescue.Second.Stay;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankId;

/**
 * Asks of each filter and pump beside the air whether the air alone does its work. Those of one tank are taken away one after
 * the other, the hungriest first; tanks do not touch each other, so one of each is taken away in the same drill.
 */
public final class SecondLines {
    /** Turnovers of a tank by its filters: 4 an hour; common practice, no source. */
    private static final double USUAL_PER_S = 4.0 / 3600;

    private static final double YEAR_S = 365.25 * 86_400;

    private final Room room;
    private final Drills drills;
    private final double wantedS;
    private final Progress progress;
    private final Map<TankId, Vessel> vessels = new HashMap<>();
    private final Map<TankId, OptionalDouble> aloneGPerM3 = new HashMap<>();
    private final Set<StirrerId> gone = new HashSet<>();

    private SecondLines(Plan plan, Drills drills, double wantedS, Progress progress) {
        this.room = plan.room();
        this.drills = drills;
        this.wantedS = wantedS;
        this.progress = progress;
        drills.vessels().forEach(vessel -> vessels.put(vessel.tank().id(), vessel));
        drills.with(room.withStirrers(List.of()))
                .vessels()
                .forEach(vessel -> aloneGPerM3.put(vessel.tank().id(), vessel.startGPerM3()));
    }

    /**
     * The answer for a plan; empty where nothing gives air.
     *
     * @param wantedS how far is looked when the mains are away, above 0
     */
    public static Optional<SecondLine> of(Plan plan, Catalogue catalogue, double wantedS, Progress progress) {
        return Drills.of(plan, catalogue)
                .map(drills -> new SecondLines(plan, drills, wantedS, progress).answer(catalogue));
    }

    private SecondLine answer(Catalogue catalogue) {
        List<List<Stirrer>> rounds = rounds();
        Map<StirrerId, Second> answers = new HashMap<>();
        for (int i = 0; i < rounds.size(); i++) {
            progress.at(i, rounds.size());
            round(rounds.get(i)).forEach(second -> answers.put(second.stirrer().id(), second));
        }
        progress.at(rounds.size(), rounds.size());
        List<Second> all = room.stirrers().stream()
                .flatMap(stirrer -> Optional.ofNullable(answers.get(stirrer.id())).stream())
                .toList();
        List<Stirrer> go =
                all.stream().filter(Second::mayGo).map(Second::stirrer).toList();
        double savedW = go.stream().mapToDouble(each -> each.powerW().orElse(0)).sum();
        double pricePerJ = room.supply()
                .pricePerJ()
                .orElseGet(() -> catalogue.assumed(ENERGY_PRICE).si());
        int unknown = (int) go.stream().filter(each -> each.powerW().isEmpty()).count();
        return new SecondLine(all, drills.levels().alarmGPerM3(), savedW, savedW * YEAR_S * pricePerJ, unknown);
    }

    /** In each round one stirrer of each tank in place. */
    private List<List<Stirrer>> rounds() {
        Map<TankId, Integer> taken = new HashMap<>();
        List<List<Stirrer>> rounds = new ArrayList<>();
        room.stirrers().stream()
                .filter(stirrer -> vessels.containsKey(stirrer.tank()))
                .sorted(Comparator.comparingDouble(stirrer -> -stirrer.powerW().orElse(0)))
                .forEach(stirrer -> {
                    int round = taken.merge(stirrer.tank(), 1, Integer::sum) - 1;
                    if (round == rounds.size()) {
                        rounds.add(new ArrayList<>());
                    }
                    rounds.get(round).add(stirrer);
                });
        return rounds;
    }

    private List<Second> round(List<Stirrer> asked) {
        Set<StirrerId> without = new HashSet<>(gone);
        asked.forEach(stirrer -> without.add(stirrer.id()));
        Played with = new Played(drills.with(except(gone)));
        Played less = new Played(drills.with(except(without)));
        List<Second> answers =
                asked.stream().map(stirrer -> second(stirrer, with, less)).toList();
        answers.stream()
                .filter(Second::mayGo)
                .forEach(second -> gone.add(second.stirrer().id()));
        return answers;
    }

    private Room except(Set<StirrerId> those) {
        return room.withStirrers(room.stirrers().stream()
                .filter(stirrer -> !those.contains(stirrer.id()))
                .toList());
    }

    private Second second(Stirrer stirrer, Played with, Played without) {
        List<Effect> outages = new ArrayList<>();
        outages.add(effect(Outage.MAINS, stirrer.tank(), with, without, Scene.mains(wantedS / 3600)));
        blowerStops(stirrer.tank(), with, without).ifPresent(outages::add);
        stirrer.circuit()
                .ifPresent(circuit -> outages.add(effect(
                        Outage.CIRCUIT,
                        stirrer.tank(),
                        with,
                        without,
                        scene(new Failing.CircuitTrips(circuit), drills.habits().handS()))));
        Vessel vessel = vessel(stirrer.tank());
        Second.Alone alone = alone(vessel);
        return new Second(stirrer, vessel, outages, alone, stays(vessel, alone, outages));
    }

    private Vessel vessel(TankId tank) {
        return Optional.ofNullable(vessels.get(tank)).orElseThrow();
    }

    private static Scene scene(Failing failing, double untilS) {
        return new Scene(failing, OptionalDouble.empty(), untilS);
    }

    private Optional<Effect> blowerStops(TankId tank, Played with, Played without) {
        double mendedS = drills.habits().replacedS();
        return drills.blowers().stream()
                .map(blower ->
                        effect(Outage.BLOWER, tank, with, without, scene(new Failing.BlowerStops(blower), mendedS)))
                .min(Comparator.<Effect, Boolean>comparing(effect -> !effect.keepsAlive())
                        .thenComparingDouble(
                                effect -> effect.without().cautiousS().orElse(Double.MAX_VALUE)));
    }

    private static Effect effect(Outage outage, TankId tank, Played with, Played without, Scene scene) {
        return new Effect(outage, with.danger(scene, tank), without.danger(scene, tank), scene.untilS());
    }

    private Second.Alone alone(Vessel vessel) {
        List<Need> needs = drills.needs().stream()
                .filter(need -> need.seat().tank().id().equals(vessel.tank().id()))
                .toList();
        double liftedM3PerS = needs.stream()
                .flatMap(need -> need.lifted().stream())
                .mapToDouble(Need.Lifted::waterM3PerS)
                .sum();
        OptionalDouble typed = needs.stream()
                .flatMapToDouble(need -> need.seat().outlet().flow().turnoverPerS().stream())
                .max();
        double waterM3 = vessel.tank().waterM3();
        return new Second.Alone(
                waterM3 > 0 ? liftedM3PerS / waterM3 : 0,
                typed.orElse(USUAL_PER_S),
                typed.isPresent(),
                aloneGPerM3.getOrDefault(vessel.tank().id(), OptionalDouble.empty()));
    }

    private Set<Stay> stays(Vessel vessel, Second.Alone alone, List<Effect> outages) {
        Set<Stay> stays = EnumSet.noneOf(Stay.class);
        if (!vessel.judged()) {
            stays.add(Stay.UNKNOWN);
        }
        if (!alone.turnsOver()) {
            stays.add(Stay.TURNOVER);
        }
        if (alone.oxygenGPerM3().orElse(Double.MAX_VALUE) <= drills.levels().alarmGPerM3()) {
            stays.add(Stay.OXYGEN);
        }
        if (outages.stream().anyMatch(effect -> effect.outage() == Outage.BLOWER && effect.keepsAlive())) {
            stays.add(Stay.KEEPS_ALIVE);
        }
        return stays;
    }

    /** Drills of one room, each played once. */
    private static final class Played {
        private final Drills drills;
        private final Map<Scene, Map<TankId, TankDrill>> known = new HashMap<>();

        Played(Drills drills) {
            this.drills = drills;
        }

        Danger danger(Scene scene, TankId tank) {
            return Optional.ofNullable(known.computeIfAbsent(scene, this::play).get(tank))
                    .map(drill -> new Danger(drill.dangerS(Case.LIKELY), drill.dangerS(Case.CAUTIOUS)))
                    .orElseThrow();
        }

        private Map<TankId, TankDrill> play(Scene scene) {
            Map<TankId, TankDrill> byTank = new HashMap<>();
            drills.play(scene).tanks().forEach(drill -> byTank.put(drill.tank().id(), drill));
            return byTank;
        }
    }
}
